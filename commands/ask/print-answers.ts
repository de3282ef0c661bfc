import type { Action } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { says, type Answerer } from "./shape.ts";
import { askWords as words } from "./words.ts";

/* Answers about prints: what it is about in a sentence, and the key to the form that does it. */

const strip = (): Action => ({ label: words().stripKey, line: makeLine("print strip", {}) });
const contact = (): Action => ({ label: words().contactKey, line: makeLine("contact sheet", {}) });
const trays = (): Action => ({ label: words().traysKey, line: makeLine("tray plan", {}) });
const again = (): Action => ({ label: words().againKey, line: makeLine("print again", {}) });
const whoInTrays = (): Action => ({ label: words().whoInTrays, line: makeLine("tray lines", {}) });

/** White light comes before all else: it can cost the paper of others. */
export const printingAnswer: Answerer = ({ signs }) => {
  if (signs.has("WHITELIGHT")) return says(words().whiteLight, whoInTrays());
  if (signs.has("STRIP")) return says(words().makeStrip, strip());
  if (signs.has("CONTACT")) return says(words().layContact, contact());
  if (signs.has("AGAIN")) return says(words().printAgain, again());
  if (signs.has("TRAY") || signs.has("LONG")) return says(words().inTrays, trays());
  return says(words().printing, strip(), contact(), trays(), again());
};
