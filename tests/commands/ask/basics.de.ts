/* Written for itself, not translated: what is typed in a first hour in the darkroom. */
export const BASICS_DE: readonly (readonly [wanted: string, sentence: string])[] = [
  ["where", "womit fang ich an"],
  ["order", "welche flasche zuerst"],
  ["amount", "wieviel muss da rein"],
  ["dark", "muss das licht jetzt aus sein"],
  ["unreel", "wie krieg ich den film von der spule runter"],
  ["spilt-on", "hab was auf die hose gekriegt"],
  ["harm", "hab was auf die hand gekriegt"],
  ["mishap", "hab das falsche reingekippt"],
  ["slow-pour", "hab zu spät ausgegossen"],
  ["back", "wohin mit dem zeug"],
  ["skip", "kann ich wasser statt stopp nehmen"],
  ["look", "film ist noch lila"],
  ["word", "was ist das mit dem spüli"],
  ["at-once", "welcher tank piept da"],
  ["danger", "ist das zeug gefährlich"],
  ["dryer", "wann darf ich an den trockner"],
];
