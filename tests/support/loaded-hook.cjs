// Loaded before the program by `node --require`: says what has been read, and done to the store, by the time the first call is kept.
const { statSync } = require("node:fs");
const { join } = require("node:path");
const Database = require("better-sqlite3");

const { prepare } = Database.prototype;
let isTold = false;
let isExamined = false;

Database.prototype.prepare = function (sql) {
  if (/quick_check/i.test(sql)) isExamined = true;
  if (!isTold && /^insert into messages/i.test(sql)) {
    isTold = true;
    const { size } = statSync(join(process.env.SINKSIDE_DATA, "sinkside.db"));
    process.stdout.write(`store: ${JSON.stringify({ size, isExamined })}\n`);
    process.stdout.write(`read: ${JSON.stringify(Object.keys(require.cache))}\n`);
  }
  return prepare.call(this, sql);
};
