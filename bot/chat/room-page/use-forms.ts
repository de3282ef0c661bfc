import { useEffect } from "preact/hooks";
import { fillOf, type Fill } from "./fill.ts";
import { useRoom, useRoomPart } from "./room-context.ts";

/* Forms that open of themselves: from a button, from a command in a sentence, and again where one was refused. */

export interface FormDesk {
  open(fill: Fill): void;
  close(): void;
  /** Sends what a form comes to. */
  send(line: string): void;
}

export function useFormDesk(): FormDesk {
  const room = useRoom();
  return {
    open: (fill) => room.store.set({ fill }),
    close: () => room.store.set({ fill: null }),
    send(line) {
      room.store.set(({ events }) => ({ formSentAfter: events[events.length - 1]?.id ?? 0 }));
      room.say(line);
    },
  };
}

/** Nothing that was filled in is lost by a refusal: its form opens again. */
export function useReopenedForm(): void {
  const { store } = useRoom();
  const events = useRoomPart((state) => state.events);
  useEffect(() => {
    const { formSentAfter, cards } = store.get();
    if (formSentAfter === null) return;
    const answer = events.find(
      ({ id, kind, isPrivate }) => id > formSentAfter && kind === "reply" && isPrivate,
    );
    if (!answer) return;
    const { again, text, actions } = answer;
    // Where there are keys for what would do, they are nearer than the form.
    const fill = again && actions.length === 0 ? fillOf(again.line, cards, text, again.option) : undefined;
    store.set({ formSentAfter: null, ...(fill ? { fill } : {}) });
  }, [events]);
}
