import { afterEach, beforeEach, expect, test } from "vitest";
import { listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { Answer } from "../../../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../../../support/gateway/world.ts";

/* Forms: for calls of several fields, for keys that need filling in, for refused calls; lists to choose one of many from. */

let stage: Stage;
let iris: User;

beforeEach(async () => {
  stage = await setStage();
  // Bit 5: Manage Server.
  iris = stage.gateway.addUser("Iris", { permissions: STUDENT_PERMISSIONS | (1n << 5n) });
  await stage.start();
});
afterEach(async () => {
  const breaches = listBreaches(stage);
  await stage.stop();
  expect(breaches).toEqual([]);
});

/** Each field by its name: its kind, whether it must be filled in, what stands in it. */
const fieldsOf = ({ form }: Answer) =>
  Object.fromEntries(
    (form?.components ?? []).flatMap((row) => {
      if (row.type !== 18) return [];
      const { component: field, label } = row;
      const filled =
        field.type === 4
          ? field.value
          : field.type === 3
            ? field.options.find((each) => each.default)?.value
            : "";
      return [[label, [field.type === 3 ? "list" : "text", "required" in field && field.required, filled]]];
    }),
  );

test("a command of several fields opens its form where they are missing; sent, it is the same call", async () => {
  const opened = await stage.gateway.slash(iris, "batch mix", {});
  expect(opened.callback).toBe(9);
  expect(fieldsOf(opened)).toEqual({
    kind: ["list", true, undefined],
    product: ["text", true, undefined],
    volume: ["text", true, undefined],
    source: ["text", false, undefined],
    note: ["text", false, undefined],
  });
  expect(stage.calls).toEqual([]);
  const answer = await stage.gateway.submit(iris, opened, {
    kind: "fixer",
    product: "Pier Fix",
    volume: "1 l",
    note: "cloudy: a little\nblue",
  });
  expect(answer.text).toBe("ok");
  expect(stage.calls).toMatchObject([
    {
      name: "batch mix",
      options: { kind: "fixer", product: "Pier Fix", volume: "1 l", note: "cloudy: a little\nblue" },
      role: "teacher",
    },
  ]);
});

test("what was given already goes along, also what has no field", async () => {
  const opened = await stage.gateway.slash(iris, "batch mix", { by: "Ada", source: "the packet" });
  expect(Object.keys(fieldsOf(opened))).toEqual(["kind", "product", "volume", "by", "source"]);
  expect(fieldsOf(opened)["by"]).toEqual(["text", false, "Ada"]);
  await stage.gateway.submit(iris, opened, { kind: "fixer", product: "Pier Fix", volume: "1 l" });
  expect(stage.calls[0]?.options).toMatchObject({ by: "Ada", source: "the packet", product: "Pier Fix" });
});

test("a call with everything is made at once", async () => {
  const all = { kind: "fixer", product: "Pier Fix", volume: "1 l" };
  expect(await stage.gateway.slash(iris, "batch mix", all)).toMatchObject({ callback: 4, text: "ok" });
});

test("a key that needs filling in opens the form; film and the like are chosen from what there is", async () => {
  stage.onCommand = (call) =>
    call.answer({ text: "New here?", actions: [{ label: "Make a plan", line: "plan" }] }, "private");
  stage.suggestions = [
    { label: "Lantern 400, 3 times", value: "Lantern 400" },
    { label: "", value: "Pier 100" },
  ];
  await stage.gateway.slash(iris, "help");
  const opened = await stage.gateway.press(iris, "plan");
  expect(fieldsOf(opened)["film"]).toEqual(["list", true, undefined]);
  expect(stage.completions[0]).toMatchObject({ name: "plan", option: "film", typed: "" });
  await stage.gateway.submit(iris, opened, { film: "Pier 100", temp: "20" });
  expect(stage.calls.at(-1)).toMatchObject({ name: "plan", options: { film: "Pier 100", temp: "20" } });
});

test("a refused call can be changed and sent again: its form has everything as it was", async () => {
  stage.onCommand = (call) =>
    call.answer(
      { text: "How warm is it?", again: { line: 'plan film:"Lantern 400" temp:warm', option: "temp" } },
      "private",
      "ERR_OPTIONS",
    );
  const refused = await stage.gateway.slash(iris, "plan make", { film: "Lantern 400", temp: "warm" });
  expect(refused.buttons.map(({ label }) => label)).toEqual(["Change it and send again"]);
  const opened = await stage.gateway.press(iris, refused.buttons[0]?.custom_id ?? "");
  expect(fieldsOf(opened)).toEqual({
    temp: ["text", false, "warm"],
    film: ["text", true, "Lantern 400"],
  });
  await stage.gateway.submit(iris, opened, { temp: "20" });
  expect(stage.calls.at(-1)?.options).toEqual({ film: "Lantern 400", temp: "20" });
});

test("more than five keys of one kind are a list; what a hand must find at once stays a button", async () => {
  const actions = [
    { label: "Tank is full", line: "run next run:7 step:1", weight: "main" as const },
    ...Array.from({ length: 22 }, (_, at) => ({
      label: `Plan ${at + 1}`,
      line: `run start plan:P${at + 1}`,
    })),
  ];
  stage.onCommand = (call) => call.answer({ text: "Which?", actions }, "private");
  const answer = await stage.gateway.slash(iris, "help");
  expect(answer.buttons.map(({ label }) => label)).toEqual(["Tank is full"]);
  expect(answer.messages[0]?.components[1]).toMatchObject({
    components: [{ type: 3, placeholder: "Choose one" }],
  });
  await stage.gateway.press(iris, "run start plan:P17");
  expect(stage.calls.at(-1)).toMatchObject({ name: "run start", options: { plan: "P17" } });
});

test("a German client's form is in German", async () => {
  const frieda = stage.gateway.addUser("Frieda", { locale: "de" });
  stage.gateway.opened.add("staff-batch");
  const { form } = await stage.gateway.slash(frieda, "batch mix", {});
  expect(form?.title).toBe("Eine frisch angesetzte Flasche notieren; was…");
  expect(form?.components[0]).toMatchObject({ label: "kind", description: "Wofür sie ist" });
  expect(form?.components[0]).toMatchObject({
    component: { options: [{ label: "Entwickler" }, { label: "Fixierbad" }] },
  });
});

test("“Rate this roll” on a message's menu opens the rating of its roll, and says so where it has none", async () => {
  const { gateway } = stage;
  stage.onCommand = (call) =>
    call.answer(
      { text: "In the log as L12.", actions: [{ label: "Show", line: "roll rate roll:L12" }] },
      "class",
    );
  const logged = (await gateway.slash(iris, "run start")).messages[0];
  const bare = gateway.ledger.add(gateway.channel.id, { content: "Dry at 20:10." }, []);
  if (!logged) throw new Error("nothing was said");
  expect(await gateway.useMenu(iris, "Rate this roll", bare)).toMatchObject({
    text: "That message is about no single roll in the log. Use `/roll rate`, or this on the message of a roll of yours.",
  });
  const opened = await gateway.useMenu(iris, "Rate this roll", logged);
  expect(fieldsOf(opened)["rating"]).toEqual(["list", true, undefined]);
  await gateway.submit(iris, opened, { rating: "4" });
  expect(stage.calls.at(-1)).toMatchObject({ name: "roll rate", options: { roll: "L12", rating: "4" } });
  stage.directory.rolls.set(`${bare.channelId}/${bare.id}`, 5);
  expect(fieldsOf(await gateway.useMenu(iris, "Rate this roll", bare))["roll"]).toEqual([
    "text",
    false,
    "L5",
  ]);
});
