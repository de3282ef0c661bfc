import type { FormListWords } from "./group-words.en.ts";

export const formList: FormListWords = {
  groups: {
    develop: "Film entwickeln",
    print: "Abzüge machen",
    rolls: "Entwickelte Filme ansehen",
    chemistry: "Chemie ansetzen und prüfen",
    times: "Entwicklungszeiten nachschlagen",
    class: "Sich um Kurs und Dosen kümmern",
    help: "Hilfe holen, sicher arbeiten",
    mine: "Deine Daten, Sprache, Handy",
  },
  nothing: "Dazu gibt es nichts. Nimm ein anderes Wort, oder frag in der Zeile unter den Nachrichten.",
};
