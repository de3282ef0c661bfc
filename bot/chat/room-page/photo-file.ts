import type { PhotoRefusal } from "../room/wire.ts";
import type { DoorFault } from "./api.ts";
import type { Words } from "./words.ts";

/* A photo on its way from the phone to the room. */

export type SentPhoto =
  { readonly ok: true } | { readonly ok: false; readonly code: DoorFault; readonly text: string | null };

/** The longer side, in pixels, of a photo that is made smaller: of 36 frames each keeps some 600. */
const MOST_SIDE = 4000;
/** From here on it is made smaller: a slow network has ten seconds for it. */
const LARGE_BYTES = 3 * 1024 * 1024;
const KEPT_AS_IT_IS: readonly string[] = ["image/jpeg", "image/png"];

/** Sends the picture alone: neither the file's name nor its path. */
export async function sendPhoto(name: string, file: Blob, faults: Words["doorFaults"]): Promise<SentPhoto> {
  try {
    const body = await makeSmaller(file);
    const response = await fetch(`/api/photos/${name}`, { method: "POST", body });
    if (response.ok) return { ok: true };
    const { error } = (await response.json()) as PhotoRefusal;
    const code = error.code in faults ? (error.code as DoorFault) : "ERR_BROKE";
    return { ok: false, code, text: error.text ?? null };
  } catch {
    return { ok: false, code: "ERR_UNREACHABLE", text: null };
  }
}

/** Large photos, and those of types the room does not take, drawn anew by the browser; as they are where it cannot. */
async function makeSmaller(file: Blob): Promise<Blob> {
  if (file.size <= LARGE_BYTES && KEPT_AS_IT_IS.includes(file.type)) return file;
  try {
    const image = await createImageBitmap(file);
    const scale = Math.min(1, MOST_SIDE / Math.max(image.width, image.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(image.width * scale);
    canvas.height = Math.round(image.height * scale);
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    image.close();
    const drawn = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", 0.9));
    return drawn ?? file;
  } catch {
    return file;
  }
}
