import type { Action } from "../../../commands/define.ts";
import { useRoom } from "./room-context.ts";

/** The buttons of a reply. A pressed one sends its line; what is not allowed any more the room refuses in words. */
export function Actions({ actions, onPress }: { actions: readonly Action[]; onPress?: () => void }) {
  const room = useRoom();
  if (actions.length === 0) return null;
  return (
    <div class="actions">
      {actions.map(({ label, line, weight }) => (
        <button
          key={line}
          type="button"
          class={`key ${weight ?? "plain"}`}
          onClick={() => {
            room.say(line, label);
            onPress?.();
          }}
        >
          {label}
        </button>
      ))}
    </div>
  );
}
