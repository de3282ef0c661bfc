export const returning = {
  been: "I have been here before",
  new: "I am new here",
  lead: "Your old device shows a code under Menu, New phone. If it is lost, an aide or your teacher gives you one.",
  code: "Your code",
  codeHint: "Six letters and digits, like ABC-1DE. It works once, for ten minutes.",
  goOn: "Go on where I was",
  menu: "New phone",
  title: "New phone",
  show: (name: string) => `Your code, ${name}`,
  showFor: (name: string) => `Code for ${name}`,
  until: (time: string) => `for one use, until ${time}`,
  how: "Scan this with the other device, or open the same page there, press “I have been here before” and type the code.",
  stays: "This device stays signed in: leave it under Menu when you are done with it.",
  onlyThem: (name: string) => `Give it to nobody else: whoever types it is ${name}.`,
  another: "Another code",
  forThem: "New phone",
  leaveRun: "A film is still running",
  leaveRunLead:
    "If you sign out, this device stops calling you. The bath keeps working: have your other device ready first.",
  leaveAnyway: "Sign out all the same",
  stay: "Stay",
};
export type ReturningWords = typeof returning;
