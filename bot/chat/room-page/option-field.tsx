import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Suggestion } from "../../../commands/define.ts";
import type { OptionCard } from "../room/card.ts";
import { useRoom } from "./room-context.ts";
import { useWords } from "./words.ts";

interface OptionFieldProps {
  readonly command: string;
  readonly option: OptionCard;
  readonly value: string;
  readonly others: Readonly<Record<string, string>>;
  readonly fault: string | null;
  /** To be filled in first. */
  readonly isFirst: boolean;
  onValue(value: string): void;
}

const MOST_CHIPS = 8;
/** Longer values than this are pasted or read from a file, not typed. */
const LONG = 1000;

export function OptionField({ command, option, value, others, fault, isFirst, onValue }: OptionFieldProps) {
  const words = useWords();
  const room = useRoom();
  const id = useId();
  const [isHere, setHere] = useState(false);
  const [offers, setOffers] = useState<readonly Suggestion[]>([]);

  useEffect(() => {
    if (!isHere || !option.hasOffers) return undefined;
    let isOld = false;
    const soon = setTimeout(() => {
      void room
        .complete(command, option.name, value, others)
        .then((found) => !isOld && setOffers(found.slice(0, MOST_CHIPS)));
    }, 120);
    return () => {
      isOld = true;
      clearTimeout(soon);
    };
  }, [isHere, value]);

  const field = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!isFirst) return undefined;
    // Once the panel around it is open, which takes the focus itself.
    const soon = setTimeout(() =>
      field.current?.querySelector<HTMLElement>("input, select, textarea")?.focus(),
    );
    return () => clearTimeout(soon);
  }, []);

  const common = {
    id,
    name: option.name,
    value,
    "aria-describedby": fault === null ? undefined : `${id}-fault`,
    "aria-invalid": fault !== null,
    onFocus: () => setHere(true),
  };
  const { choices, preset } = option;
  return (
    <div ref={field} class={`field ${fault ? "is-fault" : ""}`}>
      <label for={id}>
        <span class="is-about">{option.about}</span> <code>{option.name}</code>
        {!option.isRequired && <span class="optional"> {words.forms.optional}</span>}
      </label>
      {choices.length > 0 ? (
        <select {...common} onInput={(event) => onValue(event.currentTarget.value)}>
          <option value="">
            {choices.find((each) => each.value === preset)?.label ?? words.forms.leave}
          </option>
          {choices.map((each) => (
            <option key={each.value} value={each.value}>
              {each.label}
            </option>
          ))}
        </select>
      ) : (option.longest ?? 0) >= LONG ? (
        <LongText {...common} onValue={onValue} />
      ) : (
        <input
          {...common}
          type="text"
          inputMode={option.kind === "whole" ? "numeric" : option.kind === "number" ? "decimal" : "text"}
          placeholder={preset ?? ""}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event) => onValue(event.currentTarget.value)}
        />
      )}
      {fault !== null && (
        <p class="fault-here" id={`${id}-fault`}>
          {fault}
        </p>
      )}
      {isHere && offers.length > 0 && (
        <div class="chips">
          {offers.map((offer) => (
            <button
              key={offer.value}
              type="button"
              class="chip"
              aria-pressed={offer.value === value}
              onClick={() => onValue(offer.value)}
            >
              {offer.label}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

interface LongTextProps {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  onValue(value: string): void;
}

/** A file is read here in the browser and sent as the option's text: nothing is stored as a file. */
function LongText({ onValue, ...common }: LongTextProps) {
  const { forms } = useWords();
  const fileId = useId();
  return (
    <>
      <textarea {...common} rows={5} onInput={(event) => onValue(event.currentTarget.value)} />
      <label class="key" for={fileId}>
        {forms.fromFile}
      </label>
      <input
        id={fileId}
        class="file-input"
        type="file"
        accept=".csv,.txt,.json,.ics,text/plain,text/csv,application/json,text/calendar"
        onChange={(event) => {
          void event.currentTarget.files?.[0]?.text().then(onValue);
        }}
      />
    </>
  );
}
