import { useEffect, useId, useRef, useState } from "preact/hooks";
import { readCaret } from "./caret.ts";
import { checkLine, wordFault } from "./check.ts";
import { ChoiceList } from "./choice-list.tsx";
import { completeFromRoom, completeLocally, type Choice } from "./complete.ts";
import { rememberHere, readKept } from "./kept.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { useWords } from "./words.ts";

const MOST_RECENT = 20;
const MOST_LATELY = 5;

const asChoice = (line: string): Choice => ({ label: line, hint: "", line });

/** The line at the foot of the page: typed commands, with what may come next above it. */
export function Composer({ onForms }: { onForms: () => void }) {
  const room = useRoom();
  const { composer, ...words } = useWords();
  const cards = useRoomPart((state) => state.cards);
  const fault = useRoomPart((state) => state.fault);
  const isSending = useRoomPart((state) => state.pending.some((each) => each.state === "sending"));
  const input = useRef<HTMLInputElement>(null);
  const id = useId();
  const [line, setLine] = useState("");
  const [choices, setChoices] = useState<readonly Choice[]>([]);
  const [picked, setPicked] = useState(-1);
  const [recent, setRecent] = useState<readonly string[]>(readKept("recent", []));
  const [recentAt, setRecentAt] = useState(-1);
  const [isHere, setHere] = useState(false);

  const caret = readCaret(line, cards);
  const typing = caret.at === "value" ? caret.option : null;
  const check = line.trim() === "" ? null : checkLine(line, cards, typing);
  const isCommandDone = check?.card !== null && check !== null;

  useEffect(() => {
    if (line.trim() === "") return setChoices([]);
    const option =
      caret.at === "value" ? caret.card.options.find(({ name }) => name === caret.option) : undefined;
    // Until the room has answered, the list stays as it is: one that comes and goes can't be read.
    if (caret.at !== "value" || !option?.hasOffers) return setChoices(completeLocally(caret, line, cards));
    let isOld = false;
    void room
      .complete(caret.card.name, caret.option, caret.typed, caret.others)
      .then((offers) => isOld || setChoices(completeFromRoom(caret, line, offers)));
    return () => void (isOld = true);
  }, [line, cards]);

  const isOpen = choices.length > 0 && line.trim() !== "";
  // An empty line offers what was used lately, for those whose keyboard has no arrows.
  const lately = isHere && line === "" ? recent.slice(0, MOST_LATELY).map(asChoice) : [];

  function change(next: string): void {
    if (fault !== null) room.clearFault();
    setRecentAt(-1);
    put(next);
  }

  /** At once, not in the effect: an arrow pressed before that would count for nothing. */
  function put(next: string): void {
    setLine(next);
    setPicked(-1);
  }

  function take(choice: Choice): void {
    change(choice.line);
    input.current?.focus();
  }

  function send(): void {
    const text = line.trim();
    if (text === "") return;
    room.say(text);
    const next = [text, ...recent.filter((each) => each !== text)].slice(0, MOST_RECENT);
    setRecent(next);
    rememberHere("recent", next);
    change("");
    // The answer comes where the list would be.
    setHere(false);
  }

  function step(by: number): void {
    const at = Math.min(recent.length - 1, Math.max(-1, recentAt + by));
    put(at === -1 ? "" : (recent[at] ?? ""));
    setRecentAt(at);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const isBrowsing = isOpen && recentAt === -1;
    const choice = choices[picked];
    if (event.key === "ArrowDown" && isBrowsing) setPicked((picked + 1) % choices.length);
    else if (event.key === "ArrowUp" && isBrowsing) setPicked((picked <= 0 ? choices.length : picked) - 1);
    else if (event.key === "ArrowUp") step(1);
    else if (event.key === "ArrowDown" && recentAt >= 0) step(-1);
    else if (event.key === "Tab" && !event.shiftKey && isBrowsing) take(choice ?? (choices[0] as Choice));
    else if (event.key === "Enter" && choice) take(choice);
    else if (event.key === "Escape" && isOpen) setChoices([]);
    else if (event.key === "Escape" && lately.length > 0) setHere(false);
    else return;
    event.preventDefault();
  }

  const says =
    fault ??
    (isCommandDone && check.faults[0] ? wordFault(check.faults[0], { composer, ...words }) : null) ??
    (isCommandDone && check.missing.length > 0 ? composer.needs(check.missing.join(", ")) : null);
  return (
    <form
      class="composer"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      {isOpen && <ChoiceList id={`${id}-list`} choices={choices} picked={picked} onTake={take} />}
      {lately.length > 0 && <ChoiceList id={`${id}-list`} choices={lately} picked={-1} onTake={take} />}
      <p class={`composer-says ${fault !== null || check?.faults[0] ? "is-fault" : ""}`} aria-live="polite">
        {says ?? (isSending ? composer.sending : "")}
      </p>
      <div class="composer-row">
        <button type="button" class="key forms-key" onClick={onForms}>
          {composer.forms}
        </button>
        <input
          ref={input}
          class="composer-line"
          value={line}
          onInput={(event) => change(event.currentTarget.value)}
          onKeyDown={onKeyDown}
          onFocus={() => setHere(true)}
          onClick={() => setHere(true)}
          onBlur={() => setHere(false)}
          placeholder={composer.placeholder}
          aria-label={composer.label}
          role="combobox"
          aria-expanded={isOpen || lately.length > 0}
          aria-controls={`${id}-list`}
          aria-autocomplete="list"
          aria-activedescendant={picked >= 0 ? `${id}-list-${picked}` : undefined}
          autocomplete="off"
          autocapitalize="off"
          autocorrect="off"
          spellcheck={false}
          enterkeyhint="send"
          maxLength={20_000}
        />
        <button class="key main" disabled={line.trim() === ""}>
          {composer.send}
        </button>
      </div>
    </form>
  );
}
