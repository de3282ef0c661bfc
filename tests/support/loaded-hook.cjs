// Loaded before the program by `node --require`: says what has been read, and done to the store, by the time the first call is kept.
const { statSync } = require("node:fs");
const { join } = require("node:path");
// The driver as the program has it: built in.
const { openDriver } = require("../../dist/bot/part-driver.js");

const database = Object.getPrototypeOf(openDriver(":memory:"));
const { prepare } = database;
let isTold = false;
let isExamined = false;

database.prepare = function (sql) {
  if (/quick_check/i.test(sql)) isExamined = true;
  if (!isTold && /^insert into messages/i.test(sql)) {
    isTold = true;
    const { size } = statSync(join(process.env.SINKSIDE_DATA, "sinkside.db"));
    process.stdout.write(`store: ${JSON.stringify({ size, isExamined })}\n`);
    process.stdout.write(`read: ${JSON.stringify(Object.keys(require.cache))}\n`);
  }
  return prepare.call(this, sql);
};
