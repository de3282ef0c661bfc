export const en = {
  atSink: "**Your turn: pour in now.** There is a place at the sink.",
  atTrays: "**Your turn: put it in now.** There is room in the trays.",
};
export type TurnWords = typeof en;
