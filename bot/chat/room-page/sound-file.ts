/* The media element of a track, and the one file that it holds. */

/** A file that a browser is still taking up is not replaced, up to so long: WebKit's page then stands still for good. */
const LONGEST_TAKE_MS = 10_000;

export interface SoundFile {
  readonly element: HTMLAudioElement;
  /** When the last file was given, by the page's own clock, ms. */
  readonly givenAt: number;
  /** In place of what it held, which is let go. */
  give(wav: Uint8Array<ArrayBuffer>): void;
  clear(): void;
  /** True while it must be given no other. */
  isTakingUp(): boolean;
}

export function createSoundFile(): SoundFile {
  const element = new Audio();
  let url = "";
  let givenAt = -Infinity;

  function letGo(): void {
    if (url !== "") URL.revokeObjectURL(url);
    url = "";
  }

  return {
    element,
    get givenAt() {
      return givenAt;
    },
    give(wav) {
      letGo();
      url = URL.createObjectURL(new Blob([wav], { type: "audio/wav" }));
      element.src = url;
      givenAt = performance.now();
    },
    clear() {
      letGo();
      element.pause();
      element.removeAttribute("src");
    },
    isTakingUp: () =>
      url !== "" &&
      element.error === null &&
      element.readyState < HTMLMediaElement.HAVE_CURRENT_DATA &&
      performance.now() - givenAt < LONGEST_TAKE_MS,
  };
}
