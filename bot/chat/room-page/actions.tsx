import type { Action } from "../../../commands/define.ts";
import { cardsOf } from "./cards.ts";
import { fillOf, needsFilling } from "./fill.ts";
import { useRoom } from "./room-context.ts";
import { useFormDesk } from "./use-forms.ts";

/** The buttons of a reply. A pressed one sends its line; what is not allowed any more the room refuses in words. */
export function Actions({ actions, onPress }: { actions: readonly Action[]; onPress?: () => void }) {
  const room = useRoom();
  const forms = useFormDesk();
  async function press({ line, label }: Action): Promise<void> {
    // What holds its options, as an answer to a call does, waits for nothing.
    const cards = line.includes(":") ? room.store.get().cards : await cardsOf(room.store);
    const fill = fillOf(line, cards);
    if (fill && needsFilling(fill, cards)) forms.open(fill);
    else room.say(line, label);
    onPress?.();
  }
  if (actions.length === 0) return null;
  return (
    <div class="actions">
      {actions.map((action) => (
        <button
          key={action.line}
          type="button"
          class={`key ${action.weight ?? "plain"}`}
          onClick={() => void press(action)}
        >
          {action.label}
        </button>
      ))}
    </div>
  );
}
