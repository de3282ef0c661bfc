import type { LineForm } from "./speech/line.ts";
import { forms as askForms } from "./ask/words/form.de.ts";
import { forms as batchForms } from "./batch/words/form.de.ts";
import { forms as cautionForms } from "./caution/words/form.de.ts";
import { forms as classForms } from "./class/words/form.de.ts";
import { forms as contactForms } from "./contact/words/form.de.ts";
import { forms as helpForms } from "./help/words/form.de.ts";
import { forms as mineForms } from "./mine/words/form.de.ts";
import { forms as rollForms } from "./roll/words/form.de.ts";
import { forms as runForms } from "./run/words/form.de.ts";
import { forms as trayForms } from "./tray/words/form.de.ts";
import { forms as tankForms } from "./tank/words/form.de.ts";
import { forms as mixForms } from "./mix/words/form.de.ts";
import { forms as planForms } from "./plan/words/form.de.ts";
import { forms as printForms } from "./print/words/form.de.ts";
import { forms as sheetForms } from "./sheet/words/form.de.ts";
import type { Command, Forms } from "./define.ts";
import { spokenLanguage } from "./speech/language.ts";
import type { Language } from "../store/shapes/language.ts";

/* English stands in the definitions themselves: in `summary` and in each option's description. */
const TRANSLATED: Readonly<Partial<Record<Language, Forms>>> = {
  de: {
    ...askForms,
    ...rollForms,
    ...runForms,
    ...tankForms,
    ...trayForms,
    ...cautionForms,
    ...classForms,
    ...batchForms,
    ...contactForms,
    ...helpForms,
    ...mineForms,
    ...mixForms,
    ...planForms,
    ...sheetForms,
    ...printForms,
  },
};

/** What typed lines are read by: a form for each name, those of before included. */
export const lineFormsOf = (commands: readonly Command[]): LineForm[] =>
  commands.flatMap((command) =>
    [command.name, ...(command.was ?? [])].map((name) => ({
      name,
      rest: command.rest,
      get options() {
        return Object.keys(command.options.shape);
      },
    })),
  );

export function summaryOf(command: Command, language = spokenLanguage()): string {
  return TRANSLATED[language]?.[command.name]?.summary ?? command.summary;
}

/** What an option is for. */
export function aboutOf(command: Command, option: string, language = spokenLanguage()): string {
  const { file } = command;
  const english = file?.name === option ? file.about : (command.options.shape[option]?.description ?? "");
  return TRANSLATED[language]?.[command.name]?.options[option] ?? english;
}
