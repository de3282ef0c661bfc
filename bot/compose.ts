import type { Action } from "../commands/define.ts";
import { deliveredEarly, deliveredLate } from "../commands/run/cue-words.ts";
import { speaking } from "../commands/language.ts";
import { LATE_FROM_MS } from "../commands/run/settle.ts";
import { joinAnd } from "../commands/wording.ts";
import type { Owed } from "../store/outbox.ts";
import type { Delivery } from "./chat/port.ts";

/* What is said for one message that is owed, or for several that go out as one. Pure. */

/** Up to this much ahead nobody notices; beyond it a message says its moment. */
const EARLY_FROM_MS = 500;
type Where = Pick<Delivery, "classKey" | "channelRef">;

export function composeOne(owed: Owed, where: Where, now: number): Delivery {
  const { about } = owed.body;
  return {
    ...shared(owed, where),
    personId: owed.personId,
    mentions: owed.body.mentions,
    text: [atMoment(owed, now) + owed.body.text, about === "" ? "" : `_${about}_`].filter(Boolean).join("\n"),
    actions: actionsOf(owed),
  };
}

/** One line for each thing to do, with the runs it is for; everyone who is meant is called by name. */
export function composeBundle(key: string, several: readonly Owed[], where: Where, now: number): Delivery {
  const lines = new Map<string, string[]>();
  for (const owed of several) {
    const text = atMoment(owed, now) + owed.body.text;
    lines.set(text, [...(lines.get(text) ?? []), owed.body.about]);
  }
  const text = [...lines]
    .map(([line, abouts]) => `**${joinAnd(abouts.filter((about) => about !== ""))}**\n${line}`)
    .join("\n\n");
  const people = several.flatMap(({ personId, body }) => [
    ...(personId === null ? [] : [personId]),
    ...body.mentions,
  ]);
  const first = several[0];
  return {
    ...where,
    key,
    personId: null,
    mentions: [...new Set(people)],
    text,
    actions: several.flatMap(namedActions),
    pictures: several.flatMap(({ body }) => body.pictures ?? []),
    attachments: [],
    dueAt: first?.dueAt ?? now,
  };
}

function shared(owed: Owed, where: Where) {
  return { ...where, key: owed.key, pictures: owed.body.pictures ?? [], attachments: [], dueAt: owed.dueAt };
}

function atMoment(owed: Owed, now: number): string {
  return speaking(owed.body.language, () => momentWords(owed, now));
}

/** Words on lateness where the deciding was on time, or on the moment where a message leaves before it. */
function momentWords(owed: Owed, now: number): string {
  // To the second, as it is read: those who started together get one line.
  if (owed.dueAt - now > EARLY_FROM_MS) return `${deliveredEarly(Math.round(owed.dueAt / 1000) * 1000)}\n`;
  const decidedOnTime = owed.decidedAt - owed.dueAt < LATE_FROM_MS;
  const lateMs = now - owed.dueAt;
  return decidedOnTime && lateMs >= LATE_FROM_MS ? `${deliveredLate(lateMs, owed.dueAt)}\n` : "";
}

function actionsOf(owed: Owed): Action[] {
  return owed.body.actions.map(({ weight, ...action }) => (weight ? { ...action, weight } : action));
}

/** In a message for many a button says whose it is. */
function namedActions(owed: Owed): Action[] {
  return actionsOf(owed).map((action) => ({ ...action, label: `${owed.body.about}: ${action.label}` }));
}
