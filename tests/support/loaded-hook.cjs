// Loaded before the program by `node --require`: says what has been read, and done to the store, by the time the first call is kept.
const { statSync } = require("node:fs");
const { join } = require("node:path");
// The driver as the program has it: built in.
const { openDriver } = require("../../dist/bot/part-driver.js");

const database = Object.getPrototypeOf(openDriver(":memory:"));
const { prepare, transaction } = database;
let isExamined = false;
let isKept = false;
let isTold = false;

database.prepare = function (sql) {
  if (/quick_check/i.test(sql)) isExamined = true;
  if (/^insert into messages/i.test(sql)) isKept = true;
  return prepare.call(this, sql);
};

database.transaction = function (work) {
  const { immediate } = transaction.call(this, work);
  return { immediate: (...given) => tellAfter(() => immediate(...given)) };
};

function tellAfter(work) {
  const result = work();
  if (isTold || !isKept) return result;
  isTold = true;
  const { size } = statSync(join(process.env.SINKSIDE_DATA, "sinkside.db"));
  process.stdout.write(`store: ${JSON.stringify({ size, isExamined })}\n`);
  process.stdout.write(`read: ${JSON.stringify(Object.keys(require.cache))}\n`);
  return result;
}
