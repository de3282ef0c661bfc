import type { RunView } from "../../../commands/run/run-view.ts";
import type { ToPage } from "../room/wire.ts";
import type { RoomClock } from "./clock.ts";

/*
 * What a page's runs began at, which moves by nothing but the setting of the room's clock: by this a page learns of it with the
 * very message that moves the runs. Between the two it would call what is long past, or not yet.
 */

type Began = Pick<RunView, "run" | "begunAt">;

export interface Begun {
  /** To be told of each view that comes, before it is shown. */
  hear(views: readonly Began[]): void;
  /** Of another class, the same numbers are other runs. */
  forget(): void;
}

/** The runs a message tells of. */
export function viewsIn(message: ToPage): readonly Began[] {
  if (message.type === "wall") return message.rows;
  return message.type === "welcome" || message.type === "views" ? message.views : [];
}

export function createBegun(clock: Pick<RoomClock, "shift">): Begun {
  const known = new Map<number, number>();
  return {
    hear(views) {
      const [byMs] = views
        .map(({ run, begunAt }) => begunAt - (known.get(run) ?? begunAt))
        .filter((each) => each !== 0);
      if (byMs !== undefined) {
        clock.shift(byMs);
        for (const [run, begunAt] of known) known.set(run, begunAt + byMs);
      }
      for (const { run, begunAt } of views) known.set(run, begunAt);
    },
    forget: () => known.clear(),
  };
}
