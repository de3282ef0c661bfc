import type { Page } from "playwright-core";

/* What a page sounds, noted in the browser: each note of its own, and the files of its track. */

const NOTE = `
  window.heard = { notes: [], files: [], elements: [], said: [] };
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (at) {
    heard.notes.push({ hertz: this.frequency.value, at: Date.now() });
    return start.call(this, at);
  };
  const makeUrl = URL.createObjectURL;
  URL.createObjectURL = (blob) => {
    if (blob instanceof Blob && blob.type === "audio/wav") heard.files.push({ blob, at: Date.now() });
    return makeUrl.call(URL, blob);
  };
  window.Audio = class extends Audio {
    constructor(...args) {
      super(...args);
      heard.elements.push(this);
    }
  };
`;

/** Before the page is opened. */
export async function listen(page: Page): Promise<void> {
  await page.addInitScript(NOTE);
}

/** The page's own notes since an instant of the browser's clock, by pitch. */
export function notesSince(page: Page, at: number): Promise<number[]> {
  return page.evaluate(
    `heard.notes.filter((note) => note.at >= ${at}).map((note) => Math.round(note.hertz))`,
  );
}

export interface Playing {
  readonly isPaused: boolean;
  /** Of the element, ms. */
  readonly positionMs: number;
  /** Since the file it plays was made, ms. */
  readonly sinceMadeMs: number;
  readonly bytes: number;
}

/** The track as it plays at this moment; undefined where there is none. */
export function trackNow(page: Page): Promise<Playing | undefined> {
  return page.evaluate(`(() => {
    const element = heard.elements[0];
    const file = heard.files[heard.files.length - 1];
    return element && file && element.src && {
      isPaused: element.paused,
      positionMs: element.currentTime * 1000,
      sinceMadeMs: Date.now() - file.at,
      bytes: file.blob.size,
    };
  })()`);
}

/** Where sound begins in the newest file, ms from its beginning, as the browser's own decoder reads it. */
export function onsetsOfTrack(page: Page): Promise<number[]> {
  return page.evaluate(`(async () => {
    const { blob } = heard.files[heard.files.length - 1];
    const context = new OfflineAudioContext(1, 1, 8000);
    const { sampleRate, ...audio } = await context.decodeAudioData(await blob.arrayBuffer()).then((buffer) => ({
      sampleRate: buffer.sampleRate,
      samples: buffer.getChannelData(0),
    }));
    const onsets = [];
    let last = -Infinity;
    audio.samples.forEach((value, index) => {
      if (Math.abs(value) < 0.06) return;
      if ((index - last) / sampleRate > 0.4) onsets.push((index / sampleRate) * 1000);
      last = index;
    });
    return onsets;
  })()`);
}
