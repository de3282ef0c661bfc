import { expect } from "vitest";
import { commands } from "../../commands/index.ts";
import type { Forms } from "../../commands/define.ts";

/** Every command of a group and every option of it has its text here, at most 100 characters, and nothing else has. */
export function expectForms(group: string, forms: Forms): void {
  const own = commands.filter(({ name }) => name.split(" ")[0] === group);
  expect(Object.keys(forms).sort()).toEqual(own.map(({ name }) => name).sort());
  for (const { name, options } of own) {
    const form = forms[name];
    expect(Object.keys(form?.options ?? {}).sort()).toEqual(Object.keys(options.shape).sort());
    for (const text of [form?.summary ?? "", ...Object.values(form?.options ?? {})])
      expect([text, text.length > 0 && text.length <= 100]).toEqual([text, true]);
  }
}
