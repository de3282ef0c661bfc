import type { PhotoPlace, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { makeNumber } from "../wording.ts";
import { MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS, type PhotoFault } from "./photo.ts";
import type { Roll } from "./roll.ts";

type Words = { [Fault in PhotoFault as Fault["code"]]: (fault: Fault) => string };
const FAULT_TEXT: Words = {
  ERR_PHOTO_LARGE: ({ bytes }) =>
    `The photo has ${Math.ceil(bytes / 1024 / 1024)} MB; at most ${MOST_PHOTO_BYTES / 1024 / 1024}. Take it smaller, or crop it.`,
  ERR_PHOTO_TYPE: () => "That is no JPEG and no PNG. Save the photo as one of them.",
  ERR_PHOTO_BROKEN: () =>
    "The photo is not whole: its end is missing, or something in it is damaged. Send it again.",
  ERR_PHOTO_PIXELS: ({ width, height }) =>
    `The photo says it is ${width} by ${height} pixels; at most ${MOST_PHOTO_PIXELS} each way.`,
};

export function photoFaultWords(fault: PhotoFault): string {
  const word = FAULT_TEXT[fault.code] as (fault: PhotoFault) => string;
  return word(fault);
}

const show = (roll: Roll) => [
  { label: makeNumber("roll", roll.number), line: makeLine("roll show", { roll: roll.number }) },
];

export function keptReply(roll: Roll, bytes: number): Reply {
  return {
    text: `The photo is with ${makeNumber("roll", roll.number)}. Where and when it was taken, and with what, is not kept.`,
    fields: { roll: roll.number, photoBytes: bytes },
    actions: show(roll),
    photo: { roll: roll.number, has: true, mayAdd: true },
  };
}

export function hasReply(roll: Roll, photo: PhotoPlace): Reply {
  const { has } = photo;
  const name = makeNumber("roll", roll.number);
  return {
    text: has ? `${name} has a photo of its contact sheet.` : `${name} has no photo yet.`,
    fields: { roll: roll.number, hasPhoto: has },
    actions: has
      ? [
          ...show(roll),
          {
            label: "Take the photo off",
            line: makeLine("roll photo", { roll: roll.number, remove: "yes" }),
            weight: "danger",
          },
        ]
      : show(roll),
    photo,
  };
}

export function removedReply(roll: Roll, was: boolean): Reply {
  return {
    text: was
      ? `The photo of ${makeNumber("roll", roll.number)} is gone.`
      : `${makeNumber("roll", roll.number)} has no photo.`,
    fields: { roll: roll.number, removed: was },
    actions: show(roll),
    photo: { roll: roll.number, has: false, mayAdd: true },
  };
}
