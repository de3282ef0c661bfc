/* Runs in a measured page before anything of its own: keeps what a bench asks for later. */
/* global window, document, PerformanceObserver, MutationObserver, performance */

const kept = { long: [], events: [], marks: {} };
window.bench = kept;

new PerformanceObserver((list) => {
  for (const { duration } of list.getEntries()) kept.long.push(duration);
}).observe({ type: "longtask", buffered: true });

new PerformanceObserver((list) => {
  for (const { name, startTime, processingStart, processingEnd, duration } of list.getEntries())
    if (/^key|input/.test(name))
      kept.events.push({
        delay: processingStart - startTime,
        work: processingEnd - processingStart,
        painted: duration,
      });
}).observe({ type: "event", buffered: true, durationThreshold: 16 });

/** When each of these was first there. A call takes no press in its first second: `free` is the end of that. */
const SEEN = {
  frame: ".bench",
  call: "dialog.cue",
  held: "html[data-held] dialog.cue",
  free: "html:not([data-held]) dialog.cue",
  answered: ".run.is-running",
  log: ".entry",
};
new MutationObserver(() => {
  for (const [name, selector] of Object.entries(SEEN)) {
    const isTooEarly = name === "free" && kept.marks.held === undefined;
    if (kept.marks[name] === undefined && !isTooEarly && document.querySelector(selector))
      kept.marks[name] = performance.now();
  }
  // By the page itself, as a hand would: the driver of the browser takes its own time on a busy machine.
  if (window.isToPress && kept.marks.free !== undefined && kept.marks.pressed === undefined) {
    kept.marks.pressed = performance.now();
    document.querySelector("dialog.cue .cue-keys button").click();
  }
}).observe(document, { childList: true, subtree: true, attributes: true });
