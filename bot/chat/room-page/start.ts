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
import { firstWords } from "./early.ts";

/*
 * The first few hundred bytes of the page. They ask for who is here and for the words, while the rest, which the document
 * names as well, comes beside them: one after the other each would wait for a whole round trip.
 */

const AGAIN_MS = 2000;

Promise.all([import("./main.tsx"), firstWords]).then(
  ([{ showPage }]) => showPage(),
  // A part was lost on the way; a page that stays empty calls nobody.
  () => setTimeout(() => location.reload(), AGAIN_MS),
);
