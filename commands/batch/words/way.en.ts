import type { BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "./batch.en.ts";

export const en = {
  silverDrain: (label: string) =>
    `**Not down the drain**: used fixer carries silver. Collect ${label} (\`to:silver\`) or give it back to its supplier (\`to:supplier\`).`,
  notIntoSilver: (label: string, kind: BatchKind) =>
    `**Not into the silver collection**: it takes fixer only. ${label} is a ${batch.kind[kind]}${kind === "stop" ? ", and acid into fixer gives off harmful gas" : ", and mixed wastes can give off gas"}. Say \`to:waste\` (a container of its own), \`to:drain\` where local rules allow it, or \`to:supplier\`.`,
};
export type WayWords = typeof en;
