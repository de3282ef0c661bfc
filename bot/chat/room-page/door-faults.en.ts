/* Why a door stays shut. */

export const doorFaults = {
  ERR_CODE: "No class has that code. Look at it again: letters and digits, six of them.",
  ERR_NAME: "Write a name of letters and digits of one alphabet, at most 40 of them.",
  ERR_NAME_TAKEN:
    "That name, or one that looks like it, is somebody's. If it is yours, come back with a code of your own: your old device shows one, or an aide gives it to you. Otherwise take another name.",
  ERR_NAME_ROLE: "That is what aides and teachers are called. Write your own name.",
  ERR_PASSPHRASE:
    "That is not the passphrase of this class. Case and dashes do not matter; letters and digits do.",
  ERR_RETURN_CODE: "That code opens nothing: it works once, for ten minutes. Get a new one.",
  ERR_BY_PASSPHRASE: "A teacher comes in with the passphrase and the same name.",
  ERR_RUN_OPEN: "A film is still running. Sign out under Menu.",
  ERR_DISK:
    "The class's computer can write nothing down: its disk is full. Nothing was changed. Tell your teacher.",
  ERR_LOCKED: "This device is locked. Ask your teacher.",
  ERR_TOO_OFTEN:
    "Too many wrong tries from here. Wait a minute, then try again; each further wrong one makes the wait longer.",
  ERR_NO_DEMO: "The invented class is not open to other computers. Use a class code.",
  ERR_ORIGIN: "This page was opened in a way the room does not trust. Type its address by hand.",
  ERR_HOST: "This address is not one the room answers to. Ask for the right one.",
  ERR_SIGNED_OUT: "You are signed out. Come in again.",
  ERR_FORBIDDEN: "Only an aide or the teacher may do that.",
  ERR_NOT_UNDERSTOOD: "The room did not understand that. Load the page again.",
  ERR_NOT_FOUND: "That is not here any more.",
  ERR_BROKE: "Something broke on the class's computer. Try again.",
  ERR_UNREACHABLE: "The class's computer does not answer. Check that you are on the school's network.",
};
export type DoorFaultWords = typeof doorFaults;
