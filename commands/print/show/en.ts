export const en = { unjudged: "Nobody has rated it or written on it yet." };
export type ShowWords = typeof en;
