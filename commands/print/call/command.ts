import { defineCommand, UserError } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { barsOf } from "../bars.ts";
import { calledStrip } from "../called-strip.ts";
import { noStrip } from "../strip-words.ts";
import * as words from "./reply.ts";

export const printCall = defineCommand({
  name: "print call",
  summary: "Have your test strip called: lamp off, move the card, lamp on, bar after bar",
  options: () => ({}),
  who: whoMay("print call"),
  visibility: "private",
  handle(_, { stores, class: { id }, person, now }) {
    const strip = stores.prints.strip(id, person.id);
    if (!strip) throw new UserError("ERR_NO_STRIP", noStrip());
    const called = calledStrip(strip);
    if (!called.ok) {
      const bars = barsOf(strip);
      throw new UserError(called.fault.code, words.notCalled(called.fault, strip, bars.ok ? bars.value : []));
    }
    const { plan, bars } = called.value;
    // What is read off it later is what it was given.
    stores.prints.keepStrip(id, person.id, plan.strip, now);
    const { number } = stores.plans.add(id, person.id, plan, now);
    return words.callReply(number, plan, bars);
  },
});
