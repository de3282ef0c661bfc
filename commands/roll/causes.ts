import { CAUSES, type Cause } from "./cause-table.ts";

export function findCause(code: string): Cause | undefined {
  return CAUSES.find((cause) => cause.code === code);
}

export function causeTitle(code: string): string | undefined {
  return findCause(code)?.title;
}
