import { de as batch } from "./batch.de.ts";
import type { WayWords } from "./way.en.ts";

export const de: WayWords = {
  silverDrain: (label) =>
    `**Nicht in den Ausguss**: Gebrauchtes Fixierbad enthält Silber. Sammle ${label} (\`to:silver\`) oder gib es dem Lieferanten zurück (\`to:supplier\`).`,
  notIntoSilver: (label, kind) =>
    `**Nicht in die Silbersammlung**: Dahin kommt nur Fixierbad. ${label} (${batch.kind[kind]}) gehört nicht dazu: ${kind === "stop" ? "Säure im Fixierbad setzt schädliches Gas frei" : "Gemischte Abfälle können Gas abgeben"}. Sag \`to:waste\` (ein eigener Kanister), \`to:drain\`, wo es die Regeln am Ort erlauben, oder \`to:supplier\`.`,
};
