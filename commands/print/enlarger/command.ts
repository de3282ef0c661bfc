import { z } from "zod";
import { enlargerSchema, LIGHTS } from "../../../store/shapes/enlarger.ts";
import { defineCommand } from "../../define.ts";
import { numberIn, textIn, wholeIn } from "../../speech/shaped.ts";
import { setAsideNumber } from "../../unreadable.ts";
import { whoMay } from "../../who.ts";
import { completeEnlarger, enlargerOption, findEnlarger } from "../options.ts";
import * as words from "./reply.ts";

const { shape } = enlargerSchema;

export const printEnlarger = defineCommand({
  name: "print enlarger",
  summary: "Name an enlarger: its light, lens and timer; or set anew what is known of it",
  options: () => ({
    enlarger: enlargerOption.describe("Its number, as it is labelled: 1 or E1"),
    name: textIn(shape.name).optional().describe("What the class calls it"),
    light: z.enum(LIGHTS).optional().describe("How it lights the negative"),
    lens: wholeIn(shape.lensMm).optional().describe("Focal length of its lens in mm, like 50"),
    timer: numberIn(shape.timerTenths, 10)
      .optional()
      .describe("The finest step its timer can be set in, in seconds: 0.1, 0.5 or 1"),
    remove: z.enum(["yes"]).optional().describe("Take it off the list"),
  }),
  who: whoMay("print enlarger"),
  visibility: "private",
  complete: { enlarger: completeEnlarger },
  handle({ enlarger: number, name, light, lens, timer, remove }, context) {
    const { stores, class: school } = context;
    if (remove === "yes") {
      const setAside = setAsideNumber(context, "enlarger", number);
      if (setAside) return setAside;
      findEnlarger(context, number);
      stores.enlargers.remove(school.id, number);
      return words.removedReply(number);
    }
    const known = stores.enlargers.find(school.id, number);
    const enlarger = {
      ...known,
      number,
      name: name ?? known?.name ?? words.nameless(number),
      light: light ?? known?.light ?? "condenser",
      lensMm: lens ?? known?.lensMm ?? 50,
      timerTenths: timer === undefined ? (known?.timerTenths ?? 5) : Math.round(timer * 10),
    };
    stores.enlargers.save(school.id, enlarger);
    return words.savedReply(enlarger, [light ?? known, lens ?? known, timer ?? known].includes(undefined));
  },
});
