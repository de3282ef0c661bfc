import { z } from "zod";
import type { Reach } from "../../../store/says.ts";
import { type Action, type Context, defineCommand, UserError } from "../../define.ts";
import { fitsKey, makeLine } from "../../speech/line.ts";
import { STEP_KINDS } from "../../../store/shapes/plan.ts";
import { type Audience, AUDIENCES, makeAudience, peopleOf } from "./audience.ts";
import * as words from "./reply.ts";
import { owe } from "../../owe.ts";
import { whoMay } from "../../who.ts";

export const classSay = defineCommand({
  name: "class say",
  summary: "Say something to everyone, or to those at a given step",
  options: () => ({
    text: z.string().trim().min(1).max(1000).describe("What to say, like: fixer B4 is exhausted, use B5"),
    to: z.enum(AUDIENCES).optional().describe("Who hears it"),
    step: z.enum(STEP_KINDS).optional().describe("Which step, with to:at (if left out) or to:before"),
  }),
  who: whoMay("class say"),
  visibility: "private",
  rest: "text",
  handle({ text, to, step }, context) {
    const { stores, class: school, now, person } = context;
    const audience = audienceOf(to ?? (step === undefined ? "everyone" : "at"), step);
    const people = peopleOf(audience, stores.runs.open(school.id));
    if (audience.kind !== "everyone" && people.length === 0)
      throw new UserError("ERR_NOBODY", words.nobody(audience), toEveryone(text));
    const say = stores.says.add(school.id, makeAudience(audience), text, now);
    const targets: (string | null)[] = audience.kind === "everyone" ? [null] : people;
    for (const [part, personId] of targets.entries())
      owe(
        stores,
        {
          of: { kind: "say", say: say.id, part },
          classId: school.id,
          personId,
          say: () => ({ text: words.saidText(text, person.name) }),
          by: person.id,
        },
        now,
      );
    return words.saidReply(
      say.number,
      audience,
      people.map((id) => nameOf(context, id)),
    );
  },
});

function audienceOf(to: (typeof AUDIENCES)[number], step: (typeof STEP_KINDS)[number] | undefined): Audience {
  if (to === "everyone" || to === "working" || to === "trays") return { kind: to };
  if (step === undefined) throw new UserError("ERR_NO_STEP", words.noStep());
  return { kind: to, step };
}

/** A longer text than a button carries is typed again. */
function toEveryone(text: string): Action[] {
  const line = makeLine("class say", { to: "everyone", text });
  return fitsKey(line) ? [{ label: words.sayToEveryone(), line }] : [];
}

function nameOf({ stores, class: { id } }: Context, personId: string): string {
  return stores.members.find(id, personId)?.name ?? words.somebody();
}

export const classSaid = defineCommand({
  name: "class said",
  summary: "Who has received your last message to many",
  options: () => ({
    say: z.coerce
      .number()
      .int()
      .min(1)
      .max(1_000_000)
      .optional()
      .describe("Which one; the newest if left out"),
  }),
  who: whoMay("class said"),
  visibility: "private",
  rest: "say",
  handle({ say: number }, context) {
    const { says } = context.stores;
    const say = number === undefined ? says.newest(context.class.id) : says.find(context.class.id, number);
    if (!say)
      throw number === undefined
        ? new UserError("ERR_NO_SAY", words.noSay())
        : new UserError("ERR_UNKNOWN_SAY", words.unknownSay(number));
    return words.reachReply(
      say,
      says.reached(say).flatMap((each) => reachedPeople(context, each, says.shownTo(say))),
    );
  },
});

/** Where it was said on a page, it has reached whom that page showed it to: the channel is nobody. */
function reachedPeople(
  context: Context,
  reach: Reach,
  shownTo: ReadonlyMap<string, number>,
): words.ReachedPerson[] {
  if (!reach.isOnPage) return [reachedPerson(context, reach)];
  const { members } = context.stores;
  const meant =
    reach.personId === null
      ? members.list(context.class.id).filter(({ personId }) => personId !== reach.by)
      : [{ personId: reach.personId, name: nameOf(context, reach.personId) }];
  return meant.map(({ personId, name }) => {
    const atMs = shownTo.get(personId) ?? null;
    return { name, state: atMs === null ? "unseen" : "has it", atMs, byMention: false };
  });
}

function reachedPerson(context: Context, reach: Reach): words.ReachedPerson {
  const mentioned = reach.personId === null ? reach.mentions[0] : undefined;
  const personId = reach.personId ?? mentioned;
  return {
    name: personId === undefined ? null : nameOf(context, personId),
    state: reach.state === "sent" ? "has it" : reach.state === "failed" ? "not reached" : "on its way",
    atMs: reach.sentAt,
    byMention: mentioned !== undefined,
  };
}
