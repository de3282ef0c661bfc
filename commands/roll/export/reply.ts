import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import type { ExportFormat } from "./file.ts";
import { takenWords, type Taken } from "../taken-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function exportReply(
  content: string,
  format: ExportFormat,
  count: number,
  total: number,
  page: number,
  pageSize: number,
  taken: readonly Taken[],
): Reply {
  const rest = total - (page - 1) * pageSize - count;
  return {
    text: [
      ...takenWords(taken),
      words().exported(count, format.toUpperCase()),
      rest > 0 ? words().more(page + 1) : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: { format, rolls: count, total, page },
    attachments: [
      {
        name: page === 1 ? `log.${format}` : `log-${page}.${format}`,
        mediaType: format === "csv" ? "text/csv" : "application/json",
        content,
      },
    ],
  };
}
