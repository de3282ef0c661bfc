import { z } from "zod";
import { defineCommand, picks, UserError, type Command, type Context } from "../../define.ts";
import { numberIn, wholeIn } from "../../speech/shaped.ts";
import { durationIn, volumeIn } from "../../speech/quantity.ts";
import { CLEARING_SECONDS } from "../../../store/shapes/limits.ts";
import { parseNumber } from "../../speech/wording.ts";
import { setAsideNumber } from "../../unreadable.ts";
import { SQ_IN_PER_ROLL } from "../area.ts";
import { isFixer, type Batch } from "../../../store/shapes/batch.ts";
import { NONE_UNDER_WAY, type UnderWay } from "../under-way.ts";
import { enterLine } from "../enter.ts";
import type { Stores } from "../../../store/index.ts";
import * as words from "./reply.ts";
import { standing, write } from "./write.ts";
import { DESTINATIONS, LINE_PARTS, type LedgerLine, type LineBody } from "../../../store/shapes/ledger.ts";
import { stateOf, type BatchState } from "../state.ts";
import { checkWay } from "../check-way.ts";
import { filmsInTanks } from "../in-tanks.ts";
import { batchOption, completeBatch, findBatch, noteOption, readState, reasonOption } from "../options.ts";

const complete = { batch: completeBatch };
const toOption = z.enum(DESTINATIONS);

/** What becomes of films under way by a test: so many. */
export type OnTest = (stores: Stores, batch: Batch, line: number, now: number) => UnderWay;

export const makeBatchTest = (onTest: OnTest): Command =>
  defineCommand({
    name: "batch test",
    summary: "Note a test: clearing time of a scrap of film, pH by paper, silver by strip",
    options: () => ({
      batch: batchOption.describe("Which bottle, like B3"),
      clearing: durationIn(CLEARING_SECONDS)
        .optional()
        .describe("Until a scrap of undeveloped film is clear, like 0:45"),
      ph: numberIn(LINE_PARTS.phTenths, 10).optional().describe("pH by paper, like 5.5"),
      silver: numberIn(LINE_PARTS.silverMgPerLitre, 1000)
        .optional()
        .describe("Silver by test strip, grams per litre, like 3.5"),
      note: noteOption.describe("What else you saw: yellow, cloudy, smell"),
    }),
    who: "aide",
    visibility: "class",
    complete,
    handle({ batch: text, clearing, ph, silver, note }, context) {
      const batch = standing(context, text);
      if (clearing === undefined && ph === undefined && silver === undefined && note === "")
        throw new UserError("ERR_NO_READING", words.noReading());
      if (clearing !== undefined && !isFixer(batch.kind))
        throw new UserError("ERR_NOT_A_FIXER", words.notAFixer(batch));
      const before = readState(context, batch);
      const line = write(context, batch, {
        kind: "tested",
        clearingSeconds: clearing ?? null,
        phTenths: ph === undefined ? null : Math.round(ph * 10),
        silverMgPerLitre: silver === undefined ? null : Math.round(silver * 1000),
        note,
      });
      const isTimed = line !== undefined && clearing !== undefined;
      return words.testedReply(batch, before, readState(context, batch), {
        clearing: clearing ?? null,
        hasSilver: silver !== undefined,
        underWay: isTimed ? onTest(context.stores, batch, line.id, context.now) : NONE_UNDER_WAY,
      });
    },
  });

export const batchTopup = defineCommand({
  name: "batch topup",
  summary: "Note fresh bath or replenisher added to a bottle, and used bath taken out for it",
  options: () => ({
    batch: batchOption.describe("Which bottle, like B3"),
    add: volumeIn(LINE_PARTS.amount).describe("What was added, like 300 ml"),
    as: z
      .enum(["fresh", "replenisher"])
      .optional()
      .describe("fresh: at the bottle's own strength; replenisher, where it was mixed with replenish:"),
    remove: volumeIn(LINE_PARTS.amount).optional().describe("Used bath taken out first, like 300 ml"),
    to: toOption.optional().describe("Where that went"),
    note: noteOption.describe("A note"),
  }),
  who: "aide",
  visibility: "class",
  complete,
  handle({ batch: text, add, as, remove, to, note }, context) {
    const batch = standing(context, text);
    if (as === "replenisher" && !batch.replenishMlPerRoll)
      throw new UserError("ERR_NOT_REPLENISHED", words.notReplenished(batch));
    const isReplenisher = (as ?? (batch.replenishMlPerRoll ? "replenisher" : "fresh")) === "replenisher";
    const before = readState(context, batch);
    if (remove !== undefined) {
      if (remove > before.volumeMl)
        throw new UserError("ERR_NOT_SO_MUCH", words.notSoMuch(batch, before.volumeMl));
      if (to === undefined) throw new UserError("ERR_WHERE_TO", words.whereTo());
      checkWay(batch, to);
    }
    const tooMuchMl = before.volumeMl + add - batch.bottleMl;
    if (tooMuchMl > (remove ?? 0))
      throw new UserError("ERR_OVERFLOW", words.overflow(batch, before.volumeMl, tooMuchMl));
    write(context, batch, {
      kind: "topped",
      addedMl: add,
      removedMl: remove ?? 0,
      to: remove === undefined ? null : (to ?? null),
      ...(isReplenisher ? { isReplenisher } : {}),
      note,
    });
    return words.toppedReply(batch, before, readState(context, batch));
  },
});

export const batchDiscard = defineCommand({
  name: "batch discard",
  summary: "Note that a bottle, or a part of it, is thrown away, and where it went",
  options: () => ({
    batch: batchOption.describe("Which bottle, like B3"),
    to: toOption.describe("Where it went"),
    ml: volumeIn(LINE_PARTS.amount).optional().describe("How much, if not all of it"),
    note: noteOption.describe("Why, or a note"),
  }),
  who: "aide",
  visibility: "class",
  complete,
  handle({ batch: text, to, ml, note }, context) {
    const setAside = setAsideNumber(context, "batch", parseNumber("batch", text));
    if (setAside) return setAside;
    const batch = standing(context, text);
    checkWay(batch, to);
    const left = Math.max(0, readState(context, batch).volumeMl);
    if (ml !== undefined && ml > left) throw new UserError("ERR_NOT_SO_MUCH", words.notSoMuch(batch, left));
    const isAll = ml === undefined || ml === left;
    write(context, batch, { kind: "discarded", ml: ml ?? left, to, isAll, note });
    const inTanks = isAll ? filmsInTanks(context.stores, batch) : 0;
    return words.discardedReply(batch, readState(context, batch), { ml: ml ?? left, to, inTanks });
  },
});

export const batchCorrect = defineCommand({
  name: "batch correct",
  summary: "Put the ledger right by a new line: take a line back, or add or take off ml or rolls",
  options: () => ({
    batch: batchOption.describe("Which bottle, like B3"),
    reason: reasonOption.describe("Why; it stays in the ledger"),
    line: z.coerce.number().int().min(1).optional().describe("Number of the line that was wrong"),
    ml: wholeIn(LINE_PARTS.change)
      .optional()
      .describe("ml more in the bottle than the ledger says; below 0: less"),
    rolls: z.coerce
      .number()
      .multipleOf(0.25, { error: () => words.quarters() })
      .min(-999)
      .max(999)
      .optional()
      .describe("Rolls more through it than the ledger says; below 0: fewer"),
  }),
  who: "aide",
  visibility: "class",
  complete,
  handle({ batch: text, reason, line: position, ml = 0, rolls = 0 }, context) {
    const batch = findBatch(context, text);
    if (position === undefined && ml === 0 && rolls === 0)
      throw new UserError("ERR_NOTHING_TO_CORRECT", words.nothingToCorrect());
    const before = readState(context, batch);
    const lines = context.stores.batches.lines(batch.id);
    const wrong = position === undefined ? undefined : lines[position - 1];
    if (position !== undefined && !wrong)
      throw new UserError("ERR_NO_SUCH_LINE", words.noSuchLine(batch, position, lines.length));
    if (wrong && (wrong.body.kind === "mixed" || wrong.body.kind === "corrected"))
      throw new UserError("ERR_LINE_STAYS", words.lineStays());
    if (lines.some(({ body }) => body.kind === "corrected" && body.reverses === wrong?.id && wrong))
      throw new UserError("ERR_TAKEN_BACK", words.takenBack());
    if (ml < 0 && before.volumeMl + ml < 0)
      throw new UserError("ERR_BELOW_ZERO", words.belowZeroMl(batch, before.volumeMl));
    if (rolls < 0 && before.usedSqIn + rolls * SQ_IN_PER_ROLL < 0)
      throw new UserError("ERR_BELOW_ZERO", words.belowZeroRolls(batch, before.usedSqIn));
    const body: LineBody = {
      kind: "corrected",
      reverses: wrong?.id ?? null,
      ml,
      areaSqIn: Math.round(rolls * SQ_IN_PER_ROLL),
      reason,
    };
    checkBottle(context, batch, lines, before, body);
    write(context, batch, body);
    return words.correctedReply(batch, before, readState(context, batch));
  },
});

/** @throws UserError where the ledger would then have more in the bottle than it holds. */
function checkBottle(
  { now }: Context,
  batch: Batch,
  lines: readonly LedgerLine[],
  before: BatchState,
  body: LineBody,
): void {
  const last = lines.at(-1);
  if (!last) return;
  const after = stateOf(batch, [...lines, { ...last, id: last.id + 1, body }], now);
  if (after.volumeMl <= batch.bottleMl || after.volumeMl <= before.volumeMl) return;
  throw new UserError("ERR_OVERFLOW", words.correctedOverflow(batch, after.volumeMl));
}

export const batchAllow = defineCommand({
  name: "batch allow",
  summary: "Let one person use an exhausted bath for one tank, in your name; it stays in the ledger",
  options: () => ({
    batch: batchOption.describe("Which bottle, like B3"),
    reason: reasonOption.describe("Why; it stays in the ledger"),
    person: z
      .string()
      .trim()
      .min(1)
      .max(60)
      .optional()
      .meta(picks("person"))
      .describe("Who may; you if left out"),
  }),
  who: "aide",
  visibility: "class",
  complete,
  handle({ batch: text, reason, person: name }, context) {
    const { stores, now } = context;
    const batch = standing(context, text);
    const state = readState(context, batch);
    if (state.standing === "ready") throw new UserError("ERR_NOT_WORN", words.notWorn(batch));
    const member =
      name === undefined
        ? { personId: context.person.id, name: context.person.name }
        : stores.members.findByName(context.class.id, name);
    if (!member) throw new UserError("ERR_UNKNOWN_PERSON", words.unknownPerson(name ?? ""));
    const line = { batchId: batch.id, key: null, runId: null, atMs: now, person: context.person } as const;
    const about = { id: member.personId, name: member.name };
    enterLine(stores, batch, { ...line, about, body: { kind: "allowed", reason } }, now);
    return words.allowedReply(batch, state, member.name);
  },
});
