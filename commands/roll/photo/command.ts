import { photoFaultWords } from "./photo-words.ts";
import { z } from "zod";
import { whoMay } from "../../who.ts";
import { type Context, defineCommand, type Reply, UserError } from "../../define.ts";
import { completeRoll, findRoll, ownRoll, photoOfRoll } from "../options.ts";
import { cleanPhoto, MOST_PHOTO_BYTES } from "./photo.ts";
import * as words from "./reply.ts";

export const rollPhoto = defineCommand({
  name: "roll photo",
  summary: "The photo of a roll's contact sheet: shows it, keeps one, takes it off",
  options: () => ({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
    remove: z.enum(["yes"]).optional().describe("Take the photo off"),
  }),
  who: whoMay("roll photo"),
  visibility: "private",
  rest: "roll",
  complete: { roll: completeRoll },
  file: { name: "photo", about: "The photo to keep with it: a JPEG or PNG", mostBytes: MOST_PHOTO_BYTES },
  handle({ roll: text, remove }, context) {
    if (context.file) return putPhoto(context, text, context.file);
    if (remove === undefined) {
      const roll = findRoll(context, text);
      return words.hasReply(roll, photoOfRoll(context, roll));
    }
    const roll = ownRoll(context, text);
    return words.removedReply(roll, context.stores.photos.remove(roll.id));
  },
});

/** The roll's owner's, an aide's or the teacher's to give. */
function putPhoto(context: Context, rollText: string | undefined, bytes: Uint8Array): Reply {
  const roll = ownRoll(context, rollText);
  const photo = cleanPhoto(bytes);
  if (!photo.ok) throw new UserError(photo.fault.code, photoFaultWords(photo.fault));
  context.stores.photos.put(roll.id, photo.value, context.now);
  return words.keptReply(roll, photo.value.bytes.length);
}
