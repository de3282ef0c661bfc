import type { Random } from "../simulation/random.ts";
import type { Act } from "./trace.ts";

/*
 * A disk whose power goes. What was synced is there; of what was written since, any part may be there, in any order, and a
 * write may be torn between two sectors.
 */

const SECTOR_BYTES = 512;

type Change = Extract<Act, { kind: "write" | "truncate" }>;

/** The bytes of a file, with room to grow. */
class Image {
  private room: Buffer;
  private length: number;

  constructor(bytes: Buffer = Buffer.alloc(0)) {
    this.room = Buffer.from(bytes);
    this.length = bytes.length;
  }

  apply(change: Change): void {
    if (change.kind === "truncate") return this.resize(change.size);
    const end = change.at + change.bytes.length;
    if (end > this.length) this.resize(end);
    change.bytes.copy(this.room, change.at);
  }

  bytes(): Buffer {
    return this.room.subarray(0, this.length);
  }

  private resize(length: number): void {
    if (length > this.room.length)
      this.room = Buffer.concat([this.bytes()], Math.max(length, this.room.length * 2));
    this.room.fill(0, Math.min(this.length, length));
    this.length = length;
  }
}

interface FileOnDisk {
  readonly synced: Image;
  since: Change[];
}

export class Disk {
  private readonly files = new Map<string, FileOnDisk>();

  take(act: Act): void {
    if (act.kind === "ack") return;
    if (act.kind === "remove") {
      this.files.delete(act.file);
      return;
    }
    const file = this.files.get(act.file) ?? { synced: new Image(), since: [] };
    this.files.set(act.file, file);
    if (act.kind !== "sync") file.since.push(act);
    else {
      for (const each of file.since) file.synced.apply(each);
      file.since = [];
    }
  }

  /** What is found after the power is back. */
  afterCut(random: Random): Map<string, Buffer> {
    const found = new Map<string, Buffer>();
    for (const [path, { synced, since }] of this.files) {
      const image = new Image(synced.bytes());
      for (const each of since)
        if (!random.chance(0.4)) image.apply(random.chance(0.3) ? tear(each, random) : each);
      found.set(path, image.bytes());
    }
    return found;
  }
}

/** Some of the sectors of one write. */
function tear(change: Change, random: Random): Change {
  if (change.kind !== "write") return change;
  const sectors = Math.ceil(change.bytes.length / SECTOR_BYTES);
  const from = random.whole(0, sectors - 1) * SECTOR_BYTES;
  const to = Math.min(change.bytes.length, from + random.whole(1, sectors) * SECTOR_BYTES);
  return { ...change, at: change.at + from, bytes: change.bytes.subarray(from, to) };
}
