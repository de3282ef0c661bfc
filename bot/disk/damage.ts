import { constants, setPriority } from "node:os";
import { builtPath } from "../process/built.ts";

/* Whether a store is whole, looked at page by page. That takes its while: some 3 ms for each MB of it. */

/** What came of looking at a store. */
export type Examined =
  | { readonly kind: "whole" }
  | { readonly kind: "damaged"; readonly found: string }
  | { readonly kind: "unknown"; readonly detail: string };

/**
 * Looks at the store in a process of its own, which gets the processor when nobody else wants it. `tell` is called once, unless
 * what is returned was called before: that ends it at once.
 */
export function examineBeside(path: string, tell: (examined: Examined) => void): () => void {
  let isOver = false;
  const { execFile } = process.getBuiltinModule("node:child_process");
  const child = execFile(process.execPath, [builtPath("examine.js"), path], (error, found) => {
    if (isOver) return;
    if (error) tell({ kind: "unknown", detail: String(error) });
    else tell(found === "" ? { kind: "whole" } : { kind: "damaged", found });
  });
  try {
    if (child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_LOW);
  } catch {
    // It is over already, or may not be set back: then it looks as fast as anybody.
  }
  return () => {
    isOver = true;
    child.kill("SIGKILL");
  };
}
