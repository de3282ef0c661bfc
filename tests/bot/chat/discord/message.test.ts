import { expect, test } from "vitest";
import { makeParts, type View } from "../../../../bot/chat/discord/message.ts";
import { createMemoryLog } from "../../../support/room.ts";

const view = (over: Partial<View>): View => ({
  text: "",
  actions: [],
  pictures: [],
  attachments: [],
  mentions: [],
  ...over,
});

async function make(
  over: Partial<View>,
  renderPicture = async (svg: string): Promise<Uint8Array> => Buffer.from(svg),
) {
  const log = createMemoryLog();
  return { parts: await makeParts(view(over), { renderPicture, log, sayPaths: (text) => text }), log };
}

test("a picture that can't be drawn leaves its words", async () => {
  const pictures = [{ name: "curve", alt: "Time falls with temperature", svg: "<svg/>" }];
  const { parts, log } = await make({ text: "The curve", pictures }, () =>
    Promise.reject(new Error("no font")),
  );
  expect(parts[0]?.body.content).toBe(
    "The curve\nThe picture could not be drawn. It shows: Time falls with temperature",
  );
  expect(log.lines[0]?.level).toBe("error");
});

test("a file that is too large for the chat is told, not sent", async () => {
  const attachments = [
    { name: "log.csv", mediaType: "text/csv", content: "x".repeat(10 * 1024 * 1024 + 1) } as const,
  ];
  const { parts } = await make({ attachments });
  expect(parts[0]?.files).toEqual([]);
  expect(parts[0]?.body.content).toContain("log.csv is too large for this chat (11 MB)");
});

test("ten files fit one message; the rest come in the next", async () => {
  const attachments = Array.from(
    { length: 12 },
    (_, index) => ({ name: `${index}.csv`, mediaType: "text/csv", content: "" }) as const,
  );
  const { parts } = await make({ text: "Your files", attachments });
  expect(parts.map(({ files }) => files.length)).toEqual([10, 2]);
});

test("of more than 25 buttons the first 25 are shown; one line is one button", async () => {
  const actions = Array.from({ length: 30 }, (_, index) => ({
    label: `Tank ${index}`,
    line: `run next run:${index}`,
    weight: "main" as const,
  }));
  const { parts, log } = await make({
    text: "?",
    actions: [{ label: "Tank 0", line: "run next run:0", weight: "main" }, ...actions],
  });
  expect(parts[0]?.body.components).toHaveLength(5);
  expect(log.lines).toHaveLength(6);
});

test("a line of more than 100 characters is left out, for a cut one would be another", async () => {
  const { parts, log } = await make({
    text: "?",
    actions: [{ label: "Note", line: `roll note text:${"x".repeat(100)}` }],
  });
  expect(parts[0]?.body.components).toBeUndefined();
  expect(log.lines[0]?.message).toBe("a button was left out");
});

test("a long label is cut to 80 characters", async () => {
  const { parts } = await make({ text: "?", actions: [{ label: "L".repeat(90), line: "help" }] });
  expect(JSON.stringify(parts[0]?.body.components)).toContain(`"label":"${"L".repeat(79)}…"`);
});

test("an answer without words says that it is done", async () => {
  expect((await make({})).parts.map(({ body }) => body.content)).toEqual(["Done."]);
});
