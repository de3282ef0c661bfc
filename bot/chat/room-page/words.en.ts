import type { RunName } from "../../../store/shapes/run.ts";
import { board, cue, hearing } from "./call-words.en.ts";
import { doorFaults } from "./door-faults.en.ts";
import { formList } from "./group-words.en.ts";
import { guide } from "./guide-words.en.ts";
import { photo, picture } from "./photo-words.en.ts";
import { push } from "./push-words.en.ts";
import { returning } from "./returning-words.en.ts";
import { invite } from "./invite-words.en.ts";
import { secure } from "./secure-words.en.ts";
import { renewing } from "./renew-words.en.ts";
import { trouble } from "./trouble-words.en.ts";
import { sink } from "./sink-words.en.ts";

/* Every word of the page, in English. Another language is another file of this type. */

export const en = {
  name: "Sinkside",
  loading: "Opening the room…",
  /** The invented class has a name in each language; others are called what they are. */
  classCalled: (name: string): string => name,

  door: {
    title: "Come in",
    lead: "Your darkroom class, on this school's own network.",
    code: "Class code",
    codeHint: "Six letters and digits, like ABC-1DE, from the teacher or the wall",
    yourName: "Your name",
    nameHint: "As the class knows you",
    join: "Join as student",
    asStaff: "I teach or help here",
    asStudent: "I am a student",
    passphrase: "Passphrase",
    passphraseHint: "Shown in the terminal when the class was made",
    joinStaff: "Come in as aide or teacher",
    demoTitle: "Try the invented class",
    demoLead: "Nothing here is real: people, film and developer are made up.",
    demoStudent: "Join as student",
    demoTeacher: "Look around as its teacher",
    demoTeacherName: "Demo teacher",
    ownClass: "I have a class code",
    wait: "One moment…",
  },
  doorFaults,

  link: {
    open: "Connected",
    opening: "Connecting…",
    lost: "No connection",
    lostLong:
      "No connection to the class's computer. I go on counting by myself and catch up as soon as it is back.",
    localCall: "From this phone's own clock: no connection to the class's computer",
    staleLine: (text: string, seconds: string) =>
      `“${text}” was not sent: there was no connection ${seconds} ago.`,
    sendNow: "Send now",
    drop: "Drop it",
  },

  runs: {
    title: "Your runs",
    none: "You have no run going.",
    noneHint: "Make a plan, then press Start.",
    makePlan: "Make a plan",
    planned: (bath: string, temperature: string) => (bath === "" ? "" : `in ${bath} at ${temperature}`),
    start: "Start",
    otherPlan: "Another plan",
    ofClass: (count: number) => (count === 1 ? "1 run of the class" : `${count} runs of the class`),
    tank: (number: number) => `Tank ${number}`,
    where: ({ tank, trays }: Pick<RunName, "tank" | "trays">): string =>
      trays !== undefined ? `Trays ${trays}` : tank === null ? "" : en.runs.tank(tank),
    /** `R7 · Tank 3`, `R9 · Trays 1`; `R5` where it is at neither. */
    name: ({ number, isTrial, ...at }: RunName): string =>
      [`${isTrial ? "Trial " : ""}R${number}`, en.runs.where(at)].filter(Boolean).join(" · "),
    trialMark: (speed: number) => `Trial: ${speed} times as fast, nothing of it is kept.`,
    step: (number: number, count: number) => `Step ${number} of ${count}`,
    left: "left",
    over: "over time",
    next: "Next",
    inTime: (time: string) => `in ${time}`,
    mayGoDark: "Your screen may go dark: set it to stay on, or leave the sound on.",
    heldByVideo: "A small video keeps this screen on. Should it go dark, the sound goes on.",
    pouredEarlier: "Pressed late? Poured earlier by",
    earlierBy: (seconds: number) => `${seconds} s earlier`,
  },

  firstDay: {
    count: (done: number, steps: number) => `${done} of ${steps}`,
    done: "done",
    later: "later",
    showCode: "Show the code and its picture",
  },

  cue,
  hearing,
  feed: {
    title: "Messages",
    empty: "Messages appear here. Ask in your own words below, or open a form.",
    toClass: "to the class",
    call: "Call",
    askedBy: (name: string) => `asked by ${name}`,
    newest: "Go to the newest",
    earlierCut: "Older entries are not shown here. Films are kept in the log: /roll find",
    openPicture: "Show larger",
    download: (name: string) => `Save ${name}`,
    late: (seconds: string) => `${seconds} late`,
  },

  composer: {
    label: "Command",
    placeholder: "Ask, or type /",
    send: "Send",
    forms: "Forms",
    needs: (names: string) => `Still needed: ${names}`,
    option: "option",
    choices: "Suggestions",
    sending: "Sending…",
  },
  lineFaults: {
    ERR_EMPTY_LINE: () => "Type a command, for example /help.",
    ERR_UNKNOWN_COMMAND: (word: string, near: string) =>
      near === "" ? `There is no command /${word}.` : `There is no command /${word}. Did you mean ${near}?`,
    ERR_OPEN_QUOTE: (option: string) => `The quote after ${option}: is not closed.`,
    ERR_TWICE: (option: string) => `${option}: is there twice.`,
    ERR_STRAY_WORDS: (words: string, command: string) =>
      `“${words}” belongs to no option. Write name:value, for example /${command} name:value.`,
    ERR_UNKNOWN_OPTION: (option: string, command: string) => `/${command} has no option ${option}:.`,
    ERR_WHOLE: (option: string) => `${option}: takes a whole number.`,
    ERR_NUMBER: (option: string) => `${option}: takes a number.`,
    ERR_LEAST: (option: string, least: number) => `${option}: is at least ${least}.`,
    ERR_MOST: (option: string, most: number) => `${option}: is at most ${most}.`,
    ERR_CHOICE: (option: string, choices: string) => `${option}: is one of ${choices}.`,
    ERR_LONGEST: (option: string, most: number) =>
      `${option}: has at most ${most === 1 ? "1 character" : `${most} characters`}.`,
    ERR_DISK: () =>
      "That could not be written down: the disk of the class's computer is full. Nothing was changed. Tell your teacher.",
    ERR_TOO_FAST: () => "That was quick. Wait a moment, then send it again.",
    ERR_NOT_UNDERSTOOD: () => "The room did not understand that. Load the page again.",
    ERR_NOT_YOURS: () => "Only an aide or the teacher may see that.",
    ERR_TOO_LONG: () => "That is too long. Shorten it.",
    ERR_BROKE: () => "Something broke on the class's computer. Try again.",
  },

  formList,
  forms: {
    title: "What do you want to do?",
    back: "All forms",
    run: "Send",
    optional: "not needed",
    leave: "(leave it out)",
    search: "Find a form",
    again: "Back to the form",
    more: (count: number) => `More (${count})`,
    fromFile: "From a file…",
  },

  menu: {
    title: "Menu",
    open: "Menu",
    close: "Close",
    theme: "Screen",
    themeDaylight: "Daylight",
    themeSafelight: "Dim red",
    themeCaution: "Load film in total darkness: phones, watches and red lights off.",
    themeAuto: "As the phone",
    sound: "Sound and vibration for calls",
    speech: "Say calls aloud",
    soundTest: "Try the sound",
    language: "Language",
    you: (name: string, role: string) => `${name}, ${role}`,
    leave: "Sign out here",
    board: "Board for the wall",
    room: "Back to the room",
    door: "Door: code and people",
    newClass: "Make this my class",
    here: (count: number) => (count === 1 ? "1 here" : `${count} here`),
  },
  roles: { student: "student", aide: "aide", teacher: "teacher" },

  keys: {
    title: "Door",
    code: "Class code",
    scan: "Scan to come in",
    onlyHere: "Only this computer reaches that address. To let phones in, start with ROOM_HOST=0.0.0.0.",
    rotate: "New code",
    people: "People",
    free: "Sign out everywhere",
    freeHint: "Signs this person out on every device; they come back with a code that you give them.",
    /** By what is kept of a device; one that is not named here stays as it is. */
    devices: {
      "Android phone": "Android phone",
      "Android tablet": "Android tablet",
      "Windows computer": "Windows computer",
      "Linux computer": "Linux computer",
      Device: "Device",
    } as Readonly<Record<string, string>>,
    removeDevice: "Sign out",
    isHere: "here",
    away: "away",
    noDevices: "signed out everywhere",
    passphrases: "New passphrases",
    teacherIs: "Teacher",
    aideIs: "Aide",
    writeDown: "Write these down now. They are not shown again.",
    seen: (when: string) => `seen ${when}`,
  },

  calendar: {
    title: "Calendar",
    none: "Periods and digests can stand in any calendar: it looks them up at an address of the class's own.",
    make: "Create calendar link",
    hint: "Whoever has the address sees the class's times, and no names. A calendar looks it up by itself.",
    renew: "Replace link",
    stop: "Turn link off",
  },

  newClass: {
    title: "Make this my class",
    lead: "An empty class of your own. Nothing of the invented one is carried over.",
    className: "Name of the class",
    zone: "Time zone",
    yourName: "Your name",
    make: "Make the class",
    made: "Your class is ready.",
    goIn: "Go in",
  },

  board,

  guide,
  push,
  returning,
  invite,
  secure,
  trouble,
  renewing,
  sink,
  photo,
  picture,
};

export type Words = typeof en;
