import type { Page } from "playwright-core";

/* What a page sounds, noted in the browser: each note of its own, and the files of its track. */

const NOTE = `
  window.heard = { notes: [], files: [], elements: [], said: [], places: [] };
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (at) {
    heard.notes.push({ hertz: this.frequency.value, at: Date.now() });
    return start.call(this, at);
  };
  const makeUrl = URL.createObjectURL;
  URL.createObjectURL = (blob) => {
    const url = makeUrl.call(URL, blob);
    if (blob instanceof Blob && blob.type === "audio/wav") heard.files.push({ blob, url, at: Date.now() });
    return url;
  };
  const place = ({ target }) => {
    const { src, currentTime, paused, muted, seeking } = target;
    heard.places.push({ at: Date.now(), src, ms: currentTime * 1000, isHeard: !paused && !muted && !seeking });
  };
  setInterval(() => heard.elements.forEach((target) => place({ target })), 20);
  window.Audio = class extends Audio {
    constructor(...args) {
      super(...args);
      heard.elements.push(this);
      for (const told of ["playing", "pause", "seeking", "seeked", "volumechange", "timeupdate"])
        this.addEventListener(told, place);
    }
  };
`;

/** Before the page is opened. */
export async function listen(page: Page): Promise<void> {
  await page.addInitScript(NOTE);
}

/** The page's own notes from one instant of the browser's clock to another, by pitch. */
export function notesSince(page: Page, from: number, until = Number.MAX_SAFE_INTEGER): Promise<number[]> {
  return page.evaluate(
    `heard.notes.filter(({ at }) => at >= ${from} && at < ${until}).map(({ hertz }) => Math.round(hertz))`,
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

export interface Sound {
  /** By the browser's clock, ms. */
  readonly at: number;
  readonly hertz: number;
  readonly from: "page" | "track";
}

/** Every note that was heard since then, of the page's own and of its files where their element played them. */
export function soundsSince(page: Page, since: number): Promise<Sound[]> {
  return page.evaluate(`(async () => {
    const notesOf = async (blob) => {
      const context = new OfflineAudioContext(1, 1, 8000);
      const buffer = await context.decodeAudioData(await blob.arrayBuffer());
      const { sampleRate } = buffer;
      const samples = buffer.getChannelData(0);
      const notes = [];
      let last = -Infinity;
      samples.forEach((value, index) => {
        if (Math.abs(value) < 0.06) return;
        const isNew = (index - last) / sampleRate > 0.04;
        last = index;
        if (!isNew) return;
        // How often it rises through nothing in a tenth of a second.
        let rises = 0;
        for (let at = index + 1; at < index + sampleRate / 10; at += 1)
          if (samples[at - 1] < 0 && samples[at] >= 0) rises += 1;
        notes.push({ ms: (index / sampleRate) * 1000, hertz: rises * 10 });
      });
      return notes;
    };
    const sounds = heard.notes.map(({ at, hertz }) => ({ at, hertz: Math.round(hertz), from: "page" }));
    for (const { blob, url } of heard.files) {
      const notes = await notesOf(blob);
      const places = heard.places.filter(({ src }) => src === url);
      for (const [index, to] of places.entries()) {
        const from = places[index - 1];
        const went = from && to.ms - from.ms;
        // A jump sounds nothing.
        if (!from?.isHeard || !to.isHeard || went <= 0 || went > to.at - from.at + 150) continue;
        for (const { ms, hertz } of notes)
          if (from.ms < ms && ms <= to.ms) sounds.push({ at: from.at + ms - from.ms, hertz, from: "track" });
      }
    }
    return sounds.filter(({ at }) => at >= ${since}).sort((a, b) => a.at - b.at);
  })()`);
}

/** How often a word was heard since then, from the page or from its track: by its lower note. */
export async function wordsSince(page: Page, since: number): Promise<number> {
  return (await soundsSince(page, since)).filter(({ hertz }) => Math.abs(hertz - 659) <= 25).length;
}
