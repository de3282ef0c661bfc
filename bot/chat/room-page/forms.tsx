import { useState } from "preact/hooks";
import type { CommandCard } from "../room/wire.ts";
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

/** Every command as a form, for people who do not type commands. */
export function Forms({ first, fill, onClose }: FormsProps) {
  const { forms } = useWords();
  const cards = useRoomPart((state) => state.cards);
  const [open, setOpen] = useState<CommandCard | null>(cards.find(({ name }) => name === first) ?? null);
  const [search, setSearch] = useState("");
  const wanted = search.trim().toLowerCase();
  const found = cards.filter(({ name, summary }) =>
    `${name} ${summary} ${forms.alike[name] ?? ""}`.toLowerCase().includes(wanted),
  );
  return (
    <Sheet title={open ? open.summary : forms.title} onClose={onClose}>
      {open ? (
        <CommandForm
          card={open}
          fill={fill?.command === open.name ? fill : undefined}
          onBack={() => setOpen(null)}
          onDone={onClose}
        />
      ) : (
        <>
          <input
            class="search"
            type="search"
            value={search}
            placeholder={forms.search}
            aria-label={forms.search}
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
          <ul class="form-list">
            {found.map((card) => (
              <li key={card.name}>
                <button type="button" class="form-pick" onClick={() => setOpen(card)}>
                  <span>{card.summary}</span>
                  <code>/{card.name}</code>
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </Sheet>
  );
}
