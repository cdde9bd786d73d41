import { type Outcome } from "#domain/foundation/outcome";

/** The answer, or the end of the making: a demonstration that a rule refuses is a defect. */
export function must<Answer>(outcome: Outcome<Answer, { readonly sentence: string }>): Answer {
  if (!outcome.ok) throw new Error(`The demonstration was refused: ${JSON.stringify(outcome.refusal)}`);
  return outcome.value;
}
