export const en = {
  broken:
    "Something broke on my side, and nothing was changed. Try once more; if it breaks again, tell the teacher.",
  diskFull:
    "The disk of the class's computer is full: nothing can be written down, and nothing was changed. Tell the teacher now.",
  onlyStaff: (command: string, least: "aide" | "teacher") =>
    `Only ${least === "aide" ? "an aide or the teacher" : "the teacher"} may use \`/${command}\`. Ask them.`,
  unknownCommand: (name: string, near: readonly string[]) =>
    `There is no \`/${name}\`. ${near.length > 0 ? `Did you mean ${near.map((each) => `\`/${each}\``).join(" or ")}?` : "Try `/help`."}`,
  shareSpent: (whose: "person" | "class") =>
    `${whose === "person" ? "You have" : "Your class has"} written or sent far more today than a day's work needs, and the disk is everybody's. Nothing was changed. Go on tomorrow, or ask your teacher. Calls for a film under way go on.`,
  renamed: (old: string, now: string) => `\`/${old}\` is called \`/${now}\` now.`,
};
export type DispatchWords = typeof en;
