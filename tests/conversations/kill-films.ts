import { join } from "node:path";
import { drawToken, hashToken } from "../../bot/chat/room/secrets.ts";
import { inventDemo } from "../../bot/demo/demo.ts";
import { openStores } from "../../store/index.ts";
import type { Random } from "../simulation/random.ts";
import { aQuickPlan, pourIn } from "../support/developing.ts";
import type { OwedCall } from "./kill-heard.ts";
import { aQuickBath, aWash, PRINT_QUIET_SECONDS, putToWash, washCallsOf } from "./kill-prints.ts";

/*
 * The films of one round of kills, with prints in trays among them, and what is owed for them: worked out here from the plan,
 * not by the program.
 */

const BURST_SECONDS = 1;
const POUR_OUT_SECONDS = 1;
/** A word before pour-out falls between two calls to agitate, where there is room for it. */
const warnSecondsOf = (cycleSeconds: number): number => (cycleSeconds > 1 ? 1 : 0);
/** Nor may an agitation fall on that word: with a call each 2 s the film takes an odd number of seconds. */
const spareSecondsOf = (cycleSeconds: number): number => (cycleSeconds === 2 ? 1 : 0);

/** What a round has in turn: a film in a tank, a print in a tray that is called out of it to drain, a print in the wash. */
const KINDS = ["film", "bath", "wash"] as const;

export interface Film {
  readonly kind: (typeof KINDS)[number];
  readonly runId: number;
  readonly personId: string;
  /** In order of time; of prints in a wash others when it begins again. */
  calls: readonly OwedCall[];
  /** With what a page of theirs comes in. */
  readonly token: string;
}

export interface Filling {
  readonly films: number;
  /** A whole number of cycles: then no two calls of a film are due at one moment. */
  readonly cycles: number;
  readonly cycleSeconds: number;
  /** So many groups are called together, with quiet between; 0: spread over the whole cycle. */
  readonly groups: number;
}

/** Makes the store whole, whatever its first life has left, and pours all films in, within one cycle. */
export function pourAllIn(data: string, filling: Filling, random: Random): Film[] {
  const { films, cycles, cycleSeconds, groups } = filling;
  const seconds = cycles * cycleSeconds + spareSecondsOf(cycleSeconds);
  const stores = openStores(join(data, "sinkside.db"));
  const now = Date.now();
  const plans = {
    film: aQuickPlan(seconds, cycleSeconds, { pourOutSeconds: POUR_OUT_SECONDS }),
    bath: aQuickBath(seconds, cycleSeconds, POUR_OUT_SECONDS),
    wash: aWash(seconds),
  };
  const cycleMs = cycleSeconds * 1000;
  const offset = (): number =>
    groups === 0 ? random.whole(0, cycleMs) : Math.floor((random.whole(0, groups - 1) * cycleMs) / groups);
  const poured: Film[] = [];
  const rooms = stores.rooms;
  const warnSeconds = warnSecondsOf(cycleSeconds);
  // A demo may be there already; in one transaction, since each by itself would take longer than the round.
  stores.atomically(() => {
    inventDemo(stores, "UTC", now);
    const classId = stores.classes.list()[0]?.id ?? 0;
    for (let index = 0; index < films; index += 1) {
      const personId = `room:p${index}`;
      stores.members.see(classId, { id: personId, name: `Person ${index}` }, "student", now);
      const pouredAt = now + offset();
      const kind = KINDS[index % KINDS.length] ?? "film";
      const draft = { classId, personId, plan: plans[kind], warnSeconds };
      const putIn = kind === "wash" ? putToWash : pourIn;
      const run = putIn(stores, draft, now, pouredAt);
      const quietSeconds = kind === "film" ? 0 : PRINT_QUIET_SECONDS;
      const token = drawToken();
      rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "Device" }, now);
      const timed = { pouredAt, seconds, warnSeconds, quietSeconds };
      const calls =
        kind === "wash"
          ? washCallsOf(timed)
          : callsOf({ ...timed, cycleSeconds, pourOutSeconds: POUR_OUT_SECONDS });
      poured.push({ kind, runId: run.id, personId, token, calls });
    }
  });
  stores.close();
  return poured;
}

export interface Developing {
  readonly pouredAt: number;
  readonly seconds: number;
  readonly cycleSeconds: number;
  readonly warnSeconds: number;
  readonly pourOutSeconds: number;
  /** Of a print: nobody is told to get ready so soon after it went in. */
  readonly quietSeconds?: number;
}

/** As the design has it: pour-out ends with the step, and no agitation begins that it would cut. */
export function callsOf({ pouredAt, seconds, cycleSeconds, ...rest }: Developing): OwedCall[] {
  const { warnSeconds, pourOutSeconds, quietSeconds = 0 } = rest;
  const endsAt = pouredAt + seconds * 1000;
  const outAt = endsAt - pourOutSeconds * 1000;
  const calls: OwedCall[] = [{ kind: "agitate-first", dueAt: pouredAt }];
  for (let count = 1; count * cycleSeconds + BURST_SECONDS <= seconds - pourOutSeconds; count += 1) {
    calls.push({ kind: "agitate", dueAt: pouredAt + count * cycleSeconds * 1000 });
  }
  const readyAt = outAt - warnSeconds * 1000;
  if (warnSeconds > 0 && readyAt > pouredAt + quietSeconds * 1000)
    calls.push({ kind: "get-ready", dueAt: readyAt });
  calls.push({ kind: "pour-out", dueAt: outAt });
  calls.push({ kind: "next-bath", dueAt: endsAt });
  return calls.sort((a, b) => a.dueAt - b.dueAt);
}
