/** Quantities come as they are written. */
export const en = {
  setting: (seconds: string, aperture: string, grade: string, height: string, paper: string | null) =>
    `**${seconds}** at ${aperture}, ${grade}, head at ${height}${paper === null ? "" : `, paper ${paper}`}`,
  rule: "_The rule: the shortest time at which the clear film edge prints as black as the bare paper beside it; what the frames look like then tells of the negatives (method of proofs for the maximum black)._",
  rivals:
    "_Other rules: a little less, so that the edge of the perforations is just seen, since full black hides shadows; or by the highlights, slightly darker than bare paper and with detail (a US Army course)._",
};
export type SettingWords = typeof en;
