import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";

/* The set-up where a class has a server of its own: its channel and its roles. */

const TEACHER = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;

test("a class on Discord is set up with its channel and its roles", async () => {
  const classroom = await openClassroom();
  const { gateway, stores } = classroom;
  try {
    const teacher = gateway.addUser("Iris", { permissions: TEACHER });
    const aide = gateway.addUser("Ola", { roleIds: [gateway.guild.roles[0]?.id ?? ""] });
    const first = await gateway.slash(teacher, "class setup", {});
    expect(first).toMatchObject({ isPrivate: true });
    expect(first.text).toContain("parts are set.");
    expect(first.text).toContain(
      `Class channel: \\#${gateway.channel.name}, until you choose one _(not set)_`,
    );
    const { channel } = gateway;
    expect((await gateway.slash(teacher, "class setup", { channel: channel.id })).text).toContain(
      `Class channel: \\#${channel.name}\n`,
    );
    // One in which the bot may not do all it needs is taken, and what it lacks there is said at once.
    const denied = PermissionFlagsBits.AttachFiles | PermissionFlagsBits.ReadMessageHistory;
    const quiet = gateway.addChannel(gateway.guild.id, "quiet", denied);
    expect((await gateway.slash(teacher, "class setup", { channel: quiet.id })).text).toContain(
      "Class channel: \\#quiet, but I may not Attach Files and Read Message History there _(not set)_",
    );
    // It is told wherever the set-up is looked at from, and for as long as it is so.
    const elsewhere = await gateway.slash(teacher, "class setup", { threads: "yes" }, { channel });
    expect(elsewhere.text).toContain("Class channel: \\#quiet, but I may not Attach Files and");
    expect(elsewhere.text).toContain("**I lack Attach Files and Read Message History in \\#quiet.**");
    const unthreaded = gateway.addChannel(
      gateway.guild.id,
      "unthreaded",
      PermissionFlagsBits.CreatePrivateThreads | PermissionFlagsBits.CreatePublicThreads,
    );
    await gateway.slash(teacher, "class setup", { channel: unthreaded.id });
    const { text } = await gateway.slash(teacher, "class setup", {}, { channel });
    expect(text).toContain("Class channel: \\#unthreaded\n");
    expect(text).toContain("A thread for each run: yes, but I may not Create Private Threads there");
    expect(text).toContain("**I lack Create Private Threads in \\#unthreaded.**");
    await gateway.slash(teacher, "class setup", { channel: channel.id });
    // The server's own settings show aides what is theirs; the bot looks at roles all the same.
    gateway.opened.add("staff-tank");
    expect((await gateway.slash(aide, "tank clear", { tank: 1 })).text).toContain(
      "Only an aide or the teacher",
    );
    const aideRole = gateway.guild.roles[0]?.id ?? "";
    await gateway.slash(teacher, "class setup", { aiderole: aideRole, teacherrole: gateway.guild.id });
    expect((await gateway.slash(aide, "tank clear", { tank: 1 })).text).toContain("There is no tank 1");
    const [school] = stores.classes.list();
    expect(stores.classes.channelRef(school?.id ?? 0)).not.toBeNull();
    expect((await gateway.slash(teacher, "class role", { person: "Ola", role: "teacher" })).text).toContain(
      "roles come from the server's own roles",
    );
    expect(gateway.violations).toEqual([]);
  } finally {
    await classroom.stop();
  }
});
