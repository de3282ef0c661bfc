import { PermissionFlagsBits } from "discord-api-types/v10";
import { describe, expect, test } from "vitest";
import { mapCommands } from "../../bot/chat/discord/options.ts";
import { mayActAs, type Role, ROLES } from "../../store/shapes/person.ts";
import { commands } from "../../commands/index.ts";
import { makeLine } from "../../commands/speech/line.ts";
import { type GuardedCommand, WHO } from "../../commands/who.ts";
import { EVERY_COMMAND } from "../support/every-command.ts";
import { openClassroom } from "../support/gateway/classroom.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";
import { startRoom } from "../support/room-server.ts";
import { createRoom } from "../support/room.ts";

/* Every command, every role, every chat: who may, may; who may not is refused by role, and nothing else refuses so. */

const NAMES = Object.keys(WHO) as GuardedCommand[];
const REFUSED = /^Only (an aide or the teacher|the teacher) may use `\/(.+)`\. Ask them\.$/;
const MATRIX = NAMES.flatMap((name) => ROLES.map((role) => ({ name, role, may: mayActAs(role, WHO[name]) })));

/** What is left to try where a role is refused or not, worded as the table has it. */
const shown = (name: string, role: Role, isRefused: boolean): string =>
  `${role} ${isRefused ? "may not" : "may"} ${name}`;

describe("the table of who may do what", () => {
  test("names every command there is, with the role its definition asks for, and no other", () => {
    expect(Object.fromEntries(commands.map(({ name, who }) => [name, who]))).toEqual(WHO);
  });

  test("gives a higher role everything a lower one has", () => {
    for (const name of NAMES)
      for (const [at, role] of ROLES.entries())
        if (mayActAs(role, WHO[name]))
          for (const above of ROLES.slice(at)) expect(mayActAs(above, WHO[name])).toBe(true);
  });
});

test.each(MATRIX)("in memory: $role, /$name: $may", ({ name, role, may }) => {
  const room = createRoom();
  const answered = room.asks("Mina", makeLine(name, EVERY_COMMAND[name]), role);
  expect(answered.code === "ERR_ROLE").toBe(!may);
  expect(answered.kind).not.toBe("broken");
  // Options in this table are valid: nothing but the role or the class's own state may refuse.
  expect(answered.code).not.toBe("ERR_OPTIONS");
});

test("in the room, over its own door and socket", async () => {
  const server = await startRoom();
  try {
    const found: string[] = [];
    for (const role of ROLES) {
      const visitor = server.visitor();
      const person = { student: "Mina", aide: "Ada", teacher: "Tess" }[role];
      await visitor.joinDemo(person, role === "teacher" ? "teacher" : "student");
      const member = server.stores.members.findByName(1, person);
      server.stores.members.setRole(1, member?.personId ?? "", role);
      let page = await visitor.open();
      for (const [at, name] of NAMES.entries()) {
        // One page may say so much in a row and no more.
        if (at % 30 === 29) {
          page.socket.close();
          page = await visitor.open();
        }
        const before = page.feed().length;
        await page.says(`/${makeLine(name, EVERY_COMMAND[name])}`);
        const answer =
          page
            .feed()
            .slice(before)
            .findLast((text) => !text.startsWith("/")) ?? "";
        expect(answer, `${role} ${name}`).not.toBe("");
        found.push(shown(name, role, REFUSED.exec(answer)?.[2] === name));
      }
      page.socket.close();
    }
    expect(found.sort()).toEqual(MATRIX.map(({ name, role, may }) => shown(name, role, !may)).sort());
  } finally {
    await server.stop();
  }
});

test("on Discord, by the server's own roles", async () => {
  const classroom = await openClassroom();
  const { gateway } = classroom;
  try {
    const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
    const aideRole = gateway.guild.roles.find(({ name }) => name === "Aide");
    const people = {
      student: gateway.addUser("Mina"),
      aide: gateway.addUser("Ola", { roleIds: [aideRole?.id ?? ""] }),
      teacher: gateway.addUser("Iris", { permissions }),
    } as const satisfies Record<Role, unknown>;
    // A server that shows everything to everybody.
    const { pathOf, bodies } = mapCommands(commands);
    for (const { name } of bodies) gateway.opened.add(name);
    await gateway.slash(people.teacher, "class setup", { aiderole: aideRole?.id ?? "" });
    const found: string[] = [];
    for (const role of ROLES)
      for (const name of NAMES) {
        const answer = await gateway.slash(people[role], pathOf(name), EVERY_COMMAND[name]);
        const refused = REFUSED.exec(answer.text)?.[2] === pathOf(name);
        if (refused) expect(answer.isPrivate, `${role} ${name}`).toBe(true);
        found.push(shown(name, role, refused));
      }
    expect(found.sort()).toEqual(MATRIX.map(({ name, role, may }) => shown(name, role, !may)).sort());
    expect(gateway.violations).toEqual([]);
  } finally {
    await classroom.stop();
  }
});
