import type { Forms } from "../../define.ts";

export const forms: Forms = {
  "mine show": { summary: "Was von dir gespeichert ist, in einfachen Worten", options: {} },
  "mine export": { summary: "Alles, was von dir gespeichert ist, als Datei zum Mitnehmen", options: {} },
  "mine language": {
    summary: "In welcher Sprache ich mit dir spreche",
    options: { language: "In welcher Sprache ich mit dir spreche" },
  },
  "mine phone": {
    summary: "Ein Code, mit dem du auf einem anderen Gerät weitermachst",
    options: {},
  },
  "class phone": {
    summary: "Ein Code, mit dem jemand auf einem anderen Gerät weitermacht",
    options: { person: "Wer" },
  },
  "mine erase": {
    summary: "Dich aus dem Speicher dieses Kurses nehmen, für immer",
    options: { name: "Dein Name, zur Bestätigung" },
  },
  "class forget": {
    summary: "Jemanden aus dem Speicher dieses Kurses nehmen, für immer",
    options: { person: "Wen", sure: "Ich weiß, was ich tue" },
  },
};
