/*
 * What the platform refuses and its OpenAPI document does not say: the limits of its written documentation ("Application
 * Commands", "Message", "Component Reference", read in August 2026), found by trying bodies against the document.
 * Written apart from the bot's own checks, so that each judges the other.
 */

interface Node {
  readonly [key: string]: unknown;
}

const asList = (value: unknown): Node[] => (Array.isArray(value) ? (value as Node[]) : []);
const text = (value: unknown): string => (typeof value === "string" ? value : "");

function listTwice(what: string, values: readonly unknown[]): string[] {
  return new Set(values).size < values.length ? [`${what} twice`] : [];
}

export function listCommandFaults(body: unknown): string[] {
  const commands = asList(body);
  return [
    ...(commands.length > 100 ? ["more than 100 commands"] : []),
    ...listTwice(
      "command name",
      commands.map(({ name }) => name),
    ),
    ...commands.flatMap((command) => [
      ...listNodeFaults(command, true),
      ...(countText(command) > 8000 ? [`${text(command["name"])}: more than 8000 characters`] : []),
    ]),
  ];
}

function listNodeFaults(node: Node, isTop = false): string[] {
  const name = text(node["name"]);
  // On the menu of a message: a name of any letters, and nothing else.
  if (isTop && node["type"] === 3)
    return name.length >= 1 && name.length <= 32 && !node["description"] && !node["options"]
      ? []
      : [`${name}: more than a name on a menu`];
  const options = asList(node["options"]);
  const choices = asList(node["choices"]);
  const faults: string[] = [];
  if (!/^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u.test(name)) faults.push("name");
  if (name !== name.toLowerCase()) faults.push("capital letters");
  if (text(node["description"]) === "") faults.push("no description");
  if (choices.length > 0 && node["autocomplete"] === true) faults.push("choices and autocomplete");
  if (choices.some(({ value }) => String(value).length > 100)) faults.push("choice value over 100");
  const kinds = options.map(({ type }) => type === 1 || type === 2);
  if (kinds.includes(true) && kinds.includes(false)) faults.push("sub-command beside option");
  const required = options.map((option) => option["required"] === true);
  if (required.lastIndexOf(true) > required.indexOf(false) && required.includes(false))
    faults.push("required after optional");
  faults.push(
    ...listTwice(
      "option name",
      options.map((option) => option["name"]),
    ),
  );
  return [
    ...faults.map((fault) => `${name}: ${fault}`),
    ...options.flatMap((option) => listNodeFaults(option)),
  ];
}

function countText(node: Node): number {
  const own = text(node["name"]).length + text(node["description"]).length;
  const choices = asList(node["choices"]).reduce(
    (sum, { name, value }) => sum + text(name).length + String(value).length,
    0,
  );
  return own + choices + asList(node["options"]).reduce((sum, option) => sum + countText(option), 0);
}

const V2 = 1 << 15;

/** `files`: how many came with the body. `isEdit`: parts that are left out stay as they were. */
export function listMessageFaults(body: unknown, { files = 0, isEdit = false } = {}): string[] {
  if (typeof body !== "object" || body === null) return ["no message"];
  const message = body as Node;
  const faults: string[] = [];
  const content = text(message["content"]);
  const components = asList(message["components"]);
  const embeds = asList(message["embeds"]);
  if (content.length > 2000) faults.push("more than 2000 characters");
  const isEmpty =
    content.trim() === "" && components.length + embeds.length + files === 0 && !message["poll"];
  if (isEmpty && !isEdit) faults.push("empty message");
  const allowed = message["allowed_mentions"] as Node | undefined;
  const parse = asList(allowed?.["parse"]) as unknown[];
  for (const list of ["users", "roles"])
    if (parse.includes(list) && asList(allowed?.[list]).length > 0) faults.push(`${list} parsed and listed`);
  if (embeds.reduce((sum, embed) => sum + countEmbed(embed), 0) > 6000)
    faults.push("embeds over 6000 characters");
  if (embeds.flatMap((embed) => asList(embed["fields"])).some(({ value }) => text(value).trim() === ""))
    faults.push("empty field value");
  return [...faults, ...listComponentFaults(components, content, Number(message["flags"] ?? 0))];
}

function countEmbed(embed: Node): number {
  const own = text(embed["title"]).length + text(embed["description"]).length;
  const footer = text((embed["footer"] as Node | undefined)?.["text"]).length;
  const author = text((embed["author"] as Node | undefined)?.["name"]).length;
  const fields = asList(embed["fields"]).reduce(
    (sum, f) => sum + text(f["name"]).length + text(f["value"]).length,
    0,
  );
  return own + footer + author + fields;
}

function listComponentFaults(components: readonly Node[], content: string, flags: number): string[] {
  const all = components.flatMap(flatten);
  const faults: string[] = [];
  const isV2 = (flags & V2) !== 0;
  if (!isV2 && components.length > 5) faults.push("more than 5 rows");
  if (!isV2 && components.some(({ type }) => type !== 1)) faults.push("new components without their flag");
  if (isV2 && content !== "") faults.push("new components beside content");
  if (isV2 && all.length > 40) faults.push("more than 40 components");
  const ids = all.flatMap(({ custom_id: id }) => (id === undefined ? [] : [id]));
  faults.push(...listTwice("custom_id", ids));
  const needsId = all.filter(({ type, style }) => type === 2 && style !== 5 && style !== 6);
  if (needsId.some(({ custom_id: id }) => id === undefined)) faults.push("button without custom_id");
  return faults;
}

function flatten(node: Node): Node[] {
  const accessory = node["accessory"] as Node | undefined;
  return [node, ...asList(node["components"]).flatMap(flatten), ...(accessory ? flatten(accessory) : [])];
}

export function listCallbackFaults(body: unknown, files = 0): string[] {
  const { type, data } = body as { type?: number; data?: Node };
  if (type === 4) return data ? listMessageFaults(data, { files }) : ["answer without data"];
  if (type === 5)
    return (Number(data?.["flags"] ?? 0) & ~64) === 0 ? [] : ["a deferral takes no flag but private"];
  if (type === 7) return listMessageFaults(data ?? {}, { files, isEdit: true });
  if (type === 8)
    return asList(data?.["choices"]).some(({ name }) => text(name) === "") ? ["choice without name"] : [];
  if (type === 9) return listFormFaults(data ?? {});
  return [];
}

/** Source: "Component Reference" (Label, Text Input, String Select) and "Interaction Response Object" (Modal). */
function listFormFaults(form: Node): string[] {
  const rows = asList(form["components"]);
  const inner = rows.map((row) => (row["component"] ?? {}) as Node);
  const faults: string[] = [];
  if (rows.length < 1 || rows.length > 5) faults.push("not 1 to 5 rows in a form");
  if (text(form["title"]).length < 1 || text(form["title"]).length > 45) faults.push("title of a form");
  if (rows.some(({ type }) => type !== 18)) faults.push("a field without its label");
  if (rows.some(({ label }) => text(label).length < 1 || text(label).length > 45))
    faults.push("label of a field");
  faults.push(
    ...listTwice(
      "field",
      inner.map(({ custom_id: id }) => id),
    ),
  );
  for (const field of inner) {
    if (field["type"] === 4 && "label" in field) faults.push("a field's own label inside a label");
    if (field["type"] === 4 && text(field["value"]).length > Number(field["max_length"] ?? 4000))
      faults.push("filled in with more than it takes");
    const options = asList(field["options"]);
    if (field["type"] === 3 && (options.length < 1 || options.length > 25))
      faults.push("not 1 to 25 in a list");
    faults.push(
      ...listTwice(
        "choice in a list",
        options.map(({ value }) => value),
      ),
    );
  }
  return faults;
}
