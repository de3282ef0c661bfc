import { z } from "zod";
import { handoverBodySchema } from "./handovers.ts";
import { runBodySchema } from "./runs.ts";
import { batchSchema } from "./shapes/batch.ts";
import { lineBodySchema } from "./shapes/ledger.ts";
import { enlargerSchema } from "./shapes/enlarger.ts";
import { paperSchema } from "./shapes/paper.ts";
import { printBodySchema } from "./shapes/print.ts";
import { rollBodySchema } from "./shapes/roll.ts";
import { phaseSchema } from "./shapes/run.ts";
import { habitsSchema } from "./shapes/school.ts";
import { sheetSchema } from "./shapes/sheet.ts";
import { packSchema } from "./shapes/shelf.ts";
import { tankSchema } from "./shapes/tank.ts";
import { anyPlanSchema } from "./shapes/tray.ts";
import type { UnreadableKind } from "./shapes/unreadable.ts";

/* Where rows of each kind stand, and the shape what they hold must have. */

export interface Source {
  readonly kind: UnreadableKind;
  /** id, number, name, personId, isOpen, body of each row of a class. */
  readonly sql: string;
  readonly shape: z.ZodType;
}

const columns = (number: string, name: string, personId: string, isOpen = "0", body = "body"): string =>
  `select id, ${number} as number, ${name} as name, ${personId} as "personId", ${isOpen} as "isOpen", ${body} as body`;

/** What became of a run that is over stands in the log. One whose very phase can't be read may be under way. */
const IS_OPEN = "coalesce(phase_kind, '') not in ('finished', 'stopped')";

/** Bottles that are gone bother nobody. */
const IS_STANDING = `not exists (select 1 from ledger gone
  where gone.batch_id = batches.id and gone.kind = 'discarded' and gone.body ->> 'isAll')`;

export const SOURCES: readonly Source[] = [
  {
    kind: "tank",
    sql: `${columns("number", "null", "null")} from tanks where class_id = ? order by number`,
    shape: tankSchema,
  },
  {
    kind: "sheet",
    sql: `${columns("null", "film || ', ' || developer || ' ' || dilution", "null")} from sheets where class_id = ? order by id`,
    shape: sheetSchema,
  },
  {
    kind: "plan",
    sql: `${columns("number", "null", "person_id")} from plans where class_id = ? order by number`,
    shape: anyPlanSchema,
  },
  {
    kind: "run",
    sql: `${columns("number", "null", "person_id", IS_OPEN, "json_object('body', json(body), 'phase', json(phase))")}
      from runs where class_id = ? and ${IS_OPEN} order by number`,
    shape: z.object({ body: runBodySchema, phase: phaseSchema }),
  },
  {
    kind: "batch",
    sql: `${columns("number", "product", "null", "0", "json_set(body, '$.product', product)")}
      from batches where class_id = ? and ${IS_STANDING} order by number`,
    shape: batchSchema.omit({ id: true, classId: true, number: true, kind: true, mixedAtMs: true }),
  },
  {
    kind: "batch",
    sql: `select batches.id, batches.number, product as name, null as "personId", 0 as "isOpen", ledger.body
      from ledger join batches on batches.id = ledger.batch_id where batches.class_id = ? and ${IS_STANDING} order by ledger.id`,
    shape: lineBodySchema,
  },
  {
    kind: "roll",
    sql: `${columns("number", "film", "person_id")} from rolls where class_id = ? order by number`,
    shape: rollBodySchema,
  },
  {
    kind: "shelf",
    sql: `${columns("null", "product", "null")} from shelf where class_id = ?
      and id in (select max(id) from shelf group by class_id, product) order by id`,
    shape: packSchema,
  },
  {
    kind: "handover",
    sql: `${columns("null", "null", "person_id")} from handovers where class_id = ? order by id`,
    shape: handoverBodySchema,
  },
  {
    kind: "enlarger",
    sql: `${columns("number", "null", "null")} from enlargers where class_id = ? order by number`,
    shape: enlargerSchema,
  },
  {
    kind: "paper",
    sql: `${columns("number", "null", "null")} from papers where class_id = ? order by number`,
    shape: paperSchema,
  },
  {
    kind: "print",
    sql: `${columns("number", "title", "person_id")} from prints where class_id = ? order by number`,
    shape: printBodySchema,
  },
  ...Object.entries(habitsSchema.shape).map(([name, shape]): Source => ({
    kind: "habit",
    sql: `${columns("null", `'${name}'`, "null", "0", `json_object('${name}', habits -> '$.${name}')`)}
        from classes where id = ? and habits -> '$.${name}' is not null`,
    shape: z.object({ [name]: shape }),
  })),
];
