import { fitsKey } from "./line.ts";

interface Turn {
  readonly label: string;
  readonly line: string;
}

/** Buttons to the pages beside this one. What is too long for a button is paged by typing. */
export function turnActions(
  { page, pages }: { readonly page: number; readonly pages: number },
  { newer, older }: { readonly newer: string; readonly older: string },
  lineOfPage: (page: number) => string,
): Turn[] {
  const turns: Turn[] = [];
  if (page > 1) turns.push({ label: newer, line: lineOfPage(page - 1) });
  if (page < pages) turns.push({ label: older, line: lineOfPage(page + 1) });
  return turns.filter(({ line }) => fitsKey(line));
}
