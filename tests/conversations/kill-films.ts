import { join } from "node:path";
import { inventDemo } from "../../bot/demo/demo.ts";
import { openStores } from "../../store/index.ts";
import type { Random } from "../simulation/random.ts";
import { aQuickPlan, pourIn } from "../support/developing.ts";

/* The films of one round of kills, and what is owed for them: worked out here from the plan, not by the program. */

const BURST_SECONDS = 1;
const WARN_SECONDS = 1;
const POUR_OUT_SECONDS = 1;

export interface Call {
  readonly kind: string;
  /** Ms since the epoch. */
  readonly dueAt: number;
}

export interface Film {
  readonly runId: number;
  readonly personId: string;
  /** In order of time. */
  readonly calls: readonly Call[];
}

export interface Filling {
  readonly films: number;
  readonly seconds: number;
  readonly cycleSeconds: number;
  /** So many groups are called together, with quiet between; 0: spread over the whole cycle. */
  readonly groups: number;
}

/** Makes the store whole, whatever its first life has left, and pours all films in, within one cycle. */
export function pourAllIn(data: string, filling: Filling, random: Random): Film[] {
  const { films, seconds, cycleSeconds, groups } = filling;
  const stores = openStores(join(data, "sinkside.db"));
  const now = Date.now();
  const plan = aQuickPlan(seconds, cycleSeconds, { pourOutSeconds: POUR_OUT_SECONDS });
  const cycleMs = cycleSeconds * 1000;
  const offset = (): number =>
    groups === 0 ? random.whole(0, cycleMs) : Math.floor((random.whole(0, groups - 1) * cycleMs) / groups);
  const poured: Film[] = [];
  // A demo may be there already; in one transaction, since each by itself would take longer than the round.
  stores.atomically(() => {
    inventDemo(stores, "UTC", now);
    const classId = stores.classes.list()[0]?.id ?? 0;
    for (let index = 0; index < films; index += 1) {
      const personId = `room:p${index}`;
      stores.members.see(classId, { id: personId, name: `Person ${index}` }, "student", now);
      const pouredAt = now + offset();
      const run = pourIn(stores, { classId, personId, plan, warnSeconds: WARN_SECONDS }, now, pouredAt);
      poured.push({ runId: run.id, personId, calls: callsOf(pouredAt, seconds, cycleSeconds) });
    }
  });
  stores.close();
  return poured;
}

/** As the design has it: pour-out ends with the step, and no agitation begins that it would cut. */
function callsOf(pouredAt: number, seconds: number, cycleSeconds: number): Call[] {
  const endsAt = pouredAt + seconds * 1000;
  const outAt = endsAt - POUR_OUT_SECONDS * 1000;
  const calls: Call[] = [{ kind: "agitate-first", dueAt: pouredAt }];
  for (let count = 1; count * cycleSeconds + BURST_SECONDS <= seconds - POUR_OUT_SECONDS; count += 1) {
    calls.push({ kind: "agitate", dueAt: pouredAt + count * cycleSeconds * 1000 });
  }
  calls.push({ kind: "get-ready", dueAt: outAt - WARN_SECONDS * 1000 });
  calls.push({ kind: "pour-out", dueAt: outAt });
  calls.push({ kind: "next-bath", dueAt: endsAt });
  return calls.sort((a, b) => a.dueAt - b.dueAt);
}
