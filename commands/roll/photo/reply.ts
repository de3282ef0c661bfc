import type { PhotoSlot, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber } from "../../speech/wording.ts";
import type { Roll } from "../../../store/shapes/roll.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const show = (roll: Roll) => [
  { label: makeNumber("roll", roll.number), line: makeLine("roll show", { roll: roll.number }) },
];

export function keptReply(roll: Roll, bytes: number): Reply {
  return {
    text: words().kept(makeNumber("roll", roll.number)),
    fields: { roll: roll.number, photoBytes: bytes },
    actions: show(roll),
    photo: { kind: "roll", number: roll.number, isKept: true, mayAdd: true },
  };
}

export function hasReply(roll: Roll, photo: PhotoSlot): Reply {
  const { isKept: has } = photo;
  const name = makeNumber("roll", roll.number);
  return {
    text: has ? words().has(name) : words().hasNone(name),
    fields: { roll: roll.number, hasPhoto: has },
    actions: has
      ? [
          ...show(roll),
          {
            label: words().takeOff,
            line: makeLine("roll photo", { roll: roll.number, remove: "yes" }),
            weight: "danger",
          },
        ]
      : show(roll),
    photo,
  };
}

export function removedReply(roll: Roll, was: boolean): Reply {
  const name = makeNumber("roll", roll.number);
  return {
    text: was ? words().gone(name) : words().hadNone(name),
    fields: { roll: roll.number, removed: was },
    actions: show(roll),
    photo: { kind: "roll", number: roll.number, isKept: false, mayAdd: true },
  };
}
