// What a worksheet answered, for tests: the worked sheet, or the refusals by field.
import { type WorkedWorksheet, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The worked sheet. Throws with what was refused. */
export function worked<Worked extends WorkedWorksheet>(outcome: WorksheetOutcome<Worked>): Worked {
  if (!outcome.ok) throw new Error(outcome.refusal.map(({ field, sentence }) => `${field}: ${sentence}`).join("\n"));
  return outcome.value;
}

/** The answers as they are read: "21.43 lb". */
export function answersOf(outcome: WorksheetOutcome): readonly string[] {
  return worked(outcome).answers.map(({ figure, unit }) => `${figure} ${unit}`.trim());
}

/** The steps as they are read. */
export function stepsOf(outcome: WorksheetOutcome): readonly string[] {
  return worked(outcome).working.steps;
}

/** The fields that were refused, in their order; none where nothing was. */
export function refusedFields(outcome: WorksheetOutcome): readonly string[] {
  return outcome.ok ? [] : outcome.refusal.map(({ field }) => field);
}

/** The sentence of the first refusal; empty where nothing was refused. */
export function firstSentence(outcome: WorksheetOutcome): string {
  return outcome.ok ? "" : outcome.refusal[0].sentence;
}
