import type { RoomWords } from "./room.en.ts";

export const de: RoomWords = {
  full: (time, wait, ahead) =>
    `**Leg ihn um ${time} hinein, in ${wait}.** Bis dahin ist eine Schale auf seinem Weg voll, und im Entwickler kann ein Abzug nicht warten.${ahead > 0 ? ` Vor dir ${ahead === 1 ? "wartet einer" : `warten ${ahead}`}.` : ""} Halt das Papier im Dunkeln, bis dein Signal kommt.`,
  tooSmall: (prints) =>
    `${prints === 1 ? "Ein Blatt dieser Größe hat" : `${prints} Blatt haben`} in diesen Schalen nicht auf einmal Platz. Nimm weniger, oder stell die Plätze mit \`/tray set\` ein.`,
  anyway: "Er liegt schon drin",
  washAnew: (wash, until) =>
    `**Ein nasser Abzug kam in die Wässerung: Wässere noch einmal ${wash}**, bis ${until}. Was er mitbringt, kommt an alle.`,
};
