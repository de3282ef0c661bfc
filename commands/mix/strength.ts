import { z } from "zod";
import { pointDecimal } from "../speech/decimal.ts";
import { inEach } from "../speech/language.ts";
import { dilutionOption } from "../speech/quantity.ts";
import { plain, quoted } from "../speech/wording.ts";
import { type Dilution, simplifyParts } from "../../store/shapes/sheet.ts";
import { de } from "./words/strength.de.ts";
import { en } from "./words/strength.en.ts";

/*
 * A dilution by per cent: what is wanted out of what is there, as `28% to 2%`. The amount is volume x wanted / at hand (US Army
 * SS0513): 2 parts in 28, so 2 + 26 of water, 1+13.
 */

const words = inEach({ en, de });

export interface AskedDilution extends Dilution {
  readonly wasRatio: boolean;
  /** Per cent at hand and wanted, as typed; null: it was asked in parts. */
  readonly percent: { readonly have: number; readonly want: number } | null;
}

const TEXT = /^(\d{1,3}(?:[.,]\d{1,2})?) ?% ?(?:to|auf|zu|->|→|-) ?(\d{1,3}(?:[.,]\d{1,2})?) ?%$/i;
/** Percentages are read to a hundredth. */
const HUNDREDTHS = 100;

/** undefined: not written in per cent. null: no dilution makes the one of the other. */
export function parsePercent(text: string): AskedDilution | null | undefined {
  const match = TEXT.exec(text.normalize("NFKC").trim());
  if (!match) return undefined;
  const [have, want] = [match[1], match[2]].map((part) => Number(pointDecimal(part ?? "")));
  if (have === undefined || want === undefined || have > 100 || want <= 0 || want >= have) return null;
  const concentrateParts = Math.round(want * HUNDREDTHS);
  const waterParts = Math.round(have * HUNDREDTHS) - concentrateParts;
  return { ...simplifyParts({ concentrateParts, waterParts }), wasRatio: false, percent: { have, want } };
}

/** Parts, or per cent to per cent. */
export const askedDilutionOption = z.string().transform((text, context): AskedDilution => {
  const percent = parsePercent(text.slice(0, 60));
  if (percent) return percent;
  if (percent === null) {
    context.addIssue({ code: "custom", message: words().noStrength(quoted(plain(text.slice(0, 24)))) });
    return z.NEVER;
  }
  const parts = dilutionOption.safeParse(text);
  if (parts.success) return { ...parts.data, percent: null };
  context.addIssue({ code: "custom", message: parts.error.issues[0]?.message ?? "" });
  return z.NEVER;
});
