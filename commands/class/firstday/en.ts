export const en = {
  head: (title: string, done: number, steps: number) => `**${title}: ${done} of ${steps} done.**`,
  done: (title: string) => `- ✓ ${title}`,
  later: (title: string) => `- ${title} _(later)_`,
  open: (title: string) => `- **${title}**`,
  next: (title: string, how: string) => `**Next: ${title}.** ${how}`,
  allDone: "Everything is there: the class can develop.",
  onlyLater: "What is left can wait. `/class firstday later:none` brings it back.",
  invented:
    "The invented class has all it needs. A class of your own begins in the page: Menu, Make this my class.",
  past: "This class is past its first film. `/class setup` shows what is set.",
};
export type FirstdayWords = typeof en;
