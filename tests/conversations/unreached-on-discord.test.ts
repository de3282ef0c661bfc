import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* A student whose direct messages are closed, in a class in whose channel the bot may not write: nobody is left so untold. */

test(
  "whose calls reach nobody is told at every turn, and so are the board and the teacher, once",
  { timeout: 60_000 },
  async () => {
    const classroom = await openClassroom();
    const { gateway } = classroom;
    try {
      const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
      const teacher = gateway.addUser("Iris", { permissions });
      const mina = gateway.addUser("Mina", { locale: "de" });
      const toTeacher = (): string[] =>
        gateway
          .messagesTo(teacher)
          .filter(({ interactionId }) => interactionId === undefined)
          .map(({ content }) => content);
      const status = async (user: User): Promise<string> => (await gateway.slash(user, "run status")).text;
      await gateway.slash(teacher, "sheet add", SHEET);
      await gateway.slash(teacher, "tank add", { numbers: "1", reels: 1, volume: "300 ml" });
      await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" });
      mina.isClosed = true;
      gateway.channel.denied = PermissionFlagsBits.SendMessages;
      await gateway.slash(mina, "run start");
      await gateway.press(mina, "run next run:1 step:0");
      expect(await status(mina)).not.toContain("erreichen dich nicht");
      await classroom.tick();
      await classroom.pass(60);
      expect(await status(mina)).toContain("**Deine Signale erreichen dich nicht: Stopp die Zeit selbst.**");
      expect((await gateway.slash(teacher, "class board")).text).toContain("(**calls don't reach them**)");
      await gateway.until(() => toTeacher().length > 0 || undefined);
      expect(toTeacher()).toEqual([
        expect.stringMatching(
          /^\*\*R1, tank 1: calls don't reach Mina\. Tell them to keep the time themselves\.\*\*/,
        ),
      ]);
      await classroom.pass(120);
      expect(toTeacher()).toHaveLength(1);
      // The channel is opened: the next call reaches it, and all is well.
      gateway.channel.denied = 0n;
      await classroom.pass(120);
      expect(await status(mina)).not.toContain("erreichen dich nicht");
      expect((await gateway.slash(teacher, "class board")).text).not.toContain("calls don't reach");
    } finally {
      await classroom.stop();
    }
  },
);
