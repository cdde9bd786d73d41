/**
 * The answer of a function that may say no. A refusal is an expected answer that the caller must handle;
 * a broken invariant is not a refusal and throws (see invariant.ts).
 */
export type Outcome<Value, Refusal = InputRefusal> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusal: Refusal };

/**
 * Why an input was not accepted: which field, what was found there, what would have been accepted, and the
 * same as one sentence for the person who typed it.
 */
export interface InputRefusal {
  readonly kind: "bad-input" | "missing-fact";
  readonly field: string;
  readonly found: string;
  readonly allowed: string;
  readonly sentence: string;
}

/** Wraps a value as the answer yes. */
export function accept<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

/** Wraps a refusal as the answer no. */
export function refuse<Refusal>(refusal: Refusal): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal };
}

/** Refuses an input that lies outside what is allowed. `found` is shown as typed or as read. */
export function badInput(
  field: string,
  found: string,
  allowed: string,
  sentence: string,
): { readonly ok: false; readonly refusal: InputRefusal } {
  return refuse({ kind: "bad-input", field, found, allowed, sentence });
}

/** Refuses because a fact that the computation needs is not on file. Never replaced by a default. */
export function missingFact(
  field: string,
  allowed: string,
  sentence: string,
): { readonly ok: false; readonly refusal: InputRefusal } {
  return refuse({ kind: "missing-fact", field, found: "nothing", allowed, sentence });
}
