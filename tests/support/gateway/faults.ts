/** What can go wrong with one request. `after`: the work is done first, so the bot cannot know. */
export type Fault =
  | { readonly kind: "status"; readonly status: number; readonly code?: number; readonly after?: boolean }
  /** A rate limit the bot could not foresee. `page`: the answer of a proxy in front, not JSON. */
  | {
      readonly kind: "limit";
      readonly seconds: number;
      readonly scope: "user" | "global" | "shared";
      readonly page?: boolean;
    }
  /** No answer, ever; the connection stays open. */
  | { readonly kind: "hang"; readonly after?: boolean }
  /** The connection is cut instead of an answer. */
  | { readonly kind: "cut"; readonly after?: boolean }
  /** Something in between answers 200 in the platform's place; a text as a page. */
  | { readonly kind: "instead"; readonly body: unknown; readonly after?: boolean }
  /** The answer waits for `release`. */
  | { readonly kind: "hold"; readonly release: Promise<unknown> };

export interface FaultPlan {
  /** The next `times` requests that match go wrong like this. */
  add(method: string, path: RegExp, fault: Fault, times?: number): void;
  take(method: string, path: string): Fault | undefined;
  clear(): void;
}

export function createFaultPlan(): FaultPlan {
  const entries: { method: string; path: RegExp; fault: Fault; left: number }[] = [];
  return {
    add: (method, path, fault, times = 1) => void entries.push({ method, path, fault, left: times }),
    take(method, path) {
      const entry = entries.find((each) => each.left > 0 && each.method === method && each.path.test(path));
      if (entry) entry.left -= 1;
      return entry?.fault;
    },
    clear: () => void entries.splice(0),
  };
}
