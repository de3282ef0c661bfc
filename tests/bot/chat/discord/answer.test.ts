import { afterEach, beforeEach, expect, test } from "vitest";
import { instant } from "../../../../commands/speech/wording.ts";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { User } from "../../../support/gateway/world.ts";

let stage: Stage;
let amina: User;

beforeEach(async () => {
  stage = await setStage({ bot: { times: { deferAfterMs: 20 } } });
  amina = stage.gateway.addUser("Amina");
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

const callbacks = () => stage.gateway.asked("POST", /\/callback$/);

test("a quick answer is the first callback, private where the command says so", async () => {
  stage.onCommand = (call) => call.answer({ text: "9:00 at 20 °C" }, "private");
  const answer = await stage.gateway.slash(amina, "plan make", { film: "Lantern 400" });
  expect(answer).toMatchObject({ callback: 4, isPrivate: true, text: "9:00 at 20 °C" });
  expect(callbacks()).toHaveLength(1);
  expect(stage.gateway.asked("PATCH", /webhooks/)).toEqual([]);
});

test("an answer for the class is seen by the class", async () => {
  stage.onCommand = (call) => call.answer({ text: "R7 has begun" }, "class");
  expect(await stage.gateway.slash(amina, "run start")).toMatchObject({ callback: 4, isPrivate: false });
});

test("a slow answer is deferred with the command's visibility, then edited in", async () => {
  stage.onCommand = async (call) => {
    await stage.gateway.until(() => callbacks().some(({ status }) => status === 204));
    await call.answer({ text: "9:00" }, "private");
  };
  const answer = await stage.gateway.slash(amina, "plan make", { film: "Lantern 400" });
  expect(answer).toMatchObject({ callback: 5, isPrivate: true, text: "9:00" });
  expect(stage.gateway.asked("PATCH", /@original$/)).toHaveLength(1);
});

test("a refusal after a deferral for all is private: it takes the deferral's place", async () => {
  stage.onCommand = async (call) => {
    await stage.gateway.until(() => callbacks().some(({ status }) => status === 204));
    await call.answer({ text: "There is no plan yet." }, "private");
  };
  const answer = await stage.gateway.slash(amina, "run start");
  expect(answer).toMatchObject({ callback: 5, isPrivate: true, text: "There is no plan yet." });
  expect(answer.messages).toHaveLength(1);
});

test("a handler that breaks gives one private sentence and a line in the log", async () => {
  stage.onCommand = () => Promise.reject(new Error("a bug"));
  const answer = await stage.gateway.slash(amina, "run start");
  expect(answer).toMatchObject({ isPrivate: true });
  expect(answer.text).toContain("Something broke on my side");
  expect(answer.text).not.toContain("a bug");
  expect(stage.log.lines.filter(({ level }) => level === "error")).toHaveLength(1);
});

test("a long answer comes in several messages, cut at line ends, its buttons under the last", async () => {
  const lines = Array.from(
    { length: 110 },
    (_, index) => `${index}:00 agitate for five seconds, then rest the tank`,
  );
  stage.onCommand = (call) =>
    call.answer({ text: lines.join("\n"), actions: [{ label: "Start", line: "run start" }] }, "private");
  const answer = await stage.gateway.slash(amina, "plan make", { film: "Lantern 400" });
  await stage.gateway.until(() => answer.messages.length === 3);
  expect(answer.text).toBe(lines.join("\n"));
  expect(answer.messages.map(({ isPrivate }) => isPrivate)).toEqual([true, true, true]);
  expect(answer.messages.map(({ components }) => components.length)).toEqual([0, 0, 1]);
});

test("instants become the platform's own marks, which count by themselves", async () => {
  const at = Date.UTC(2026, 10, 3, 18, 30);
  stage.onCommand = (call) =>
    call.answer({ text: `Pour out at ${instant(at, "time")}, ${instant(at, "relative")}` }, "private");
  const { text } = await stage.gateway.slash(amina, "help");
  expect(text).toBe(`Pour out at <t:${at / 1000}:T>, <t:${at / 1000}:R>`);
});

test("pictures come as PNG with their words, exports as files", async () => {
  stage.onCommand = (call) =>
    call.answer(
      {
        text: "The curve",
        pictures: [
          { name: "plan-curve", alt: "Time falls from 12:00 at 18 °C to 7:00 at 24 °C", svg: "<svg/>" },
        ],
        attachments: [{ name: "log.csv", mediaType: "text/csv", content: "roll,seconds\nL1,540\n" }],
      },
      "private",
    );
  const { messages } = await stage.gateway.slash(amina, "plan curve");
  expect(messages[0]?.files.map(({ name, type, description }) => [name, type, description])).toEqual([
    ["plan-curve.png", "image/png", "Time falls from 12:00 at 18 °C to 7:00 at 24 °C"],
    ["log.csv", "text/csv", undefined],
  ]);
  expect(String(messages[0]?.files[0]?.data)).toBe("PNG of <svg/>");
});

test("buttons carry their line, five in a row, and show their weight", async () => {
  const actions = Array.from({ length: 7 }, (_, index) => ({
    label: `Tank ${index}`,
    line: `run next run:${index}`,
    weight: "main" as const,
  }));
  stage.onCommand = (call) =>
    call.answer(
      {
        text: "Which tank?",
        actions: [{ label: "Stop all", line: "run stop", weight: "danger" }, ...actions],
      },
      "private",
    );
  const answer = await stage.gateway.slash(amina, "help");
  expect(answer.messages[0]?.components).toHaveLength(2);
  expect(answer.buttons.map(({ custom_id: line, style }) => [line, style]).slice(0, 2)).toEqual([
    ["run stop", 4],
    ["run next run:0", 1],
  ]);
});

test("a text that names everyone calls nobody", async () => {
  stage.onCommand = (call) => call.answer({ text: `@everyone @here <@${amina.id}>` }, "class");
  const { messages } = await stage.gateway.slash(amina, "run start");
  expect(messages[0]).toMatchObject({ isEveryoneCalled: false, calledIds: [] });
});

test.each([
  ["the platform breaks once", { kind: "status", status: 500 }],
  ["the platform breaks after it has taken the answer", { kind: "status", status: 502, after: true }],
  ["the connection is cut after the answer was taken", { kind: "cut", after: true }],
] as const)("an answer is given once, though %s", async (_, fault) => {
  stage.gateway.faults.add("POST", /\/callback$/, fault);
  const answer = await stage.gateway.slash(amina, "help");
  await stage.gateway.until(
    () => callbacks().length === 2 && callbacks().every(({ status }) => status !== undefined),
  );
  expect(answer.messages).toHaveLength(1);
  expect(stage.log.lines.filter(({ level }) => level === "warn")).toEqual([]);
});

test("an answer that comes too late is only noted", async () => {
  stage.gateway.faults.add("POST", /\/callback$/, { kind: "status", status: 404, code: 10062 });
  stage.gateway.begin(amina, "help", {});
  await stage.gateway.until(() => stage.log.lines.some(({ message }) => message.includes("too late")));
  expect(callbacks()).toHaveLength(1);
});
