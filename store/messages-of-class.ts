/*
 * The index of the feed goes by blocks of messages, and by class within a block: what is said together, in however many classes,
 * is written to a few pages of it. Whoever asks for messages of one class goes through its blocks, by these words alone.
 */

const BLOCK = "id >> 12";

export const OLDEST_FIRST = `${BLOCK}, id`;
export const NEWEST_FIRST = `${BLOCK} desc, id desc`;

/** Those of a class, and of the blocks in which numbers from `from` to `to` lie: for a `where` on messages. */
export function isOfClass(classId: string, from = "0", to = `${Number.MAX_SAFE_INTEGER}`): string {
  const first = `max(${from}, (select min(id) from messages)) >> 12`;
  const last = `min(${to}, (select max(id) from messages)) >> 12`;
  return `${BLOCK} in (with recursive block (n) as (select ${last} union all select n - 1 from block where n > ${first})
    select n from block) and class_id = ${classId}`;
}
