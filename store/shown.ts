import { isOfClass } from "./messages-of-class.ts";
import type { Db } from "./open.ts";
import type { NameForms, Redaction, Traces } from "./redaction.ts";

/* What others were shown of a person who is taken out: answers, calls and files in their feeds, kept as they were given. */

type Ids = { readonly classId: number; readonly personId: string };

/** Read before the person's rows go. */
export function tracesOf(db: Db, { classId, personId }: Ids, names: readonly string[]): Traces {
  const numbers = (table: "plans" | "runs" | "rolls" | "prints"): number[] =>
    db
      .prepare<[number, string], { number: number }>(
        `select number from ${table} where class_id = ? and person_id = ?`,
      )
      .all(classId, personId)
      .map(({ number }) => number);
  const texts = db
    .prepare<[number, string], { note: string; reason: string | null }>(
      "select note, body ->> '$.reason' as reason from rolls where class_id = ? and person_id = ?",
    )
    .all(classId, personId)
    .flatMap(({ note, reason }) => [note, reason ?? ""]);
  const onPrints = db
    .prepare<[number, string], { note: string; title: string }>(
      "select note, title from prints where class_id = ? and person_id = ?",
    )
    .all(classId, personId)
    .flatMap(({ note, title }) => [note, title]);
  return {
    names,
    plans: numbers("plans"),
    runs: numbers("runs"),
    rolls: numbers("rolls"),
    prints: numbers("prints"),
    texts: [...texts, ...onPrints],
  };
}

/**
 * Puts one sentence in place of each answer that tells of them, with its pictures and files: the figures in it are theirs
 * though the name be taken out. Of what others typed or said to many only what quotes them goes.
 */
export function withdrawShown(
  db: Db,
  classId: number,
  traces: Traces,
  forms: NameForms,
  redaction: Redaction,
): void {
  const tells = redaction.tellsOf(traces, forms);
  const quotes = redaction.tellsOf(
    { names: [], plans: [], runs: [], rolls: [], prints: [], texts: traces.texts },
    {
      whole: [],
      parts: [],
    },
  );
  const text = redaction.withdrawn();
  const put = db.prepare<[string, number]>("update messages set body = ? where id = ?");
  const told = db
    .prepare<[number], { id: number; body: string }>(`select id, body from messages where ${isOfClass("?")}`)
    .all(classId)
    .flatMap(({ id, body }) => {
      const { kind, say, author, ...shown } = JSON.parse(body) as Record<string, unknown>;
      const isTheirOwnWord = kind === "line" || say !== undefined;
      return (isTheirOwnWord ? quotes(shown) : tells(shown)) ? [{ id, kind, author }] : [];
    });
  for (const { id, ...left } of told) put.run(JSON.stringify({ ...left, text }), id);
}
