/** Names, temperatures, times and instants come as they are written. */
export const en = {
  head: (roll: string, person: string, on: string) => `**${roll}** ${person}, ${on}`,
  headStopped: (roll: string, person: string, on: string, reason: string) =>
    `**${roll}** ${person}, ${on}, stopped${reason === "" ? "" : `: ${reason}`}`,
  baths: (
    film: string,
    exposureIndex: number,
    developer: string,
    temperature: string,
    tank: number | null,
    batches: readonly string[],
  ) =>
    `${film} at EI ${exposureIndex}, ${developer}, ${temperature}${tank === null ? "" : `, tank ${tank}`}${batches.length === 0 ? "" : `, ${batches.length === 1 ? "bottle" : "bottles"} ${batches.join(" ")}`}`,
  notReached: (step: string) => `${step}: not reached`,
  begun: "begun",
  step: (step: string, took: string, planned: string | null) =>
    `${step}: ${took}${planned === null ? "" : ` (planned ${planned})`}`,
  asPlanned: "Developed as planned.",
  short: (percent: number) =>
    `**Developed ${percent} % less than planned**, by the times and temperatures measured.`,
  beyond: (percent: number) =>
    `**Developed ${percent} % more than planned**, by the times and temperatures measured.`,
  otherwise: "**Differences from the plan**",
  someStep: "Step",
  earlier: (step: string, by: string) => `${step}: pour-in put ${by} earlier`,
  later: (step: string, by: string) => `${step}: pour-in put ${by} later`,
  newTemperature: (step: string, temperature: string, from: string, to: string) =>
    `${step}: ${temperature} measured, time ${from} became ${to}`,
  cutShort: (step: string, by: string) => `${step}: ${by} too short`,
  overrun: (step: string, by: string) => `${step}: ${by} too long`,
  calls: (late: number, missed: number) => `Calls: ${late} late, ${missed} missed.`,
  fault: (fault: string, cause: string | undefined) =>
    `Fault: ${fault}${cause === undefined ? "" : `, put down to: ${cause.toLowerCase()}`}.`,
  rating: (rating: number) => `Rated ${rating} of 5.`,
  note: (note: string) => `Note: ${note}`,
  contact: "Contact sheet",
  lookForCause: "Look for a fault's cause",
  noted: (roll: string) => `Noted on ${roll}. It can be found by these words now.`,
  rated: (roll: string, rating: number | null) => `${roll} is rated ${rating} of 5.`,
  unknownRoll: (typed: string) => `There is no roll ${typed}. Find it with \`/roll find\`.`,
  notYourRoll: "Only the roll's owner, an aide or the teacher can write on it.",
  noRollYet: "You have no roll in the log yet. A run that ends writes one.",
  picture: {
    caption: "solid: as it went; outline: as planned; minutes from the first bath",
    notReached: "not reached",
    begun: "begun",
    altNotReached: (step: string) => `${step}: not reached`,
    altStep: (step: string, took: string, planned: string | null) =>
      `${step}: ${took}${planned === null ? "" : ` of ${planned}`}`,
    alt: (roll: string, steps: string) => `${roll} as it went: ${steps}.`,
  },
};
export type ReplyWords = typeof en;
