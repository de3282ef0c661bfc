import type { FirstdayWords } from "./en.ts";

export const de: FirstdayWords = {
  head: (title, done, steps) => `**${title}: ${done} von ${steps} erledigt.**`,
  done: (title) => `- ✓ ${title}`,
  later: (title) => `- ${title} _(später)_`,
  open: (title) => `- **${title}**`,
  next: (title, how) => `**Als Nächstes: ${title}.** ${how}`,
  allDone: "Alles ist da: Der Kurs kann entwickeln.",
  onlyLater: "Was fehlt, hat Zeit. Mit `/class firstday later:none` kommt es wieder.",
  invented: "Der erfundene Kurs hat alles. Ein eigener beginnt auf der Seite: Menü, Meinen Kurs anlegen.",
  past: "Dieser Kurs hat seinen ersten Film hinter sich. Was eingestellt ist, zeigt `/class setup`.",
};
