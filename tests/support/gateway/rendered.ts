import type { Answer } from "./interactions.ts";
import type { StoredMessage } from "./ledger.ts";

/* Messages and forms as text, as near as text comes to what a person sees. */

const WEIGHTS: Readonly<Record<number, string>> = { 1: "*", 2: "", 4: "!" };

/** Numbers the platform gives differ from time to time. */
const plain = (text: string): string =>
  text.replaceAll(/\d{17,20}/g, "ID").replaceAll(/<t:\d+:(\w)>/g, "<time:$1>");

export function renderMessage({ content, components, files, embeds, isPrivate }: StoredMessage): string {
  const shown = new Set(embeds.map(({ image }) => image?.url.replace("attachment://", "")));
  const pictures = files.map(
    ({ name, description }) =>
      `(${shown.has(name) ? "large picture" : "file"} ${name}${description === undefined ? "" : `: ${description}`})`,
  );
  return plain(
    [isPrivate ? "(only you see this)" : "", content, ...pictures, ...renderRows(components)]
      .filter(Boolean)
      .join("\n"),
  );
}

/** The keys that are in a message now. */
export const renderKeys = ({ components }: StoredMessage): string =>
  renderRows(components).join("\n") || "(no key)";

function renderRows(components: StoredMessage["components"]): string[] {
  return components.flatMap((row) => {
    if (row.type !== 1) return [];
    return [
      row.components
        .map((each) => {
          if (each.type === 3)
            return `{${each.placeholder ?? ""}: ${each.options.map(({ label }) => label).join(" | ")}}`;
          return "label" in each ? `[${each.label}${WEIGHTS[each.style] ?? ""}]` : "";
        })
        .join(" "),
    ];
  });
}

export function renderAnswer(answer: Answer): string {
  const { form, messages } = answer;
  if (!form) return messages.map(renderMessage).join("\n---\n");
  const fields = form.components.flatMap((row) => {
    if (row.type !== 18) return [];
    const { component: field, label, description } = row;
    const isRequired = "required" in field && field.required !== false;
    const what =
      field.type === 3
        ? `{${field.options.map((each) => `${each.default ? ">" : ""}${each.label}`).join(" | ")}}`
        : field.type === 4
          ? `________ ${field.value ?? ""}`
          : "";
    return [`${label}${isRequired ? " (must)" : ""}: ${description ?? ""}\n  ${what}`];
  });
  return plain([`FORM “${form.title}”`, ...fields].join("\n"));
}
