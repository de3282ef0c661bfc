import { isOfClass } from "./messages-of-class.ts";

/*
 * Every column in which something a person wrote, or a person's name, can stand. A test holds this list against the store:
 * a new text column must be named here or there as one that can hold no name.
 */

export interface TextColumn {
  readonly table: string;
  /** How a row of it is found again. */
  readonly key: string;
  readonly column: string;
  readonly isJson: boolean;
  /** Which rows are a class's. */
  readonly ofClass: string;
}

const OWN = "class_id = @classId";
const text = (table: string, column: string, key = "id"): TextColumn => ({
  table,
  key,
  column,
  isJson: false,
  ofClass: OWN,
});
const json = (table: string, column: string): TextColumn => ({
  table,
  key: "id",
  column,
  isJson: true,
  ofClass: OWN,
});

export const TEXT_COLUMNS: readonly TextColumn[] = [
  json("sheets", "body"),
  json("sheet_imports", "body"),
  json("tanks", "body"),
  json("plans", "body"),
  json("runs", "body"),
  json("runs", "phase"),
  // Safelights, papers' developers and periods bear whatever names people gave them.
  { table: "classes", key: "id", column: "habits", isJson: true, ofClass: "id = @classId" },
  json("outbox", "body"),
  text("outbox", "detail"),
  text("rolls", "note"),
  text("rolls", "fault"),
  // Bottles without a batch of ours bear whatever label people gave them.
  text("rolls", "batches"),
  json("rolls", "body"),
  json("enlargers", "body"),
  json("papers", "body"),
  json("strips", "body"),
  text("prints", "title"),
  text("prints", "frame"),
  text("prints", "note"),
  text("prints", "fault"),
  json("prints", "body"),
  { ...json("messages", "body"), ofClass: isOfClass("@classId") },
  text("says", "body"),
  text("sink_presses", "line"),
  text("boards", "shown", "class_id"),
  json("batches", "body"),
  json("shelf", "body"),
  json("handovers", "body"),
  json("set_aside", "body"),
  text("set_aside", "name"),
  {
    table: "push_owed",
    key: "id",
    column: "body",
    isJson: true,
    ofClass: "subscription_id in (select id from push_subscriptions where class_id = @classId)",
  },
  {
    table: "ledger",
    key: "id",
    column: "body",
    isJson: true,
    ofClass: "batch_id in (select id from batches where class_id = @classId)",
  },
];
