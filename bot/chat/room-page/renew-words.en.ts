const devices = (count: number): string => (count === 1 ? "1 device" : `${count} devices`);

export const renewing = {
  codeHint: "The old code stops working. You choose who stays in.",
  codeKeep: "New code; everybody stays in",
  codeOut: (count: number) => `New code, and sign out students on ${devices(count)}`,
  passphrasesHint: "Shown once, here. The old ones stop working. You choose who stays in.",
  passphrasesKeep: "New passphrases; everybody stays in",
  passphrasesOut: (count: number) =>
    `New passphrases, and sign out aides and teachers on ${devices(count)} besides this one`,
  leave: "Leave it as it is",
};
export type RenewWords = typeof renewing;
