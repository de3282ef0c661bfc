export const invite = {
  title: "A class on Discord",
  hint: "This bot serves classes on Discord as well, each on a server of its own. Whoever manages a server adds it there.",
  add: "Add it to a server",
};
export type InviteWords = typeof invite;
