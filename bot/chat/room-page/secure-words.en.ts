export const secure = {
  none: "This page comes over plain http: phones can't have it on their home screen or be called while it is closed, and only a small video keeps their screens on. README, “https”, says how to change that.",
  byProxy: "This page comes over https.",
  holds: (day: string, days: number) =>
    `This page comes over https. Its certificate holds until ${day}: ${days === 1 ? "1 day" : `${days} days`}.`,
  renew: "Have it renewed: afterwards browsers warn everybody off.",
  over: (day: string) =>
    `The certificate was good until ${day}. Browsers warn everybody off this page: have it renewed now.`,
};
export type SecureWords = typeof secure;
