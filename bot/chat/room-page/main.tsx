import "@fontsource/atkinson-hyperlegible/400.css";
import "@fontsource/atkinson-hyperlegible/700.css";
import "./styles/base.css";
import "./styles/door.css";
import "./styles/bench.css";
import "./styles/first-day.css";
import "./styles/run.css";
import "./styles/cue.css";
import "./styles/log.css";
import "./styles/photo.css";
import "./styles/composer.css";
import "./styles/sheet.css";
import { render } from "preact";
import { App } from "./app.tsx";
import { watchFocus } from "./focus.ts";
import { watchHolds } from "./hold.ts";
import { keepPage } from "./worker.ts";
import { createPageRoom } from "./room.ts";

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
