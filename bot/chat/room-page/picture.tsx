import { useRef, useState } from "preact/hooks";
import type { FeedEvent } from "../room/wire.ts";
import { useDialogKeys, useFocusHere } from "./focus.ts";
import { useWords } from "./words.ts";

type Picture = FeedEvent["pictures"][number];

/** Drawings of an entry; each can be opened over the whole screen and moved about. */
export function Pictures({ pictures }: { pictures: readonly Picture[] }) {
  const { feed } = useWords();
  const [open, setOpen] = useState<Picture | null>(null);
  return (
    <>
      {pictures.map((picture) => (
        <button
          key={picture.src}
          type="button"
          class="picture"
          aria-label={`${feed.openPicture}: ${picture.alt}`}
          onClick={() => setOpen(picture)}
        >
          <img src={picture.src} alt={picture.alt} loading="lazy" />
        </button>
      ))}
      {open && <Zoomed picture={open} onClose={() => setOpen(null)} />}
    </>
  );
}

const MOST_ZOOM = 6;

function Zoomed({ picture, onClose }: { picture: Picture; onClose: () => void }) {
  const { picture: words } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const [zoom, setZoom] = useState(1);
  useFocusHere(dialog, true);
  useDialogKeys(dialog, onClose);
  const by = (factor: number): void => setZoom(Math.min(MOST_ZOOM, Math.max(1, zoom * factor)));
  return (
    <dialog ref={dialog} open class="zoomed" tabIndex={-1} aria-modal="true" aria-label={picture.alt}>
      {/* Scrolling and the two-finger zoom are the browser's own; the keys are for those who have neither. */}
      <div class="zoom-window" tabIndex={0}>
        <div class="zoom-paper" style={{ width: `${zoom * 100}%` }}>
          <img src={picture.src} alt={picture.alt} />
        </div>
      </div>
      <div class="zoom-keys">
        <button type="button" class="key" onClick={() => by(1 / 1.5)} disabled={zoom <= 1}>
          {words.zoomOut}
        </button>
        <button type="button" class="key" onClick={() => by(1.5)} disabled={zoom >= MOST_ZOOM}>
          {words.zoomIn}
        </button>
        <a class="key" href={picture.src.replace(/svg$/, "png")} download={`${picture.name}.png`}>
          {words.save}
        </a>
        <button type="button" class="key main" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </dialog>
  );
}
