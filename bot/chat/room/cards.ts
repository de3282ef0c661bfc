import { z } from "zod";
import { mayActAs, type Role } from "../../../store/shapes/person.ts";
import type { Command } from "../../../commands/define.ts";
import { WAY_WORDS } from "../../../commands/ask/way-words.ts";
import { aboutOf, summaryOf } from "../../../commands/forms.ts";
import { choiceWord } from "../../../commands/speech/choices.ts";
import type { CommandCard, OptionCard } from "./card.ts";

/* The option schemas as the page needs them: for completion, for errors while typing and for forms. */

const NAMES_FOR_BUTTONS_ONLY = new Set(["sure", "step", "as"]);

const propertySchema = z.object({
  type: z.string().optional(),
  enum: z.array(z.union([z.string(), z.number()])).optional(),
  const: z.union([z.string(), z.number(), z.boolean()]).optional(),
  minimum: z.number().optional(),
  maximum: z.number().optional(),
  maxLength: z.number().optional(),
  default: z.unknown().optional(),
});

const objectSchema = z.object({
  properties: z.record(z.string(), z.unknown()).default({}),
  required: z.array(z.string()).default([]),
});

/** The commands this role may call, each with its options in the order they were declared. */
export function makeCards(commands: readonly Command[], role: Role): CommandCard[] {
  return commands
    .filter(({ who }) => mayActAs(role, who))
    .map((command) => ({
      name: command.name,
      summary: summaryOf(command),
      alike: WAY_WORDS[command.name] ?? "",
      rest: command.rest ?? null,
      options: optionCards(command),
    }));
}

const schemas = new WeakMap<Command, z.output<typeof objectSchema>>();

/** The same for every role and in every language, and dear to make: once for a command. */
function schemaOf(command: Command): z.output<typeof objectSchema> {
  const made =
    schemas.get(command) ??
    objectSchema.parse(z.toJSONSchema(command.options, { io: "input", unrepresentable: "any" }));
  schemas.set(command, made);
  return made;
}

function optionCards(command: Command): OptionCard[] {
  const schema = schemaOf(command);
  return Object.entries(schema.properties)
    .filter(([name]) => !NAMES_FOR_BUTTONS_ONLY.has(name))
    .map(([name, raw]): OptionCard => {
      const property = propertySchema.parse(raw);
      const { minimum, maximum, maxLength } = property;
      return {
        name,
        about: aboutOf(command, name),
        isRequired: schema.required.includes(name),
        isFirst: schema.required.includes(name) || (command.first?.includes(name) ?? true),
        kind: kindOf(property),
        choices: (property.enum ?? []).map((each) => {
          const value = `${each}`;
          return { value, label: choiceWord(command.name, name, value) };
        }),
        least: isBound(minimum) ? minimum : null,
        most: isBound(maximum) ? maximum : null,
        longest: maxLength ?? null,
        preset: ["string", "number", "boolean"].includes(typeof property.default)
          ? String(property.default)
          : null,
        hasOffers: command.complete?.[name] !== undefined,
      };
    });
}

/** zod states the largest whole number where a schema names no bound. */
function isBound(value: number | undefined): value is number {
  return value !== undefined && Math.abs(value) < Number.MAX_SAFE_INTEGER;
}

function kindOf(property: z.output<typeof propertySchema>): OptionCard["kind"] {
  if (property.enum) return "choice";
  if (property.type === "integer") return "whole";
  if (property.type === "number") return "number";
  return "text";
}
