export const en = {
  atSink: { does: "Your turn: pour in now.", how: "There is a place at the sink." },
  atTrays: { does: "Your turn: put it in now.", how: "There is room in the trays." },
  brief: "Your turn",
  wait: "Wait: I call you when it is your turn.",
};
export type TurnWords = typeof en;
