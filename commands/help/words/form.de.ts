import type { Forms } from "../../define.ts";

export const forms: Forms = {
  help: { summary: "Was für dich jetzt als Nächstes dran ist", options: {} },
};
