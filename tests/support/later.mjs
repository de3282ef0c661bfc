/* Preloaded into a process: its wall clock is so far ahead. */

const laterMs = Number(process.env.LATER_MS ?? 0);
const Today = Date;

globalThis.Date = class extends Today {
  constructor(...given) {
    super(...(given.length === 0 ? [Today.now() + laterMs] : given));
  }

  static now() {
    return Today.now() + laterMs;
  }
};
