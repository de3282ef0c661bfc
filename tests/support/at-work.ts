import type { Room } from "./room.ts";

/* People who do what they are told: each presses the button of a call a few seconds after hearing it. */

export interface AtWork {
  /** Seconds go by; whoever is called acts `afterSeconds` later. */
  pass(seconds: number): Promise<void>;
  /** The same until somebody has pressed this button, at most an hour. */
  until(person: string, label: string): Promise<void>;
  readonly pressed: readonly { readonly person: string; readonly label: string }[];
}

export function putToWork(room: Room, people: readonly string[], afterSeconds = 3): AtWork {
  const pressed: { person: string; label: string }[] = [];
  const soon: { atMs: number; person: string; label: string }[] = [];
  let seen = room.heard.length;

  async function second(): Promise<void> {
    await room.pass(1);
    const now = room.clock.now();
    for (const { personId, text, actions } of room.heard.slice(seen)) {
      const person = people.find((each) => `room:${each.toLowerCase()}` === personId);
      const label = actions[0]?.label;
      // A next bath is called; a call to pour out comes before it and needs both hands.
      if (person && label && /\*\*Now: /.test(text))
        soon.push({ atMs: now + afterSeconds * 1000, person, label });
    }
    seen = room.heard.length;
    for (const each of soon.filter(({ atMs }) => atMs <= now)) {
      soon.splice(soon.indexOf(each), 1);
      room.press(each.person, each.label);
      pressed.push({ person: each.person, label: each.label });
    }
  }

  return {
    pressed,
    async pass(seconds) {
      for (let gone = 0; gone < seconds; gone += 1) await second();
    },
    async until(person, label) {
      for (let gone = 0; gone < 3600; gone += 1) {
        if (pressed.some((each) => each.person === person && each.label === label)) return;
        await second();
      }
      throw new Error(`${person} has not pressed ${label} within an hour`);
    },
  };
}
