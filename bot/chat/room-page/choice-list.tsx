import { useEffect, useRef } from "preact/hooks";
import type { Choice } from "./complete.ts";
import { useWords } from "./words.ts";

interface ChoiceListProps {
  readonly id: string;
  readonly choices: readonly Choice[];
  readonly picked: number;
  onTake(choice: Choice): void;
}

/** What may be typed next; taken by a tap, or by the keys of the line it belongs to. */
export function ChoiceList({ id, choices, picked, onTake }: ChoiceListProps) {
  const { composer } = useWords();
  const list = useRef<HTMLUListElement>(null);
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: "nearest" });
  }, [picked]);
  return (
    <ul ref={list} class="choices" id={id} role="listbox" aria-label={composer.choices}>
      {choices.map((choice, index) => (
        <li
          key={`${choice.label} ${choice.hint}`}
          id={`${id}-${index}`}
          role="option"
          aria-selected={index === picked}
          // Pressing must not take the keyboard away from the line.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => onTake(choice)}
        >
          <span class="choice-label">{choice.label}</span>
          {choice.hint && <span class="choice-hint">{choice.hint}</span>}
        </li>
      ))}
    </ul>
  );
}
