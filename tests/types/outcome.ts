// What must not compile around an outcome: an answer that may be no is looked at before it is used.
import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { unreachable } from "#domain/foundation/invariant";

declare const answer: Outcome<bigint>;

// @ts-expect-error the answer may be no, and then there is no value
export const unchecked: bigint = answer.value;

// @ts-expect-error the answer may be yes, and then there is no refusal
export const unasked = answer.refusal.sentence;

export function checked(): bigint | string {
  return answer.ok ? answer.value : answer.refusal.sentence;
}

export function swapped(): void {
  // @ts-expect-error a yes has no refusal
  if (answer.ok) unchecking(answer.refusal);
  // @ts-expect-error an answer is never changed
  answer.ok = true;
}

declare function unchecking(value: unknown): void;

// @ts-expect-error a text is not a bigint
export const wrongValue: Outcome<bigint> = accept("12");

// @ts-expect-error a refusal says in a sentence why
export const speechless = badInput("area", "0", "more than 0");

// @ts-expect-error only the last case may have no case left
export const forgotten = (kind: "hold" | "note"): string => (kind === "hold" ? "hold" : unreachable(kind));
