import type { Reply } from "../define.ts";
import { countOf, plain } from "../wording.ts";
import type { ExportFormat } from "./file.ts";

export function exportReply(
  content: string,
  format: ExportFormat,
  count: number,
  total: number,
  page: number,
  pageSize: number,
  taken: readonly { readonly typed: string; readonly value: string }[],
): Reply {
  const notes = taken.map(({ typed, value }) => `I took "${plain(typed)}" for ${plain(value)}.`);
  const rest = total - (page - 1) * pageSize - count;
  return {
    text: [
      ...notes,
      `**${countOf(count, "roll")}** as ${format.toUpperCase()}: one line for each film, the unit in each name. It holds names and notes: keep it as you keep a class list.`,
      rest > 0 ? `There are more: add \`page:${page + 1}\` for the next.` : "",
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
