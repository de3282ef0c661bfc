export const en = {
  enlargers: "**Enlargers**",
  papers: "**Boxes of paper**",
  noEnlarger: "The class has named no enlarger yet: `/print enlarger` (teacher).",
  noPaper: "The class has named no box of paper yet: `/print paper` (aide).",
};
export type GearWords = typeof en;
