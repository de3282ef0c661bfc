import type { Action } from "../../../commands/define.ts";
import { fillOf, needsFilling } from "./fill.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { useFormDesk } from "./use-forms.ts";

/** The buttons of a reply. A pressed one sends its line; what is not allowed any more the room refuses in words. */
export function Actions({ actions, onPress }: { actions: readonly Action[]; onPress?: () => void }) {
  const room = useRoom();
  const forms = useFormDesk();
  const cards = useRoomPart((state) => state.cards);
  function press({ line, label }: Action): void {
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
          onClick={() => press(action)}
        >
          {action.label}
        </button>
      ))}
    </div>
  );
}
