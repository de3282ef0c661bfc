export const en = {
  period: (name: string) => (name === "" ? "Darkroom" : `Darkroom: ${name}`),
  periodDigest: "The class hears what is ready and what to mix",
  weekDigest: "The class hears the week's rolls, litres and waste",
};
export type CalendarWords = typeof en;
