import type { BatchKind } from "../../../store/shapes/batch.ts";
import { formatBothScales } from "../../speech/wording.ts";

// Sources as in /caution: US Army T.O. 33B-1-1 (acid into water); Anchell, The Darkroom Cookbook, 3rd ed., p. 171 (acid and
// fixer, acid and bleach); NIOSH (hydroquinone: skin sensitiser; sulfur dioxide); school guidance (powders and pregnancy).
export const en = {
  mixing: {
    developer: "Gloves and goggles on: developer can make the skin allergic for life.",
    stop: "**Acid into water, never water into acid.** Gloves and goggles on, fan on. Never near fixer or household bleach: that gives off harmful gas.",
    fixer:
      "Gloves and goggles on, fan on: acid fixer gives off sulfur dioxide. With asthma, let somebody else mix it.",
    "wash-aid": "Gloves and goggles on, fan on.",
    "wetting-agent": null,
    "paper-developer":
      "Gloves and goggles on: developer can make the skin allergic for life. Tongs in its tray.",
    "paper-stop":
      "**Acid into water, never water into acid.** Gloves and goggles on, fan on. Never near fixer or household bleach: that gives off harmful gas.",
    "paper-fixer":
      "Gloves and goggles on, fan on: acid fixer gives off sulfur dioxide, an open tray more than a bottle. With asthma, let somebody else mix it.",
    "paper-wash-aid": "Gloves and goggles on, fan on.",
  } satisfies Record<BatchKind, string | null> as Record<BatchKind, string | null>,
  powder:
    "Powder: no draught, keep your face away from the bag, stir it in slowly. Not near anyone pregnant.",
  scald: (tenthsC: number) =>
    `**Water of ${formatBothScales(tenthsC)} scalds.** Cold water first, then the hot; pour slowly, away from you.`,
};
export type HazardWords = typeof en;
