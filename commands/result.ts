/** An expected outcome as a value: pure files return it, handlers turn the failure into a sentence. */
export type Result<T, F> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: F };

export function ok<T>(value: T): Result<T, never> {
  return { ok: true, value };
}

export function fail<F>(fault: F): Result<never, F> {
  return { ok: false, fault };
}
