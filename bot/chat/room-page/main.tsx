import { render } from "preact";
import { App } from "./app.tsx";
import { watchFocus } from "./focus.ts";
import { watchHolds } from "./hold.ts";
import { awaitLetters } from "./lettering.ts";
import { keepPage } from "./worker.ts";
import { createPageRoom } from "./room.ts";

/** Once its words are here. */
export function showPage(): void {
  const room = createPageRoom();
  // The first touch anywhere lets the page sound later on.
  for (const touch of ["pointerdown", "touchend", "click", "keydown"])
    addEventListener(
      touch,
      () => {
        room.sounder.touch();
        room.wake.touch();
      },
      { capture: true },
    );
  watchHolds();
  watchFocus();
  void room.enter();

  keepPage();

  const root = document.getElementById("app");
  if (root) render(<App room={room} />, root);
  void awaitLetters();
}
