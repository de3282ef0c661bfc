/** What each word that stands before others on this platform is about; at most 100 characters. */
export const groups: Readonly<Record<string, string>> = {
  plan: "Work out a film's times",
  run: "The film in your tank: start it, go on, see how long, stop it",
  roll: "The log of developed films",
  sheet: "Data sheets: the developing times the class has",
  mix: "Mix and temper solutions",
  batch: "The class's bottles of chemistry",
  class: "The class: its board, its turns at the sinks, its settings",
  mine: "What is kept about you: see it, take it along, erase it",
  tank: "The class's tanks",
  print: "Enlargements and contact sheets",
  "staff-roll": "For the teacher: the log as a file",
  "staff-print": "For aides and the teacher: paper and enlargers",
  "staff-sheet": "For aides and the teacher: the developing times",
  "staff-batch": "For aides and the teacher: mix, test, top up and discard bottles",
  "staff-class": "For aides and the teacher: the class and its settings",
  "staff-tank": "For aides and the teacher: the tanks",
};
