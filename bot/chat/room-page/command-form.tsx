import { useState } from "preact/hooks";
import type { CommandCard } from "../room/wire.ts";
import { checkValue, wordFault } from "./check.ts";
import { quoteWhereNeeded } from "./complete.ts";
import { OptionField } from "./option-field.tsx";
import { useRoom } from "./room-context.ts";
import { useWords } from "./words.ts";

interface CommandFormProps {
  readonly card: CommandCard;
  onBack(): void;
  onDone(): void;
}

/** One command's options as fields; sending it types the line that a practised hand would have typed. */
export function CommandForm({ card, onBack, onDone }: CommandFormProps) {
  const words = useWords();
  const room = useRoom();
  const [values, setValues] = useState<Readonly<Record<string, string>>>({});
  const [isTried, setTried] = useState(false);
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
    room.say(`/${[card.name, ...options].join(" ")}`);
    onDone();
  }

  // Needed ones first: the rest may be left alone.
  const options = [...card.options].sort((a, b) => Number(b.isRequired) - Number(a.isRequired));
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
      {options.map((option) => (
        <OptionField
          key={option.name}
          command={card.name}
          option={option}
          value={values[option.name] ?? ""}
          others={Object.fromEntries(filled.filter(([name]) => name !== option.name))}
          fault={faultOf(option.name)}
          onValue={(value) => setValues((before) => ({ ...before, [option.name]: value }))}
        />
      ))}
      <button class="key main">{words.forms.run}</button>
    </form>
  );
}
