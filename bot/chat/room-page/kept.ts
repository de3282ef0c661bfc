/* What one browser keeps for itself. A browser that keeps nothing (private window) still works. */

export function readKept<T>(key: string, otherwise: T): T {
  try {
    const text = localStorage.getItem(`sinkside.${key}`);
    return text === null ? otherwise : (JSON.parse(text) as T);
  } catch {
    return otherwise;
  }
}

export function rememberHere(key: string, value: unknown): void {
  try {
    localStorage.setItem(`sinkside.${key}`, JSON.stringify(value));
  } catch {
    // Nothing to do: it holds until the page is closed.
  }
}

/** What tells of the person who was here; how the page looks and sounds stays. */
export function forgetPerson(): void {
  try {
    for (const key of ["name", "recent"]) localStorage.removeItem(`sinkside.${key}`);
    forgetAnswered();
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}

/** Where the marks of answered calls are kept. Under another name than once, when they went by the clock. */
export const answeredBy = (as: string | null): string =>
  as === null ? "answered since" : `answered since ${as}`;

/** Of whoever was here; a device that is everybody's keeps it for each. */
export function forgetAnswered(): void {
  try {
    for (const key of Object.keys(localStorage))
      if (key.startsWith("sinkside.answered")) localStorage.removeItem(key);
  } catch {
    // Nothing is kept here.
  }
}
