import {
  ApplicationCommandOptionType as OptionType,
  type APIApplicationCommandOption,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
} from "discord-api-types/v10";

/* The registered commands as a person's own client uses them: where one stands, and what its options take. */

export type Plain = Readonly<Record<string, string | number | boolean>>;

interface Leaf {
  readonly path: readonly string[];
  readonly leaf: { readonly options: readonly APIApplicationCommandOption[] };
  /** Of the whole command: who may see it by default; undefined: everybody. */
  readonly permissions: bigint | undefined;
}

/** Where a command stands: `batch mix` is registered as `staff-batch mix`. */
export function findPath(bodies: readonly CommandBody[], name: string): Leaf {
  const leaves = bodies.flatMap((body): Leaf[] => {
    const bits = body.default_member_permissions;
    const permissions = bits == null ? undefined : BigInt(bits);
    return listLeaves([body.name], body.options ?? []).map((each) => ({ ...each, permissions }));
  });
  const found =
    leaves.find(({ path }) => path.join(" ") === name) ??
    leaves.find(({ path }) => path.join(" ") === `staff-${name}`);
  if (!found) throw new Error(`/${name} is not registered here`);
  return found;
}

function listLeaves(
  path: readonly string[],
  options: readonly APIApplicationCommandOption[],
): Omit<Leaf, "permissions">[] {
  const branches = options.filter(
    ({ type }) => type === OptionType.Subcommand || type === OptionType.SubcommandGroup,
  );
  if (branches.length === 0) return [{ path, leaf: { options } }];
  return branches.flatMap((branch) =>
    listLeaves([...path, branch.name], "options" in branch ? (branch.options ?? []) : []),
  );
}

/** Options under the words of a path: a sub-command, in its group where it has one. */
export function nest(path: readonly string[], options: readonly object[]): readonly object[] {
  return path.reduceRight<readonly object[]>(
    (inner, name, at) => [
      {
        type: at === path.length - 1 ? OptionType.Subcommand : OptionType.SubcommandGroup,
        name,
        options: inner,
      },
    ],
    options,
  );
}

export function fit(name: string, definitions: readonly APIApplicationCommandOption[], given: Plain) {
  for (const { name: option, required } of definitions)
    if (required && given[option] === undefined) throw new Error(`/${name} needs ${option}`);
  return Object.entries(given).map(([option, value]) => {
    const definition = definitions.find((each) => each.name === option);
    if (!definition) throw new Error(`/${name} takes no ${option}`);
    const choices = "choices" in definition ? (definition.choices ?? []) : [];
    if (choices.length > 0 && !choices.some((each) => each.value === value))
      throw new Error(`/${name} ${option}: ${value} is not among the choices`);
    if (!isOfType(definition.type, value))
      throw new Error(`/${name} ${option}: ${value} is of the wrong type`);
    if ("min_value" in definition && Number(value) < Number(definition.min_value))
      throw new Error(`/${name} ${option}: ${value} is too small`);
    if ("max_value" in definition && Number(value) > Number(definition.max_value))
      throw new Error(`/${name} ${option}: ${value} is too large`);
    return { name: option, type: definition.type, value };
  });
}

export function draft(definitions: readonly APIApplicationCommandOption[], given: Plain, focused: string) {
  return Object.entries(given).map(([name, value]) => {
    const definition = definitions.find((each) => each.name === name);
    if (!definition) throw new Error(`no option ${name}`);
    const isFocused = name === focused;
    if (isFocused && !("autocomplete" in definition && definition.autocomplete))
      throw new Error(`${name} has no completion`);
    return { name, type: definition.type, value, ...(isFocused ? { focused: true } : {}) };
  });
}

function isOfType(type: OptionType, value: string | number | boolean): boolean {
  if (type === OptionType.Integer) return Number.isInteger(value);
  if (type === OptionType.Number) return typeof value === "number";
  if (type === OptionType.Boolean) return typeof value === "boolean";
  if ([OptionType.Channel, OptionType.Role, OptionType.User].includes(type))
    return typeof value === "string" && /^\d{15,20}$/.test(value);
  return typeof value === "string";
}
