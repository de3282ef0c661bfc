export const en = {
  noPrintYet: "You have no print in the log yet. `/print log seconds:12.5` writes one.",
  unknownPrint: (typed: string) => `There is no print ${typed}. Find it with \`/print find\`.`,
  notYourPrint: "Only the print's maker, an aide or the teacher can write on it.",
  head: (print: string, person: string, on: string) => `**${print}** ${person}, ${on}`,
  frame: (frame: string) => `frame ${frame}`,
  headAt: (height: string) => `head at ${height}`,
  size: (size: string) => `on ${size}`,
  developed: (how: string) => `developed: ${how}`,
  rated: (rating: number) => `Rated ${rating} of 5.`,
  fault: (fault: string, cause: string | undefined) =>
    `Fault: ${fault}${cause === undefined ? "" : `, put down to: ${cause.toLowerCase()}`}.`,
  note: (note: string) => `Note: ${note}`,
  again: "Print it again",
  looksWrong: "Something looks wrong",
};
export type RecipeWords = typeof en;
