export const en = {
  reuse: "Write it as films in a litre/what they add/most films, like 1/10%/10 or 4/60s/12.",
};
export type OptionWords = typeof en;
