// An expected failure is a value: too few sightings, a wrong row. Nobody has to catch anything.

/** Either a value or the reason why there is none. */
export type Result<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

/** Why an estimate is refused: a stable code and a sentence for a person (lower case, no full stop). */
export interface Refusal {
  readonly code: "too-few-sightings" | "sightings-tied" | "after-the-end" | "out-of-range" | "no-window";
  readonly message: string;
}

/** A value that is there. */
export function found<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

/** No value, and why. */
export function refused(
  code: Refusal["code"],
  message: string,
): { readonly ok: false; readonly problem: Refusal } {
  return { ok: false, problem: { code, message } };
}
