export const en = {
  storm: (address: string) =>
    `**Many wrong codes or passphrases** are being tried at the door, from ${address}. Nobody got in by that. Who is signed in stays in; new devices there have to wait a little. If that is not your class typing, draw a new code under Menu, Door.`,
};
export type StormWords = typeof en;
