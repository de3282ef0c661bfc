import type { Need } from "../../support/needs.ts";
import type { Size } from "../browser.ts";

/* A hand on one page of one browser: the few things every engine's client can do, so that steps are written once. */

export type EngineName = "chromium" | "firefox" | "webkit";

export interface Engine {
  readonly name: EngineName;
  readonly needs: readonly Need[];
  launch(): Promise<LaunchedEngine>;
}

export interface LaunchedEngine {
  /** A page of its own, with nothing kept from others. A certificate nobody vouches for is let pass. */
  open(url: string, options?: OpenOptions): Promise<Hand>;
  close(): Promise<void>;
}

export interface OpenOptions {
  readonly size?: Size;
}

/** `finder`: an expression that gives one element of the page, or null. */
export interface Hand {
  readonly engine: EngineName;
  /** The value of an expression in the page; a promise is waited for. */
  ask<T>(expression: string): Promise<T>;
  /** Runs a script, as if the page had it. */
  run(script: string): Promise<void>;
  /** Presses it with the engine's own pointer. */
  click(finder: string): Promise<void>;
  /** Puts `text` in place of what stands there, key by key. */
  type(finder: string, text: string): Promise<void>;
  press(key: "Enter" | "Escape"): Promise<void>;
  goto(url: string): Promise<void>;
  reload(): Promise<void>;
  shoot(): Promise<Buffer>;
  /** What the page complained about since it was opened. */
  complaints(): Promise<string[]>;
  close(): Promise<void>;
}
