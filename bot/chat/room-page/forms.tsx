import { useState } from "preact/hooks";
import { dailyOf, type Group, inGroups } from "../../../commands/groups.ts";
import type { CommandCard } from "../room/card.ts";
import { CommandForm } from "./command-form.tsx";
import type { Fill } from "./fill.ts";
import { useRoomPart } from "./room-context.ts";
import { Sheet } from "./sheet.tsx";
import { useWords } from "./words.ts";

interface FormsProps {
  readonly first: string | null;
  /** What the first form opens with. */
  readonly fill?: Fill;
  onClose(): void;
}

/** Every command as a form, by what one wants to do, for people who do not type commands. */
export function Forms({ first, fill, onClose }: FormsProps) {
  const { forms, formList } = useWords();
  const cards = useRoomPart((state) => state.cards);
  const role = useRoomPart((state) => state.facts?.you.role) ?? "student";
  const [opened, setOpened] = useState(first);
  /** What it is made of may come after the page: then it is there a moment later. */
  const open = cards.find(({ name }) => name === opened);
  /** The group of the form that was opened last: whoever goes back finds it unfolded. */
  const [lately, setLately] = useState<Group | null>(null);
  const [search, setSearch] = useState("");
  const wanted = search.toLowerCase().split(/\s+/).filter(Boolean);
  const isSearched = wanted.length > 0;
  const found = cards.filter(({ name, summary, alike }) => {
    const says = `${name} ${summary} ${alike}`.toLowerCase();
    return wanted.every((word) => says.includes(word));
  });
  const groups = inGroups(found, role);
  const picks = (from: readonly CommandCard[], group: Group | null) => (
    <ul class="form-list">
      {from.map((card) => (
        <li key={card.name}>
          <button
            type="button"
            class="form-pick"
            onClick={() => {
              setLately(group);
              setOpened(card.name);
            }}
          >
            <span>{card.summary}</span>
            <code>/{card.name}</code>
          </button>
        </li>
      ))}
    </ul>
  );
  return (
    <Sheet title={open ? open.summary : forms.title} onClose={onClose}>
      {open ? (
        <CommandForm
          card={open}
          fill={fill?.command === open.name ? fill : undefined}
          onBack={() => setOpened(null)}
          onDone={onClose}
        />
      ) : cards.length === 0 ? null : (
        <>
          <input
            class="search"
            type="search"
            value={search}
            placeholder={forms.search}
            aria-label={forms.search}
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
          {!isSearched && picks(dailyOf(cards, role), null)}
          {groups.map((each) => (
            <details
              // Anew for each search: what was folded by hand before may hold what is looked for now.
              key={`${each.group} ${wanted.join(" ")}`}
              class="form-group"
              open={isSearched || each.group === lately}
            >
              <summary>{formList.groups[each.group]}</summary>
              {picks(each.cards, each.group)}
            </details>
          ))}
          {groups.length === 0 && <p>{formList.nothing}</p>}
        </>
      )}
    </Sheet>
  );
}
