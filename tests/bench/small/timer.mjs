/* A process that does nothing but wait: how late its timer is, is how late anything can't help being under the same holding. */
const EVERY_MS = 100;
let late = [];
const from = Date.now();
let count = 0;
function next() {
  count += 1;
  const dueAt = from + count * EVERY_MS;
  setTimeout(() => {
    late.push(Date.now() - dueAt);
    next();
  }, dueAt - Date.now());
}
next();
process.on("message", () => {
  process.send(late);
  late = [];
});

// Whoever started it may have failed.
process.on("disconnect", () => process.exit());
