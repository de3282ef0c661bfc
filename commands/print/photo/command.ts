import { z } from "zod";
import { type Context, defineCommand, type Reply, UserError } from "../../define.ts";
import { photoFaultWords } from "../../roll/photo/photo-words.ts";
import { cleanPhoto, MOST_PHOTO_BYTES } from "../../roll/photo/photo.ts";
import { whoMay } from "../../who.ts";
import { completePrint, findPrint, ownPrint, photoOfPrint } from "../find-print.ts";
import * as words from "./reply.ts";

export const printPhoto = defineCommand({
  name: "print photo",
  summary: "The photo of a print: shows it, keeps one, takes it off",
  options: () => ({
    print: z.string().min(1).max(12).optional().describe("Which print, like V7; your newest if left out"),
    remove: z.enum(["yes"]).optional().describe("Take the photo off"),
  }),
  who: whoMay("print photo"),
  visibility: "private",
  rest: "print",
  complete: { print: completePrint },
  file: { name: "photo", about: "The photo to keep with it: a JPEG or PNG", mostBytes: MOST_PHOTO_BYTES },
  handle({ print: text, remove }, context) {
    if (context.file) return putPhoto(context, text, context.file);
    if (remove === undefined) {
      const print = findPrint(context, text);
      return words.hasReply(print, photoOfPrint(context, print));
    }
    const print = ownPrint(context, text);
    return words.removedReply(print, context.stores.prints.removePhoto(print.id));
  },
});

/** The maker's, an aide's or the teacher's to give. */
function putPhoto(context: Context, text: string | undefined, bytes: Uint8Array): Reply {
  const print = ownPrint(context, text);
  const photo = cleanPhoto(bytes);
  if (!photo.ok) throw new UserError(photo.fault.code, photoFaultWords(photo.fault));
  context.stores.prints.putPhoto(print.id, photo.value, context.now);
  return words.keptReply(print, photo.value.bytes.length);
}
