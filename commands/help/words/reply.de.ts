import type { HelpWords } from "./reply.en.ts";

const more = (others: number): string =>
  others === 0 ? "" : others === 1 ? " (und noch 1 Lauf)" : ` (und noch ${others} Läufe)`;

export const de: HelpWords = {
  waiting: (run, title, now, others) => `**${run} wartet auf dich: ${title}.** ${now}${more(others)}`,
  going: (run, title, now, others) =>
    `**${run}, ${title}.** ${now} Du bekommst ein Signal, wenn es so weit ist.${more(others)}`,
  planReady: (plan) =>
    `**Dein Plan ${plan} ist fertig.** Spul den Film bei völliger Dunkelheit ein, füll den Entwickler in einen Messbecher, dann drück auf Start.`,
  firstDay: (title, how) => `**Als Nächstes vor dem ersten Film: ${title}.** ${how}`,
  notSetUp: (parts) =>
    `**Der Kurs ist noch nicht eingerichtet:** ${parts === 1 ? "1 Teil fehlt" : `${parts} Teile fehlen`}, ein bis zwei Minuten.`,
  bottle: {
    "test-overdue": (label) => `**${label}** braucht eine Klärprobe mit einem Filmschnipsel.`,
    "replenish-due": (label) => `**${label}** braucht sein Regenerat: wie viel, sagt sein Stand.`,
    exhausted: (label) =>
      `**${label}** ist verbraucht: Niemand darf es nehmen. Sammle es und setz frisch an.`,
    "out-of-date": (label) =>
      `**${label}** ist abgelaufen. Prüf es oder entsorge es, wie es die Regeln am Ort sagen, und setz frisch an.`,
    "last-films": (label) => `**${label}** ist fast verbraucht. Setz das nächste an.`,
    tired: (label) => `**${label}** lässt nach. Behalt es im Auge.`,
    "out-of-date-soon": (label) => `**${label}** läuft bald ab. Setz rechtzeitig das nächste an.`,
  },
  rate: (roll) =>
    `**Wie ist ${roll} geworden?** Halt den trockenen Film vor ein Licht und werte ihn, 1 (unbrauchbar) bis 5 (lässt sich mühelos vergrößern). Sieht etwas falsch aus, such die Ursache.`,
  noSheet:
    "**Der Kurs hat noch keine Entwicklungszeiten.** Eine Hilfskraft oder die Lehrkraft trägt sie ein: `/sheet add`.",
  firstPlan:
    "**Beginn mit einem Plan.** Miss, wie warm der Entwickler ist, dann sag, welcher Film und wie warm:\n`/plan film:… temp:20`\nIch rechne die Zeiten aus; dann bekommst du bei jedem Schritt ein Signal. Film bei völliger Dunkelheit einspulen: Handy, Uhr und Rotlicht aus.",
  nextPlan:
    "**Mach einen Plan** für den nächsten Film: `/plan film:… temp:20`\nOder mach mit einem entwickelten weiter: sein Kontaktbogen, dann Teststreifen und Abzug.",
  whereAmI: "Wo bin ich?",
  start: "Start",
  setUp: "Kurs einrichten",
  allBottles: "Alle Flaschen",
  looksWrong: "Etwas sieht falsch aus",
  makePlan: "Plan machen",
  contactSheet: "Kontaktbogen meines neuesten Films",
  filmsAndDevelopers: "Filme und Entwickler",
  always: {
    student: [
      "`/run status` (wo dein Film ist)",
      "`/roll find` (das Filmbuch)",
      "`/contact sheet`, `/print strip` und `/tray plan` (Abzüge)",
      "`/sheet list` (Filme und Entwickler)",
      "`/caution` (Sicherheit und Abfall)",
    ],
    aide: ["`/batch status` (Flaschen)"],
    teacher: ["`/class board`, `/class turns`, `/class say`"],
  },
  alwaysThere: (list) =>
    `Immer da: ${list}. Oder frag in eigenen Worten: \`wie lange noch\`. Was von dir gespeichert ist: \`/mine show\`.`,
};
