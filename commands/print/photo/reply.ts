import type { Print } from "../../../store/shapes/print.ts";
import type { PhotoSlot, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber } from "../../speech/wording.ts";
import { showAction } from "../recipe-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const nameOf = ({ number }: Print): string => makeNumber("print", number);

export const keptReply = (print: Print, bytes: number): Reply => ({
  text: words().kept(nameOf(print)),
  fields: { print: print.number, photoBytes: bytes },
  actions: [showAction(print)],
  photo: { kind: "print", number: print.number, isKept: true, mayAdd: true },
});

export function hasReply(print: Print, photo: PhotoSlot): Reply {
  const { isKept } = photo;
  const takeOff = {
    label: words().takeOff,
    line: makeLine("print photo", { print: nameOf(print), remove: "yes" }),
    weight: "danger",
  } as const;
  return {
    text: isKept ? words().has(nameOf(print)) : words().hasNone(nameOf(print)),
    fields: { print: print.number, hasPhoto: isKept },
    actions: [showAction(print), ...(isKept && photo.mayAdd ? [takeOff] : [])],
    photo,
  };
}

export const removedReply = (print: Print, was: boolean): Reply => ({
  text: was ? words().gone(nameOf(print)) : words().hadNone(nameOf(print)),
  fields: { print: print.number, removed: was },
  actions: [showAction(print)],
  photo: { kind: "print", number: print.number, isKept: false, mayAdd: true },
});
