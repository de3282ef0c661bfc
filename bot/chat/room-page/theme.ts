import type { Theme } from "./state.ts";

/* Daylight and safelight. `auto` follows the phone: its dark setting is taken as a dark room. */

const COLOURS = { daylight: "#efe9dc", safelight: "#000000" } as const;

export function applyTheme(theme: Theme): () => void {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const show = (): void => {
    const shown = theme === "auto" ? (dark.matches ? "safelight" : "daylight") : theme;
    document.documentElement.dataset.theme = shown;
    document.querySelector('meta[name="theme-color"]')?.setAttribute("content", COLOURS[shown]);
  };
  show();
  dark.addEventListener("change", show);
  return () => dark.removeEventListener("change", show);
}
