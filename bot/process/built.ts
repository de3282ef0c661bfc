import { join } from "node:path";

/**
 * The path of a part of the built program. Built, all of it lies in one folder, whatever file of the sources it comes from; run
 * from the sources, it is in the build folder beside them.
 */
export function builtPath(name: string): string {
  const here = import.meta.dirname;
  const isBuilt = import.meta.url.endsWith(".js");
  return isBuilt ? join(here, name) : join(here, "..", "..", "dist", "bot", name);
}
