import type { Role } from "../store/shapes/person.ts";

/*
 * Who may do what: the least role for each command. The one table; every definition takes its `who` from here or is
 * tested to agree with it. Beyond it two rules hold everywhere: a student touches only their own runs and rolls, and
 * nobody sees another class.
 */
export const WHO = {
  help: "student",
  ask: "student",
  caution: "student",
  plan: "student",
  "plan curve": "student",
  "plan exposure": "student",
  "run start": "student",
  "run next": "student",
  "run status": "student",
  "run correct": "student",
  "run stop": "student",
  "sheet show": "student",
  "sheet list": "student",
  "sheet export": "student",
  "sheet add": "aide",
  "sheet import": "aide",
  "sheet tablet": "aide",
  "tank list": "student",
  "tank report": "student",
  "tank clear": "aide",
  "tank measure": "aide",
  "tank add": "teacher",
  "tank remove": "teacher",
  "batch status": "student",
  "batch ledger": "student",
  "batch take": "student",
  "batch waste": "student",
  "batch shelf": "student",
  "batch mix": "aide",
  "batch test": "aide",
  "batch topup": "aide",
  "batch discard": "aide",
  "batch correct": "aide",
  "batch allow": "aide",
  "batch restock": "aide",
  "batch handover": "teacher",
  "roll find": "student",
  "roll show": "student",
  "roll note": "student",
  "roll rate": "student",
  "roll fault": "student",
  "roll photo": "student",
  "roll export": "teacher",
  "class board": "student",
  "class turns": "student",
  "class setup": "teacher",
  "class periods": "teacher",
  "class digest": "teacher",
  "class role": "teacher",
  "class say": "teacher",
  "class said": "teacher",
  "class report": "teacher",
  "class phone": "aide",
  "class forget": "teacher",
  "class mend": "teacher",
  "class erase": "teacher",
  "mix dilute": "student",
  "mix temper": "student",
  "mix class": "student",
  "mine show": "student",
  "mine export": "student",
  "mine language": "student",
  "mine phone": "student",
  "mine erase": "student",
} as const satisfies Record<string, Role>;

export type GuardedCommand = keyof typeof WHO;

export function whoMay(name: GuardedCommand): Role {
  return WHO[name];
}
