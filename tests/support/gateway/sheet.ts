/** A time of the invented class, as `/sheet add` takes it from the platform. */
export const SHEET = {
  film: "Lantern 400",
  developer: "House MQ",
  dilution: "1+1",
  temp: "20C",
  time: "9:00",
  speed: 400,
} as const;
