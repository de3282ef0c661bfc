import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { LANGUAGE_NAMES } from "../../../bot/chat/room-page/word-books.ts";
import { de } from "../../../bot/chat/room-page/words.de.ts";
import { en } from "../../../bot/chat/room-page/words.en.ts";
import { SHOTS } from "../browser.ts";
import { listBarriers, RUN_AXE, type AxeResults } from "../axe.ts";
import type { Hand } from "./hand.ts";

/* What a person does at the page, in steps that every engine takes. */

/** Far longer than anything takes on a machine that is busy; nothing is measured by it. */
const PATIENCE_MS = 15_000;
const LOOK_MS = 50;

/** Waits until an expression in the page holds; its value. */
export async function until<T>(hand: Hand, expression: string, what = expression): Promise<T> {
  const end = performance.now() + PATIENCE_MS;
  for (;;) {
    let cause: unknown;
    try {
      const value = await hand.ask<T>(expression);
      if (value) return value;
    } catch (error) {
      // The page gives way to its next one just now.
      cause = error;
    }
    if (performance.now() > end)
      throw new Error(`${hand.engine}: never came: ${what}; the page says:\n${await readPage(hand)}`, {
        cause,
      });
    await wait(LOOK_MS);
  }
}

export const readPage = (hand: Hand): Promise<string> => hand.ask("document.body.innerText");

const quote = (text: string): string => JSON.stringify(text);
/** What is in front: an open dialog hides all that is behind it. */
const FRONT = `([...document.querySelectorAll("dialog[open]")].at(-1) ?? document)`;
const keyNamed = (name: string): string =>
  `([...${FRONT}.querySelectorAll("button")].find((key) => !key.disabled && key.offsetParent !== null && key.textContent.trim() === ${quote(name)}) ?? null)`;
const fieldNamed = (label: string): string =>
  `([...${FRONT}.querySelectorAll("input, textarea, select")].find((field) => [...(field.labels ?? [])].some((each) => each.textContent.trim().startsWith(${quote(label)})) || field.getAttribute("aria-label") === ${quote(label)}) ?? null)`;
const labelNamed = (words: string): string =>
  `([...${FRONT}.querySelectorAll("label")].find((label) => label.textContent.trim() === ${quote(words)}) ?? null)`;
const elementAt = (selector: string): string => `document.querySelector(${quote(selector)})`;

async function tap(hand: Hand, finder: string): Promise<void> {
  const end = performance.now() + PATIENCE_MS;
  for (;;) {
    // Keys do nothing in a call's first moment, and just after it: a thumb may have been on its way.
    await until(hand, `(${finder}) !== null && document.documentElement.dataset.held === undefined`, finder);
    try {
      return await hand.click(finder);
    } catch (error) {
      // It moved, or was drawn anew, between looking and pressing.
      if (performance.now() > end) {
        await shoot(hand, "not-pressed");
        throw new Error(`${hand.engine}: can't press ${finder}`, { cause: error });
      }
      await wait(LOOK_MS);
    }
  }
}

/** Presses the key with these words on it. */
export const press = (hand: Hand, name: string): Promise<void> => tap(hand, keyNamed(name));

/** Presses what stands at a place of the page. */
export const pressAt = (hand: Hand, selector: string): Promise<void> => tap(hand, elementAt(selector));

/** The same, again until it has gone: a call that comes just then takes the press away. */
export async function pressAway(hand: Hand, selector: string): Promise<void> {
  await see(hand, selector);
  while (await hand.ask(`${elementAt(selector)} !== null`)) {
    if (await hand.ask(`${elementAt("dialog.cue")} !== null`)) await answerCall(hand);
    const finder = `document.querySelector(${quote(`html:not([data-held]) ${selector}`)})`;
    await hand.click(finder).catch(() => undefined);
    await wait(LOOK_MS);
  }
}

export async function fill(hand: Hand, label: string, text: string): Promise<void> {
  await until(hand, `${fieldNamed(label)} !== null`, `a field ${label}`);
  await hand.type(fieldNamed(label), text);
}

export const see = (hand: Hand, selector: string): Promise<unknown> =>
  until(hand, `${elementAt(selector)} !== null`, selector);

export const gone = (hand: Hand, selector: string): Promise<unknown> =>
  until(hand, `${elementAt(selector)} === null`, `no more ${selector}`);

export const read = (hand: Hand, selector: string): Promise<string> =>
  until(hand, `${elementAt(selector)}?.textContent`, selector);

export const count = (hand: Hand, selector: string): Promise<number> =>
  hand.ask(`document.querySelectorAll(${quote(selector)}).length`);

/** Types a line as a practised hand does, and sends it. */
export async function say(hand: Hand, line: string): Promise<void> {
  const input = `document.querySelector("[role=combobox]")`;
  await until(hand, `${input} !== null`, "the line to type");
  await hand.type(input, line);
  await hand.press("Escape");
  await hand.press("Enter");
}

export async function joinDemo(hand: Hand, name: string): Promise<void> {
  await fill(hand, en.door.yourName, name);
  await press(hand, en.door.demoStudent);
  await see(hand, ".link.is-open");
}

/** The demo's teacher makes this device one of the sink, for everybody who stands there. */
export async function openSink(hand: Hand): Promise<void> {
  await press(hand, en.door.demoTeacher);
  await see(hand, ".link.is-open");
  await press(hand, en.menu.open);
  await press(hand, en.menu.door);
  await press(hand, en.sink.open);
  await see(hand, ".sink");
}

/** Somebody new at the sink; the tanks are in front again afterwards. */
export async function comeToSink(hand: Hand, name: string): Promise<void> {
  await press(hand, en.sink.next);
  await see(hand, ".sink-desk input");
  await hand.type(`document.querySelector(".sink-desk input")`, name);
  await press(hand, en.sink.addKey);
  await until(hand, `document.querySelector(".sink-desk h2")?.textContent === ${quote(name)}`);
  await press(hand, en.sink.close);
  await gone(hand, ".sink-desk");
}

/** In the menu, as one does on a phone that speaks another language. */
export async function pickGerman(hand: Hand): Promise<void> {
  await press(hand, en.menu.open);
  await tap(hand, labelNamed(LANGUAGE_NAMES.de));
  await until(hand, `document.documentElement.lang === "de"`);
  await press(hand, de.menu.close);
  await gone(hand, "dialog.sheet");
}

/** By the first key of the call that is there, until it is taken, or the call is over by itself. */
export async function answerCall(hand: Hand): Promise<void> {
  await hand.ask(`document.querySelector("dialog.cue")?.setAttribute("data-asked", "")`);
  const isThere = `document.querySelector("dialog.cue[data-asked]") !== null`;
  const key = `document.querySelector("html:not([data-held]) dialog.cue[data-asked] .cue-keys button")`;
  while (await hand.ask(isThere)) await hand.click(key).catch(() => wait(LOOK_MS));
}

/** Notes what is played as a file from now on. */
export const listenToTrack = (hand: Hand): Promise<void> =>
  hand.run(`
    window.track = { files: [], madeAt: 0, element: null };
    const makeUrl = URL.createObjectURL;
    URL.createObjectURL = (blob) => {
      if (blob.type === "audio/wav") {
        track.files.push(blob);
        track.madeAt = Date.now();
      }
      return makeUrl.call(URL, blob);
    };
    const play = HTMLMediaElement.prototype.play;
    HTMLMediaElement.prototype.play = function () {
      track.element = this;
      return play.call(this);
    };
  `);

/** Where sound begins in the newest file, seconds from its beginning, as the engine's own decoder reads it. */
export const onsetsOfTrack = (hand: Hand): Promise<number[]> =>
  hand.ask(`(async () => {
    const bytes = await track.files.at(-1).arrayBuffer();
    const buffer = await new OfflineAudioContext(1, 1, 8000).decodeAudioData(bytes);
    const samples = buffer.getChannelData(0);
    const onsets = [];
    let last = -Infinity;
    for (let index = 0; index < samples.length; index += 1) {
      if (Math.abs(samples[index]) < 0.06) continue;
      if (index - last > 0.4 * buffer.sampleRate) onsets.push(index / buffer.sampleRate);
      last = index;
    }
    return onsets;
  })()`);

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What axe-core finds serious or critical, in words. */
export async function findBarriers(hand: Hand): Promise<string[]> {
  await hand.run(axe);
  return listBarriers(await hand.ask<AxeResults>(RUN_AXE));
}

export async function shoot(hand: Hand, name: string): Promise<void> {
  writeFileSync(join(SHOTS, `${hand.engine}-${name}.png`), await hand.shoot());
}
