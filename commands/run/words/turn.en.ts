export const en = {
  atSink: { does: "Your turn: pour in now.", how: "There is a place at the sink." },
  atTrays: { does: "Your turn: put it in now.", how: "There is room in the trays." },
  atTank: {
    does: (tank: number) => `Your turn: tank ${tank} is free.`,
    how: "Rinse it and dry its reel, and load your film in the dark.",
  },
  brief: "Your turn",
  wait: "Wait: I call you when it is your turn.",
};
export type TurnWords = typeof en;
