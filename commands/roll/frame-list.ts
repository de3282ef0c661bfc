import { fail, ok, type Result } from "../result.ts";

/** Frames as people write them: `7`, `3, 7-9`. In order, each once. */
export function parseFrames(
  text: string,
  most: number,
): Result<number[], "ERR_NO_FRAMES" | "ERR_FRAME_RANGE"> {
  const frames = new Set<number>();
  for (const part of text.split(/[,; ]+/).filter(Boolean)) {
    const match = /^(\d{1,3})(?:[-–](\d{1,3}))?$/.exec(part);
    if (!match) return fail("ERR_NO_FRAMES");
    const from = Number(match[1]);
    const to = Number(match[2] ?? match[1]);
    if (to < from) return fail("ERR_NO_FRAMES");
    if (from < 1 || to > most) return fail("ERR_FRAME_RANGE");
    for (let frame = from; frame <= to; frame += 1) frames.add(frame);
  }
  return frames.size === 0 ? fail("ERR_NO_FRAMES") : ok([...frames].sort((a, b) => a - b));
}

/** `3, 7-9`: what parseFrames reads back. */
export function formatFrames(frames: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const frame of [...frames].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && frame === last[1] + 1) last[1] = frame;
    else runs.push([frame, frame]);
  }
  return runs
    .map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from}-${to}`))
    .join(", ");
}
