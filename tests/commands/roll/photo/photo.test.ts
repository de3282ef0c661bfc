import { describe, expect, it } from "vitest";
import { renderPicture } from "../../../../bot/chat/picture.ts";
import { cleanPhoto, MOST_PHOTO_BYTES } from "../../../../commands/roll/photo/photo.ts";
import { rollPhoto } from "../../../../commands/roll/photo/command.ts";
import { createRoom } from "../../../support/room.ts";
import { aNewRoll } from "../../../support/rolls.ts";

/* A baseline JPEG of one grey block, written out by the standard (ITU-T T.81); what goes between is the test's. */

const segment = (marker: number, body: readonly number[]): number[] => [
  0xff,
  marker,
  ((body.length + 2) >> 8) & 0xff,
  (body.length + 2) & 0xff,
  ...body,
];
const ascii = (text: string): number[] => [...Buffer.from(text, "latin1")];
const QUANTS = segment(0xdb, [0, ...Array.from({ length: 64 }, () => 16)]);
const FRAME = segment(0xc0, [8, 0, 8, 0, 8, 1, 1, 0x11, 0]);
// Huffman tables with one code each: category 0 for DC, end of block for AC.
const DC = segment(0xc4, [0x00, 1, ...Array.from({ length: 15 }, () => 0), 0]);
const AC = segment(0xc4, [0x10, 1, ...Array.from({ length: 15 }, () => 0), 0]);
const SCAN = [...segment(0xda, [1, 1, 0, 0, 63, 0]), 0b0011_1111];
const JFIF = segment(0xe0, [...ascii("JFIF"), 0, 1, 1, 0, 0, 1, 0, 1, 0, 0]);
const PICTURE = [...QUANTS, ...FRAME, ...DC, ...AC];

/** Exif as phones write it: which way is up (6: turned right), and a place. */
const exif = (orientation: number, isLittle: boolean): number[] => {
  const two = (value: number): number[] =>
    isLittle ? [value & 0xff, value >> 8] : [value >> 8, value & 0xff];
  const four = (value: number): number[] => (isLittle ? [value, 0, 0, 0] : [0, 0, 0, value]);
  return segment(0xe1, [
    ...ascii("Exif"),
    0,
    0,
    ...ascii(isLittle ? "II" : "MM"),
    ...two(42),
    ...four(8),
    ...two(1),
    ...two(0x0112),
    ...two(3),
    ...four(1),
    ...two(orientation),
    0,
    0,
    ...four(0),
    ...ascii("GPS 38.7N 9.1W Learner's phone"),
  ]);
};
const jpeg = (...between: number[][]): Uint8Array =>
  Uint8Array.from([0xff, 0xd8, ...between.flat(), ...PICTURE, ...SCAN, 0xff, 0xd9]);
const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

/** Whether a second program can draw it. */
async function canBeDrawn(bytes: Uint8Array, mediaType: string): Promise<boolean> {
  const data = Buffer.from(bytes).toString("base64");
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8" width="8" height="8"><image width="8" height="8" href="data:${mediaType};base64,${data}"/></svg>`;
  const blank = await renderPicture(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8" width="8" height="8"/>',
    8,
  );
  return !(await renderPicture(svg, 8)).equals(blank);
}

describe("a JPEG", () => {
  it("loses place, time, device, comments and previews, and can still be drawn", async () => {
    const dirty = jpeg(
      JFIF,
      exif(1, true),
      segment(0xfe, ascii("by Mina")),
      segment(0xed, ascii("Photoshop 38.7N")),
    );
    expect(await canBeDrawn(dirty, "image/jpeg")).toBe(true);
    const cleaned = cleanPhoto(dirty);
    expect(cleaned.ok && cleaned.value.mediaType).toBe("image/jpeg");
    const bytes = cleaned.ok ? cleaned.value.bytes : new Uint8Array();
    for (const word of ["GPS", "38.7N", "phone", "Mina", "Photoshop", "Exif"])
      expect(textOf(bytes)).not.toContain(word);
    expect(textOf(bytes)).toContain("JFIF");
    expect(await canBeDrawn(bytes, "image/jpeg")).toBe(true);
  });

  it.each([true, false])("keeps which way is up (little-endian: %s) and nothing beside it", (isLittle) => {
    const cleaned = cleanPhoto(jpeg(exif(6, isLittle)));
    const bytes = cleaned.ok ? cleaned.value.bytes : new Uint8Array();
    expect(textOf(bytes)).not.toContain("GPS");
    // Cleaned once more, the segment of ours stays as it is.
    expect(cleanPhoto(bytes)).toEqual(cleaned);
    expect([...bytes.subarray(2, 4)]).toEqual([0xff, 0xe1]);
    expect(bytes[2 + 4 + 6 + 8 + 2 + 8 + 1]).toBe(6);
  });

  it("loses whatever is hung on behind its end", () => {
    const cleaned = cleanPhoto(Uint8Array.from([...jpeg(), ...ascii("<script>secret</script>")]));
    expect(cleaned.ok && textOf(cleaned.value.bytes)).not.toContain("secret");
  });

  it("is refused where its end is missing or a length leads outside", () => {
    const whole = jpeg(JFIF);
    for (const cut of [3, 20, whole.length - 1])
      expect(cleanPhoto(whole.subarray(0, cut))).toMatchObject({ fault: { code: "ERR_PHOTO_BROKEN" } });
    const wrong = Uint8Array.from(whole);
    wrong[4] = 0xff;
    expect(cleanPhoto(wrong)).toMatchObject({ fault: { code: "ERR_PHOTO_BROKEN" } });
  });
});

describe("a PNG", () => {
  it("loses its texts, and can still be drawn", async () => {
    const png = new Uint8Array(
      await renderPicture(
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8" width="8" height="8"><circle r="4"/></svg>',
        8,
      ),
    );
    const text = chunk("tEXt", ascii("Author\0Mina at 38.7N"));
    const dirty = Uint8Array.from([...png.subarray(0, 33), ...text, ...png.subarray(33), ...ascii("tail")]);
    const cleaned = cleanPhoto(dirty);
    const bytes = cleaned.ok ? cleaned.value.bytes : new Uint8Array();
    expect(textOf(bytes)).not.toContain("Mina");
    expect(textOf(bytes)).not.toContain("tail");
    expect(await canBeDrawn(bytes, "image/png")).toBe(true);
    dirty[40] = (dirty[40] ?? 0) ^ 1;
    expect(cleanPhoto(dirty)).toMatchObject({ fault: { code: "ERR_PHOTO_BROKEN" } });
  });
});

/** A chunk with its checksum, by the standard's own bit-by-bit way. */
function chunk(type: string, body: readonly number[]): number[] {
  let crc = 0xffffffff;
  for (const byte of [...ascii(type), ...body]) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  const four = (value: number): number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff);
  return [...four(body.length), ...ascii(type), ...body, ...four((crc ^ 0xffffffff) >>> 0)];
}

describe("what is no photo", () => {
  it.each([
    ["a page", ascii("<html><img src=x onerror=alert(1)>"), "ERR_PHOTO_TYPE"],
    ["a drawing", ascii('<svg xmlns="http://www.w3.org/2000/svg"/>'), "ERR_PHOTO_TYPE"],
    ["nothing", [], "ERR_PHOTO_TYPE"],
    ["a picture of too many pixels", [...hugeJpeg()], "ERR_PHOTO_PIXELS"],
  ])("%s is refused", (_, bytes, code) => {
    expect(cleanPhoto(Uint8Array.from(bytes))).toMatchObject({ ok: false, fault: { code } });
  });

  it("is refused when it is too large, before it is looked at", () => {
    expect(cleanPhoto(new Uint8Array(MOST_PHOTO_BYTES + 1))).toMatchObject({
      fault: { code: "ERR_PHOTO_LARGE" },
    });
  });
});

function hugeJpeg(): Uint8Array {
  const bytes = jpeg();
  const at = bytes.findIndex((byte, index) => byte === 0xff && bytes[index + 1] === 0xc0);
  bytes.set([0xff, 0xff, 0xff, 0xff], at + 5);
  return bytes;
}

describe("a roll's photo", () => {
  it("is its owner's to give and to take, and goes with its owner", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    const roll = room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }));
    const school = room.stores.classes.get(1);
    if (!school) throw new Error("no class");
    const contextOf = (name: string) => ({
      now: room.clock.now(),
      person: { id: `room:${name.toLowerCase()}`, name },
      role: "student" as const,
      class: school,
      stores: room.stores,
    });
    const keep = (name: string, file: Uint8Array) =>
      rollPhoto.handle({ roll: "L1" }, { ...contextOf(name), file });
    expect(() => keep("Ben", jpeg())).toThrow("Only the roll's owner");
    expect(() => keep("Mina", Uint8Array.from(ascii("text")))).toThrow("no JPEG and no PNG");
    expect(keep("Mina", jpeg(exif(1, true))).text).toContain("The photo is with L1.");
    expect(room.stores.photos.find(roll.id)?.mediaType).toBe("image/jpeg");
    expect(room.says("Ben", "/roll photo L1")).toBe("L1 has a photo of its contact sheet.");
    expect(room.asks("Ben", "/roll photo roll:L1 remove:yes").code).toBe("ERR_NOT_YOUR_ROLL");
    expect(room.says("Mina", "/mine show")).toContain("1 photo,");
    room.says("Mina", "/mine erase name:Mina");
    expect(room.stores.photos.has(roll.id)).toBe(false);
  });
});

describe("a picture of two sizes", () => {
  const LARGE = segment(0xc0, [8, 0xff, 0xff, 0xff, 0xff, 1, 1, 0x11, 0]);

  it("is refused, whichever of its frames is the large one", () => {
    expect(cleanPhoto(jpeg(LARGE)).ok).toBe(false);
    const small = [...QUANTS, ...FRAME, ...LARGE, ...DC, ...AC];
    expect(cleanPhoto(Uint8Array.from([0xff, 0xd8, ...small, ...SCAN, 0xff, 0xd9])).ok).toBe(false);
    // The number of lines told after the scan (T.81, B.2.5).
    const later = [...PICTURE, ...SCAN, ...segment(0xdc, [0xff, 0xff])];
    expect(cleanPhoto(Uint8Array.from([0xff, 0xd8, ...later, 0xff, 0xd9])).ok).toBe(false);
  });

  it("is refused as a PNG with two heads", async () => {
    const png = await renderPicture(
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8" width="8" height="8"/>',
      8,
    );
    expect(cleanPhoto(png).ok).toBe(true);
    // Signature, 8 bytes; a head of 25.
    const twice = Buffer.concat([png.subarray(0, 33), png.subarray(8, 33), png.subarray(33)]);
    expect(cleanPhoto(twice).ok).toBe(false);
  });
});
