import { describe, expect, test } from "vitest";
import { makeCards } from "../../bot/chat/room/cards.ts";
import { dailyOf, GROUPS, groupsOf, inGroups } from "../../commands/groups.ts";
import { commands } from "../../commands/index.ts";
import { ROLES } from "../../store/shapes/person.ts";

const names = (cards: readonly { readonly name: string }[]): string[] => cards.map(({ name }) => name).sort();

describe("the groups of commands", () => {
  test.each(commands.map(({ name }) => name))("/%s stands in exactly one", (name) => {
    expect(groupsOf(name)).toHaveLength(1);
  });

  test("none is without a command", () => {
    const filled = new Set(commands.flatMap(({ name }) => groupsOf(name)));
    expect(GROUPS.filter((group) => !filled.has(group))).toEqual([]);
  });

  test.each(ROLES)("a %s finds every command once, as few groups as a screen takes", (role) => {
    const cards = makeCards(commands, role);
    const groups = inGroups(cards, role);
    expect(names(groups.flatMap((each) => each.cards))).toEqual(names(cards));
    expect(new Set(groups.map(({ group }) => group)).size).toBe(groups.length);
    expect(groups.length).toBeLessThanOrEqual(8);
  });

  test.each([
    ["student", "plan"],
    ["aide", "mix dilute"],
    ["teacher", "class firstday"],
  ] as const)("a %s sees their own first", (role, first) => {
    expect(inGroups(makeCards(commands, role), role)[0]?.cards[0]?.name).toBe(first);
  });

  test.each(ROLES)("the few above all groups are a %s's to send", (role) => {
    expect(dailyOf(makeCards(commands, role), role)).toHaveLength(3);
    expect(dailyOf([], role)).toEqual([]);
  });

  test("a group's commands stand together by noun, in the order of the evening", () => {
    const cards = [
      { name: "tray plan" },
      { name: "print strip" },
      { name: "contact sheet" },
      { name: "print time" },
    ];
    const [group] = inGroups(cards, "student");
    expect(group?.cards.map(({ name }) => name)).toEqual([
      "contact sheet",
      "print strip",
      "print time",
      "tray plan",
    ]);
  });

  test("a group without a hit is left out, and a command without a group is not lost", () => {
    const cards = [{ name: "batch mix" }, { name: "enlarge far" }, { name: "batch test" }];
    expect(groupsOf("enlarge far")).toEqual([]);
    expect(inGroups(cards, "student")).toEqual([
      { group: "chemistry", cards: [{ name: "batch mix" }, { name: "batch test" }] },
      { group: "help", cards: [{ name: "enlarge far" }] },
    ]);
  });
});
