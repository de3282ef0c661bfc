import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";
import { startRoom } from "../support/room-server.ts";

/* The same rights and the same words through both chats' own doors. */

const FIXER = {
  kind: "fixer",
  product: "Pier Fix",
  volume: "1 l",
  dilution: "1+4",
  capacity: "20 films/l",
  clearing: "0:45",
};
/** What a student must not do. */
const FORBIDDEN: readonly [string, Readonly<Record<string, string | number>>][] = [
  ["batch mix", FIXER],
  ["batch test", { batch: "B1", clearing: "0:50" }],
  ["batch topup", { batch: "B1", add: "100 ml", remove: "100 ml", to: "silver" }],
  ["batch discard", { batch: "B1", to: "silver" }],
  ["batch correct", { batch: "B1", reason: "slipped", rolls: 1 }],
  ["batch allow", { batch: "B1", reason: "no other" }],
  ["batch restock", { product: "Pier Fix", kind: "fixer", size: "1 l", dilution: "1+4", packs: 1 }],
  ["batch handover", { to: "county collection" }],
];
const lineOf = ([name, options]: (typeof FORBIDDEN)[number]): string =>
  `/${name} ${Object.entries(options)
    .map(([key, value]) => `${key}:${value}`)
    .join(" ")}`;

test(
  "on Discord a student reads the bottles and changes none; the teacher's bottle warns in the channel",
  { timeout: 600_000 },
  async () => {
    const classroom = await openClassroom();
    const { gateway, stores } = classroom;
    try {
      const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
      const teacher = gateway.addUser("Teacher", { permissions });
      const mina = gateway.addUser("Mina");
      const mixed = await gateway.slash(teacher, "batch mix", FIXER);
      expect(mixed).toMatchObject({ isPrivate: false });
      expect(mixed.text).toContain("**B1**: write it on the bottle.");
      const before = stores.batches.lines(1);
      // Even where the server's own settings show everybody everything.
      gateway.opened.add("staff-batch");
      for (const [name, options] of FORBIDDEN) {
        const answer = await gateway.slash(mina, name, options);
        expect(answer, name).toMatchObject({ isPrivate: true });
        expect(answer.text, name).toMatch(/^Only (an aide or the teacher|the teacher) may use/);
      }
      expect(stores.batches.lines(1)).toEqual(before);
      expect(stores.batches.list(1)).toHaveLength(1);
      expect(stores.shelf.list(1)).toEqual([]);

      const status = await gateway.slash(mina, "batch status", {});
      expect(status.text).toContain("B1, Pier Fix 1+4: 20 rolls left");
      expect(status.messages.flatMap(({ files }) => files)).toMatchObject([{ name: "batches.png" }]);

      await gateway.slash(teacher, "batch correct", { batch: "B1", reason: "morning class", rolls: 20 });
      classroom.clock.advance(1);
      await classroom.tick();
      const channel = gateway.ledger.messages.map(({ content }) => content);
      expect(channel.filter((text) => text.startsWith("**B1 is exhausted: don't use it.**"))).not.toEqual([]);
      expect(gateway.violations).toEqual([]);
    } finally {
      await classroom.stop();
    }
  },
);

test(
  "in the room a student reads the bottles and changes none, typed or with a role made up",
  { timeout: 600_000 },
  async () => {
    const server = await startRoom();
    try {
      const [teacher, mina] = [server.visitor(), server.visitor()];
      await teacher.joinDemo("Demo teacher", "teacher");
      await mina.joinDemo("Mina");
      const desk = await teacher.open();
      await desk.says(lineOf(["batch mix", FIXER]));
      await desk.hears("events", ({ events }) =>
        events.some(({ text }) => text.includes("write it on the bottle")),
      );
      const before = server.stores.batches.lines(1);
      expect(before).toHaveLength(1);
      const phone = await mina.open();
      for (const [at, each] of FORBIDDEN.entries()) {
        await phone.says(lineOf(each));
        phone.send({ type: "line", id: `forged-${at}`, text: lineOf(each), role: "teacher" });
      }
      await phone.hears("events", ({ events }) =>
        events.some(({ text }) => text.includes("Only the teacher may use `/batch handover`")),
      );
      expect(
        phone.feed().filter((text) => text.startsWith("Only an aide or the teacher may use")).length,
      ).toBeGreaterThanOrEqual(7);
      expect(server.stores.batches.lines(1)).toEqual(before);
      expect(server.stores.batches.list(1)).toHaveLength(1);
      await phone.says("/batch status");
      await phone.hears("events", ({ events }) => events.some(({ text }) => text.includes("20 rolls left")));
      phone.socket.close();
      desk.socket.close();
    } finally {
      await server.stop();
    }
  },
);
