import { afterEach, expect, test } from "vitest";
import { createPictures } from "../../../../bot/chat/room/pictures.ts";
import { startRoom, type RoomServer } from "../../../support/room-server.ts";

let server: RoomServer | undefined;
afterEach(() => server?.stop());

test("a drawing is drawn once, however often it is asked for, and one at a time", async () => {
  let drawing = 0;
  let most = 0;
  const drawn: string[] = [];
  const pictures = createPictures(async (svg) => {
    drawing += 1;
    most = Math.max(most, drawing);
    await new Promise((resolve) => setImmediate(resolve));
    drawing -= 1;
    drawn.push(svg);
    return Buffer.from(svg);
  });
  const asked = Array.from({ length: 444 }, (_, index) =>
    pictures.draw(`<svg>${index % 12}</svg>`, "mina", 0),
  );
  expect(asked).not.toContain("fast");
  await Promise.all(asked);
  expect([drawn.length, most]).toEqual([12, 1]);
  expect(String(await pictures.draw("<svg>3</svg>", "mina", 0))).toBe("<svg>3</svg>");
  expect(drawn).toHaveLength(12);
});

test("each person has a share of new drawings, which comes back with time; nobody uses up another's", async () => {
  const pictures = createPictures(async (svg) => Buffer.from(svg));
  let index = 0;
  const fresh = (person: string, now: number) => pictures.draw(`<svg>${(index += 1)}</svg>`, person, now);
  const asked = Array.from({ length: 444 }, () => fresh("mina", 0));
  expect(asked.filter((each) => each !== "fast")).toHaveLength(20);
  expect(fresh("ben", 0)).not.toBe("fast");
  expect(fresh("mina", 2000)).not.toBe("fast");
  expect(fresh("mina", 2000)).toBe("fast");
  await Promise.all(asked);
});

test("a session keeps eight pages: the ninth ends the first, though that one says nothing to it", async () => {
  server = await startRoom();
  const mina = server.visitor();
  await mina.joinDemo("Mina");
  const pages = [];
  for (let count = 0; count < 8; count += 1) pages.push(await mina.open());
  // Out of reach: it reads nothing, and so answers no farewell.
  pages[0]?.socket.pause();
  for (let count = 0; count < 4; count += 1) pages.push(await mina.open());
  const [, ...reachable] = pages;
  await expect.poll(() => reachable.filter(({ socket }) => socket.readyState === socket.OPEN).length).toBe(8);
  // Each that is left still hears what is said; the room counts one person.
  const last = pages.at(-1);
  await last?.says("/help");
  await last?.hears("taken");
});
