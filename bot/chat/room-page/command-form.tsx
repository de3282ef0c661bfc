import { useState } from "preact/hooks";
import type { CommandCard, OptionCard } from "../room/card.ts";
import { checkValue, wordFault } from "./check.ts";
import { quoteWhereNeeded } from "./complete.ts";
import type { Fill } from "./fill.ts";
import { OptionField } from "./option-field.tsx";
import { Said } from "./said.tsx";
import { useFormDesk } from "./use-forms.ts";
import { useWords } from "./words.ts";

interface CommandFormProps {
  readonly card: CommandCard;
  /** What stands in it already, and what was wrong with that. */
  readonly fill?: Fill | undefined;
  onBack(): void;
  onDone(): void;
}

/** One command's options as fields; sending it types the line that a practised hand would have typed. */
export function CommandForm({ card, fill, onBack, onDone }: CommandFormProps) {
  const words = useWords();
  const desk = useFormDesk();
  const [values, setValues] = useState<Readonly<Record<string, string>>>(fill?.values ?? {});
  const [isTried, setTried] = useState(false);
  const [isOpen, setOpen] = useState(false);
  const filled = Object.entries(values).filter(([, value]) => value.trim() !== "");

  function faultOf(name: string): string | null {
    const option = card.options.find((each) => each.name === name);
    const value = values[name]?.trim() ?? "";
    if (!option) return null;
    if (value === "") return isTried && option.isRequired ? words.composer.needs(name) : null;
    const fault = checkValue(option, value);
    return fault ? wordFault(fault, words) : null;
  }

  function send(): void {
    setTried(true);
    const isMissing = card.options.some(({ name, isRequired }) => isRequired && !values[name]?.trim());
    if (isMissing || card.options.some(({ name }) => faultOf(name) !== null)) return;
    const options = filled.map(([name, value]) => `${name}:${quoteWhereNeeded(value.trim())}`);
    desk.send(`/${[card.name, ...options].join(" ")}`);
    onDone();
  }

  // Needed ones first: the rest may be left alone.
  const options = [...card.options].sort((a, b) => Number(b.isRequired) - Number(a.isRequired));
  const isShown = ({ name, isFirst }: OptionCard): boolean =>
    isOpen || isFirst || values[name] !== undefined || name === fill?.option;
  const shown = options.filter(isShown);
  const focused = fill?.option ?? shown.find(({ name }) => !values[name])?.name;
  return (
    <form
      class="command-form"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <button type="button" class="quiet" onClick={onBack}>
        ‹ {words.forms.back}
      </button>
      {fill && fill.says !== "" && (
        <div class="form-says is-fault" role="alert">
          <Said text={fill.says} />
        </div>
      )}
      {shown.map((option) => (
        <OptionField
          key={option.name}
          isFirst={option.name === focused}
          command={card.name}
          option={option}
          value={values[option.name] ?? ""}
          others={Object.fromEntries(filled.filter(([name]) => name !== option.name))}
          fault={faultOf(option.name)}
          onValue={(value) => setValues((before) => ({ ...before, [option.name]: value }))}
        />
      ))}
      {shown.length < options.length && (
        <button type="button" class="quiet" onClick={() => setOpen(true)}>
          {words.forms.more(options.length - shown.length)}
        </button>
      )}
      <button class="key main">{words.forms.run}</button>
    </form>
  );
}
