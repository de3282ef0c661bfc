import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import type { FeedEvent } from "../room/wire.ts";
import { sendPhoto } from "./photo-file.ts";
import { Pictures } from "./picture.tsx";
import { useWords } from "./words.ts";

type PhotoSlot = NonNullable<FeedEvent["photo"]>;

/** The photo of a roll's contact sheet or of a print, and the way to give it one. What the room says to a new one comes as an entry. */
export function Photo({ place }: { place: PhotoSlot }) {
  const { photo: words, doorFaults } = useWords();
  const [isSending, setSending] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const { name } = place;

  async function give(input: HTMLInputElement): Promise<void> {
    const file = input.files?.[0];
    if (!file) return;
    setSending(true);
    const sent = await sendPhoto(name, file, doorFaults);
    setSending(false);
    // The same file can be chosen again after a fault.
    input.value = "";
    setFault(sent.ok ? null : (sent.text ?? doorFaults[sent.code]));
  }

  return (
    <div class="photo">
      {place.src !== null && (
        <Pictures pictures={[{ name, src: place.src, alt: words.of[place.kind](name) }]} />
      )}
      {place.mayAdd && (
        <div class="photo-add">
          <FileKey isSending={isSending} onGive={give}>
            {isSending ? words.sending : place.src === null ? words.add : words.replace}
          </FileKey>
          {/* On a phone; elsewhere it would be the same as the other. */}
          <FileKey isSending={isSending} onGive={give} isCamera>
            {words.camera}
          </FileKey>
        </div>
      )}
      <p class="photo-fault" role="alert">
        {fault}
      </p>
    </div>
  );
}

interface FileKeyProps {
  readonly isSending: boolean;
  readonly isCamera?: boolean;
  readonly children: ComponentChildren;
  onGive(input: HTMLInputElement): Promise<void>;
}

function FileKey({ isSending, isCamera = false, children, onGive }: FileKeyProps) {
  const id = useId();
  return (
    <span class={isCamera ? "photo-camera" : ""}>
      <input
        id={id}
        class="file-input"
        type="file"
        accept="image/*"
        disabled={isSending}
        onChange={(event) => void onGive(event.currentTarget)}
        {...(isCamera ? { capture: "environment" } : {})}
      />
      <label class="key" for={id}>
        {children}
      </label>
    </span>
  );
}
