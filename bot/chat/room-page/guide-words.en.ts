/* The tour's words, in English. */

export const guide = {
  title: "How a film goes",
  show: "Show me round",
  showHint: "A whole run at 60 times the speed, in two minutes. Nothing of it is kept.",
  leave: "Leave the tour",
  planLine: "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1",
  askForTime: "Ask for the time",
  start: "Start the run",
  correct: "I poured 20 s before I pressed",
  done: "That was it: to the room",
  steps: [
    {
      title: "Ask for a time",
      text: "Film, developer, temperature: the plan says how long each bath lasts and what the time rests on.",
    },
    {
      title: "Start the run",
      text: "The plan is made. Start it when the film is loaded and the developer has its temperature.",
    },
    {
      title: "Follow the calls",
      text: "Press the button when the tank is full. From then on the page calls: it sounds, vibrates and fills the screen until you answer. The tour's clock runs 60 times as fast and waits while you read.",
    },
    {
      title: "Bath after bath",
      text: "Each change waits for your press. Pressed late? Say how long ago you poured, and every call of the step moves.",
    },
    {
      title: "The log keeps it",
      text: "Every roll is kept with what really happened to it, so that a fault can be traced weeks later. Contact sheets and prints go the same way: plan, trays, calls, log. The letters: P is a plan, R a run, T a tank, B a bottle, L a roll in the log, V a print.",
    },
  ],
};

export type GuideWords = typeof guide;
