import { createHash } from "node:crypto";
import { createTypingPace, type TypingPace } from "./pace.ts";

/* Drawings as PNG: each drawn once as long as it is looked at, one after the other, and for each person only so many. */

const MOST_KEPT_BYTES = 16 * 2 ** 20;
/** A page that opens an evening's feed, and then a few a minute. */
const AT_ONCE = 20;
const PER_SECOND = 0.5;
const MOST_SESSIONS = 2000;

export interface Pictures {
  /** "fast": this person has had their share for now. */
  draw(svg: string, person: string, nowMs: number): Promise<Buffer> | "fast";
}

export function createPictures(renderPicture: (svg: string) => Promise<Buffer>): Pictures {
  const kept = new Map<string, Buffer>();
  const underWay = new Map<string, Promise<Buffer>>();
  const paces = new Map<string, TypingPace>();
  let bytes = 0;
  let last: Promise<unknown> = Promise.resolve();

  function paceOf(session: string, nowMs: number): TypingPace {
    const pace = paces.get(session) ?? createTypingPace(PER_SECOND, AT_ONCE, nowMs);
    paces.delete(session);
    paces.set(session, pace);
    if (paces.size > MOST_SESSIONS) paces.delete(paces.keys().next().value ?? "");
    return pace;
  }

  function keep(key: string, picture: Buffer): void {
    kept.set(key, picture);
    bytes += picture.length;
    for (const [oldest, { length }] of kept) {
      if (bytes <= MOST_KEPT_BYTES) return;
      kept.delete(oldest);
      bytes -= length;
    }
  }

  return {
    draw(svg, session, nowMs) {
      const key = createHash("sha256").update(svg).digest("base64url");
      const known = kept.get(key);
      if (known) {
        // The one looked at last goes last.
        kept.delete(key);
        kept.set(key, known);
        return Promise.resolve(known);
      }
      const drawing = underWay.get(key);
      if (drawing) return drawing;
      if (paceOf(session, nowMs).take(nowMs) !== "ok") return "fast";
      const mine = last.then(() => renderPicture(svg)).finally(() => underWay.delete(key));
      last = mine.catch(() => {});
      underWay.set(key, mine);
      return mine.then((picture) => {
        keep(key, picture);
        return picture;
      });
    },
  };
}
