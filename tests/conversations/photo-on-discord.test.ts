import { afterEach, beforeEach, expect, test } from "vitest";
import { renderPicture } from "../../bot/chat/picture.ts";
import { MOST_PHOTO_BYTES } from "../../commands/roll/photo/photo.ts";
import { openClassroom } from "../support/gateway/classroom.ts";
import type { SentFile } from "../support/gateway/interactions.ts";
import type { User } from "../support/gateway/world.ts";
import { aNewRoll } from "../support/rolls.ts";

/* A photo of the contact sheet, sent along with a slash command, and what comes back of it. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
let mina: User;
let ben: User;
let photo: SentFile;

beforeEach(async () => {
  classroom = await openClassroom();
  const { gateway, stores } = classroom;
  mina = gateway.addUser("Mina");
  ben = gateway.addUser("Ben", { locale: "de" });
  await gateway.slash(mina, "help");
  stores.rolls.add(aNewRoll({ classId: 1, personId: `discord:${mina.id}`, runId: null as never }));
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8"><circle r="4"/></svg>';
  photo = { name: "IMG_0001.png", type: "image/png", data: await renderPicture(svg, 8) };
});
afterEach(async () => {
  expect(classroom.gateway.violations).toEqual([]);
  await classroom.stop();
});

const send = (file: SentFile, user = mina) =>
  classroom.gateway.slash(user, "roll photo", { roll: "L1", photo: file });
const hasPhoto = (): boolean => classroom.stores.photos.has(1);

test("it is kept with the roll, and shown with it to the class, with words for who can't see it", async () => {
  expect((await send(photo)).text).toContain("The photo is with L1.");
  expect(classroom.stores.photos.find(1)?.mediaType).toBe("image/png");
  const shown = await classroom.gateway.slash(ben, "roll show", { roll: "L1" });
  const file = shown.messages.flatMap(({ files }) => files).find(({ name }) => name === "L1.png");
  expect(file).toMatchObject({ type: "image/png", description: "Der Kontaktbogen von L1" });
  expect(file?.data.equals(Buffer.from(classroom.stores.photos.find(1)?.bytes ?? []))).toBe(true);
  await classroom.gateway.slash(mina, "roll photo", { roll: "L1", remove: "yes" });
  const after = await classroom.gateway.slash(ben, "roll show", { roll: "L1" });
  expect(after.messages.flatMap(({ files }) => files).filter(({ name }) => name.startsWith("L1."))).toEqual(
    [],
  );
});

test("somebody else's roll gets none, and what is no picture is refused", async () => {
  await send(photo, ben);
  expect(hasPhoto()).toBe(false);
  const text = await send({ ...photo, data: Buffer.from("<svg onload=alert(1)>") });
  expect(text.text).toContain("no JPEG and no PNG");
  expect(hasPhoto()).toBe(false);
});

test("one that is too large is not even fetched; one that is larger than it says is not read to its end", async () => {
  const told = await send({ ...photo, size: MOST_PHOTO_BYTES + 1 });
  expect(told.text).toMatch(/^The file has \d+ MB; at most \d+\./);
  const lying = await send({ ...photo, data: Buffer.alloc(MOST_PHOTO_BYTES + 1), size: 1000 });
  expect(lying.text).toContain("could not be fetched");
  expect(hasPhoto()).toBe(false);
});

test("files are fetched from the platform alone", async () => {
  for (const url of ["http://127.0.0.1:9/files/1", "file:///etc/hostname", "nothing"])
    expect((await send({ ...photo, url })).text).toContain("could not be fetched");
  expect((await send({ ...photo, url: "http://127.0.0.1:9/files/1" }, ben)).text).toContain(
    "Schick sie noch einmal",
  );
  expect(hasPhoto()).toBe(false);
});
