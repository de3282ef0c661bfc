import { z } from "zod";
import { defineCommand, UserError, type Context } from "../../define.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { whoMay } from "../../who.ts";
import { mayGiveCode, returnsByCode } from "../return.ts";
import * as words from "./reply.ts";

export const minePhone = defineCommand({
  name: "mine phone",
  summary: "A code with which you go on, on another device",
  options: () => ({}),
  who: whoMay("mine phone"),
  visibility: "private",
  handle(_, context) {
    const { person } = context;
    // What a visit from a terminal may do is no part of what the person is.
    const role = context.stores.members.find(context.class.id, person.id)?.role ?? context.role;
    return words.ownReply(give(context, { personId: person.id, name: person.name, role }));
  },
});

export const classPhone = defineCommand({
  name: "class phone",
  summary: "A code with which somebody goes on, on another device",
  options: () => ({ person: z.string().trim().min(1).max(60).describe("Who") }),
  who: whoMay("class phone"),
  visibility: "private",
  rest: "person",
  complete: {
    person: (typed, { stores, class: { id }, role }) =>
      stores.members
        .list(id)
        .filter((each) => returnsByCode(each) === "yes" && mayGiveCode(role, each))
        .filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase()))
        .map(({ name }) => ({ label: name, value: name })),
  },
  handle({ person }, context) {
    const member = context.stores.members.findByName(context.class.id, person);
    if (!member) throw new UserError("ERR_UNKNOWN_PERSON", words.unknownPerson(person));
    if (!mayGiveCode(context.role, member)) throw new UserError("ERR_NOT_YOURS", words.aboveYou(member.name));
    return words.givenReply(member.name, give(context, member));
  },
});

function give(
  { stores, class: { id }, now }: Context,
  whose: { readonly personId: string; readonly name: string; readonly role: Role },
): words.GivenCode {
  const way = returnsByCode(whose);
  if (way === "by-account") throw new UserError("ERR_BY_ACCOUNT", words.byAccount());
  if (way === "by-passphrase") throw new UserError("ERR_BY_PASSPHRASE", words.byPassphrase());
  return stores.returnCodes.give(id, whose.personId, now);
}
