import { drawCallId } from "./call-id.ts";
import { markStale } from "./feed.ts";
import type { Link } from "./link.ts";
import type { Store } from "./state.ts";

/* Lines on their way to the room: each has a name, so that one sent again after a lost link does its work once. */

export interface Lines {
  /** Sends a typed line, or that of a button with this label. */
  say(text: string, label?: string): void;
  /** The room has it, or nobody wants it sent any more. */
  settle(id: string): void;
  /** With the link back: what is still fresh goes out again, the rest is asked about. */
  resend(): void;
  sendStale(id: string): void;
}

export function createLines(store: Store, link: Pick<Link, "send">): Lines {
  return {
    say(text, label = undefined) {
      const id = drawCallId();
      store.set(({ pending }) => ({
        fault: null,
        pending: [...pending, { id, text, label: label ?? null, at: Date.now(), state: "sending" }],
      }));
      link.send({ type: "line", id, text, label: label ?? null });
    },
    settle(id) {
      store.set(({ pending }) => ({ pending: pending.filter((each) => each.id !== id) }));
    },
    resend() {
      store.set(({ pending }) => ({ pending: markStale(pending, Date.now()) }));
      for (const { id, text, label, state } of store.get().pending)
        if (state === "sending") link.send({ type: "line", id, text, label });
    },
    sendStale(id) {
      const line = store.get().pending.find((each) => each.id === id);
      if (line && link.send({ type: "line", id, text: line.text, label: line.label }))
        store.set(({ pending }) => ({
          pending: pending.map((each) => (each.id === id ? { ...each, state: "sending" } : each)),
        }));
    },
  };
}
