import { viewOf } from "../../../commands/run/view.ts";
import type { RunView } from "../../../commands/run/run-view.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Run } from "../../../store/shapes/run.ts";
import { speaking } from "../../../commands/speech/language.ts";
import type { PersonView } from "./view.ts";
import type { WallRow } from "./wire.ts";

/*
 * A view says nothing of the present moment, so that it is the same as long as its run is. Each page asks for its views at
 * every change in its class and each second: without this a class of thirty makes sixty of them a second.
 */

interface Known {
  readonly run: Run;
  readonly view: RunView;
}

/** Beyond this those made longest ago are made anew. */
const MOST_KNOWN = 2048;
/** Each as the piece of a message that it becomes. */
const texts = new WeakMap<object, string>();

export type KnownViews = (run: Run, owner: string, language: Language) => RunView;

export function createKnownViews(): KnownViews {
  const known = new Map<string, Known>();
  return (run, owner, language) => {
    const key = `${run.id} ${language} ${owner}`;
    const before = known.get(key);
    if (before && isSame(before.run, run)) return before.view;
    const view = speaking(language, () => viewOf(run, owner));
    known.delete(key);
    known.set(key, { run, view });
    const [oldest] = known.keys();
    if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
    return view;
  };
}

/** The store gives the same frozen parts for the same text. */
function isSame(a: Run, b: Run): boolean {
  const names = Object.keys(b) as (keyof Run)[];
  return names.length === Object.keys(a).length && names.every((name) => Object.is(a[name], b[name]));
}

/** As JSON, made once for each view: nobody changes one. */
export function textOf(view: object): string {
  const made = texts.get(view) ?? JSON.stringify(view);
  texts.set(view, made);
  return made;
}

const rowsMade = new WeakMap<object, WallRow>();

/** The same row for the same view, so that its text is made once. */
export function rowOf(view: PersonView, owner: string, ownerId: string): WallRow {
  const known = rowsMade.get(view);
  const row = known?.owner === owner && known.ownerId === ownerId ? known : { ...view, owner, ownerId };
  rowsMade.set(view, row);
  return row;
}
