import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import type { ExportFormat } from "./file.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** `left`: how many there are from this page's first on. */
export function exportReply(
  content: string,
  format: ExportFormat,
  count: number,
  left: number,
  page: number,
): Reply {
  return {
    text: [
      words().exported(count, format.toUpperCase()),
      ...(left > count ? [words().more(page + 1)] : []),
    ].join("\n"),
    fields: { format, prints: count, page },
    attachments: [
      {
        name: page === 1 ? `prints.${format}` : `prints-${page}.${format}`,
        mediaType: format === "csv" ? "text/csv" : "application/json",
        content,
      },
    ],
  };
}
