import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";

/**
 * What a license holder answered: the words of the hold as they stood, and the day that the visit was worked out for. An
 * answer covers this and nothing else: another product, lawn, figure or day is another hold, which nobody has answered.
 */
export interface AnsweredHold {
  readonly rule: string;
  readonly what: string;
  readonly figure: string | null;
  readonly citation: string | null;
  readonly about: readonly string[];
  readonly on: CalendarDate;
}

/** What an answer to a hold is given to, as it is kept with the answer. What to do about it is no part of it. */
export function answeredHold({ rule, what, figure, citation, about }: Finding, on: CalendarDate): AnsweredHold {
  return { rule, what, figure: figure ?? null, citation: citation ?? null, about, on };
}

/** An answered hold as one text, always the same for the same hold: JSON that a person can read. */
export function textOfAnsweredHold({ rule, what, figure, citation, about, on }: AnsweredHold): string {
  return JSON.stringify({ rule, what, figure, citation, about, on } satisfies AnsweredHold);
}

/** The answered hold of such a text; null for an empty one, of an answer from before it was kept what was answered. */
export function readAnsweredHold(text: string): AnsweredHold | null {
  return text === "" ? null : (JSON.parse(text) as AnsweredHold);
}

/** An answer that says what it was given to; null or missing where that was not kept. */
export interface KeptAnswer {
  readonly rule: string;
  readonly answered?: AnsweredHold | null | undefined;
}

/** An answer to a hold of law as it is kept: the hold that it was given to, who gave it, under which license, and why. */
export interface GivenAnswer {
  readonly rule: string;
  /** The hold as it was answered; null or missing in what was written before that was kept. */
  readonly answered?: AnsweredHold | null;
  readonly reason: string;
  readonly by: string;
  readonly license: string;
  /** An instant as ISO 8601 in universal time. */
  readonly answeredAt: string;
}

/**
 * The last answer that covers a finding on a day. Only a hold that a license holder may answer has one. An answer of which
 * nobody knows what it was given to covers nothing.
 * @param on the day that the visit is worked out for; null where none could be, and then nothing is covered
 */
export function answerCovering<Answer extends KeptAnswer>(finding: Finding, on: CalendarDate | null, answers: readonly Answer[]): Answer | undefined {
  if (on === null || !mayBeAnswered(finding)) return undefined;
  const asked = textOfAnsweredHold(answeredHold(finding, on));
  return answers.findLast(({ answered }) => answered !== null && answered !== undefined && textOfAnsweredHold(answered) === asked);
}

/** The answers that cover none of the findings on the day: given before the plan changed, and kept all the same. */
export function formerAnswers<Answer extends KeptAnswer>(findings: readonly Finding[], on: CalendarDate | null, answers: readonly Answer[]): readonly Answer[] {
  const covering = new Set(findings.map((finding) => answerCovering(finding, on, answers)));
  return answers.filter((answer) => !covering.has(answer));
}

/**
 * The answer to a finding in a mix ticket or record as it was written. It holds only answers that covered its own holds on
 * its own day, so that their words find them. One that was written before it was kept what was answered says what it said
 * then: the answer stands beside the hold of its rule.
 */
export function answerInDocument<Answer extends KeptAnswer>(finding: Finding, answers: readonly Answer[]): Answer | undefined {
  if (!mayBeAnswered(finding)) return undefined;
  return answers.findLast(({ rule, answered }) =>
    answered === null || answered === undefined ? rule === finding.rule : textOfAnsweredHold(answered) === textOfAnsweredHold(answeredHold(finding, answered.on)),
  );
}

function mayBeAnswered(finding: Finding): boolean {
  return finding.level === "hold" && finding.answerableBy === "license-holder";
}
