import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { renderAnswer, renderKeys, renderMessage } from "../support/gateway/rendered.ts";
import type { Answer } from "../support/gateway/interactions.ts";
import type { StoredMessage } from "../support/gateway/ledger.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* One of each kind of message on Discord, as text, to be read by eye: the files beside this test. All of it invented. */

const KEYS = {
  en: { start: "Start", full: "Tank is full", curve: "Show the curve" },
  de: { start: "Start", full: "Dose ist voll", curve: "Kurve zeigen" },
} as const;

/** A key that has done its work is gone. */
const keysOf = (before: string | undefined, message: StoredMessage | undefined): string =>
  `${before ?? "(no message)"}\n->\n${message ? renderKeys(message) : "(no message)"}`;

test.each(["en", "de"] as const)("each kind of message, in %s", async (language) => {
  const classroom = await openClassroom();
  const { gateway } = classroom;
  const locale = language === "en" ? "en-GB" : "de";
  const said: string[] = [];
  const note = (what: string, text: string): void => void said.push(`=== ${what}\n${text}`);
  const tell = (what: string, answer: Answer): Answer => {
    note(what, renderAnswer(answer));
    return answer;
  };
  try {
    const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
    const iris = gateway.addUser("Iris", { permissions, locale });
    const mina = gateway.addUser("Mina", { locale });
    const joao = gateway.addUser("João", { locale, isClosed: true });
    const press = async (user: User, answer: Answer, label: string): Promise<Answer> => {
      const key = answer.buttons.find((each) => each.label === label);
      if (!key) throw new Error(`no key ${label}: ${answer.buttons.map((each) => each.label).join(", ")}`);
      return gateway.press(user, key.custom_id);
    };
    const { channel: hall } = gateway.invite("Pier workshop", 0n, locale);
    await gateway.until(() => gateway.messagesIn(hall.id).length > 0);
    note(
      "welcome, as the server's own language has it",
      gateway.messagesIn(hall.id).map(renderMessage).join(),
    );
    tell("set-up", await gateway.slash(iris, "class setup", { language, channel: gateway.channel.id }));
    tell("form of a data sheet", await gateway.slash(iris, "sheet add", {}));
    tell("a data sheet", await gateway.slash(iris, "sheet add", SHEET));
    await gateway.slash(iris, "sheet add", { ...SHEET, temp: "24C", time: "6:30" });
    await gateway.slash(iris, "tank add", { numbers: "1-3", reels: 1, volume: "300 ml" });
    const form = tell("form of a bottle", await gateway.slash(iris, "batch mix", {}));
    tell("a bottle", await gateway.submit(iris, form, { kind: "fixer", product: "Pier Fix", volume: "1 l" }));
    tell("refused", await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "warm" }));
    const plan = tell(
      "a plan",
      await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" }),
    );
    const curve = tell("its curve", await press(mina, plan, KEYS[language].curve));
    // The newest message with a key is where it is pressed; a press edits that message.
    const withKey = curve.messages.at(-1);
    const startedOn = withKey && renderKeys(withKey);
    const started = tell("started", await press(mina, plan, KEYS[language].start));
    note("the keys under the curve, before and after “Start”", keysOf(startedOn, withKey));
    const under = started.messages.at(-1);
    const filledOn = under && renderKeys(under);
    tell("the tank is full", await press(mina, started, KEYS[language].full));
    note("the keys under “started”, before and after “Tank is full”", keysOf(filledOn, under));
    await classroom.pass(60);
    const other = await gateway.slash(joao, "plan make", { film: "Lantern 400", temp: "20C", tank: "2" });
    const closed = tell(
      "started with direct messages closed",
      await press(joao, other, KEYS[language].start),
    );
    await gateway.until(() => closed.messages.length === 2);
    note("and beside it", closed.messages.slice(1).map(renderMessage).join());
    await press(joao, closed, KEYS[language].full);
    await classroom.pass(2);
    note("to Mina alone", gateway.messagesTo(mina).map(renderMessage).join("\n---\n"));
    note(
      "in the class's channel",
      gateway
        .messagesIn(gateway.channel.id)
        .filter(({ isPrivate, interactionId }) => !isPrivate && interactionId === undefined)
        .map(renderMessage)
        .join("\n---\n"),
    );
    tell("where it stands", await gateway.slash(mina, "run status"));
    tell("what went wrong", await gateway.slash(mina, "roll fault", {}));
    const bare = gateway.messagesTo(mina)[0];
    if (bare)
      tell("“Rate this roll” where there is none", await gateway.useMenu(mina, "Rate this roll", bare));
    tell("set-up with threads", await gateway.slash(iris, "class setup", { threads: "yes" }));
    await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "3" });
    const threaded = tell("started in a class with threads", await gateway.slash(mina, "run start"));
    await gateway.until(() => threaded.messages.length === 2);
    note("and beside it", threaded.messages.slice(1).map(renderMessage).join());
    const [thread] = gateway.threads();
    const first = gateway.messagesIn(thread?.id ?? "").map(renderMessage);
    note(`in the thread “${thread?.name}”`, first.join());
    await expect(`${said.join("\n\n")}\n`).toMatchFileSnapshot(`rendered/discord.${language}.txt`);
    expect(gateway.violations).toEqual([]);
  } finally {
    await classroom.stop();
  }
});
