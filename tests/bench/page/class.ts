import { join } from "node:path";
import { drawToken, hashToken } from "../../../bot/chat/room/secrets.ts";
import { DEMO_KEY, inventDemo } from "../../../bot/demo/demo.ts";
import { keepRun } from "../../../commands/run/keep.ts";
import { advance } from "../../../commands/run/machine.ts";
import type { AnyPlan } from "../../../store/shapes/tray.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { openSocket } from "../../support/room-server.ts";
import { aPlan, aRun } from "../../support/make.ts";

/* The invented class with thirty films in thirty tanks, and a teacher and a student whose page is measured. */

export const RUNS = 30;
const A_DEVELOPER_MS = 540_000;

export interface Measured {
  readonly student: string;
  readonly teacher: string;
}

/** Its developer has been in for `agoMs`. */
export function addRun(
  stores: OpenedStores,
  classId: number,
  personId: string,
  plan: AnyPlan,
  agoMs: number,
): void {
  const now = Date.now();
  const { id: _id, number: _number, ...draft } = aRun({ classId, personId, plan, startedAtMs: now - agoMs });
  const begun = advance(stores.runs.add(draft), { kind: "next", step: 0, sure: false, atMs: now - agoMs });
  if (!begun.ok) throw new Error(begun.fault.code);
  keepRun(stores, begun.value, now);
}

/** Sessions of both, as cookies. The student's developer should have been out a minute ago: a call is open at once. */
export function seedClass(data: string): Measured {
  const stores = openStores(join(data, "sinkside.db"));
  const now = Date.now();
  inventDemo(stores, "UTC", now);
  const classId = stores.classes.find(DEMO_KEY)?.id ?? 0;
  const enter = (personId: string, name: string, role: "student" | "teacher"): string => {
    const token = drawToken();
    stores.members.see(classId, { id: personId, name }, role, now);
    stores.rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "bench" }, now);
    return token;
  };
  const measured = stores.atomically(() => {
    const teacher = enter("room:teacher", "Iris", "teacher");
    const student = enter("room:p0", "Person 0", "student");
    for (let at = 0; at < RUNS; at += 1) {
      const personId = `room:p${at}`;
      stores.members.see(classId, { id: personId, name: `Person ${at}` }, "student", now);
      const agoMs = at === 0 ? A_DEVELOPER_MS + 60_000 : (A_DEVELOPER_MS * at) / (RUNS * 2);
      addRun(stores, classId, personId, aPlan({ tank: at + 1 }), Math.round(agoMs));
    }
    return { teacher, student };
  });
  stores.close();
  return measured;
}

/** What an evening's log is made of: long answers and short ones, with keys, lists and refusals. */
const SAID = [
  "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20.5 tank:5",
  "/help",
  "/sheet list",
  "/caution",
  "/run status",
  "/plan film:Quay 100 developer:Pier Fine dilution:1+9 temp:22",
  "/mix dilute dilution:1+9 volume:500",
  "/sheet show film:Lantern 400",
  "/plan film:Lantern 40 developer:House MQ",
  "/roll fault",
];

/** Says so many lines, each with its answer, so that the log of this person is as long as a page shows. */
export async function fillLog(url: string, token: string, lines: number): Promise<void> {
  const page = await openSocket(url, `sinkside=${token}`);
  page.send({ type: "hello", after: null });
  await page.hears("events");
  for (let at = 0; at < lines; at += 1) {
    await page.says(SAID[at % SAID.length] ?? "/help");
    // The room takes a dozen messages a second of one page.
    await new Promise((resolve) => setTimeout(resolve, 90));
  }
  page.socket.close();
}
