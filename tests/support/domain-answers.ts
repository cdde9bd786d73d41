// What a test asks of an answer that may be no: its value, or its refusal, whichever the test is about.
import { type CalendarDate, parseCalendarDate } from "#domain/foundation/calendar-date";
import { type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { type ReadAnswer } from "#domain/label/label-answer";

/** The value of an answer that must be yes. */
export function valueOf<Value>(answer: Outcome<Value>): Value {
  if (!answer.ok) throw new Error(`Refused: ${answer.refusal.sentence}`);
  return answer.value;
}

/** The refusal of an answer that must be no. */
export function refusalOf(answer: Outcome<unknown>): InputRefusal {
  if (answer.ok) throw new Error(`Accepted: ${JSON.stringify(answer.value)}`);
  return answer.refusal;
}

/** What was read of a label, which must be readable; its readers refuse in a sentence. */
export function readAs<Value>(answer: ReadAnswer<Value>): Value {
  if (!answer.ok) throw new Error(answer.refusal);
  return answer.value;
}

/** A day of the calendar, written as ISO 8601 writes it. */
export function day(text: string): CalendarDate {
  return valueOf(parseCalendarDate("date", text));
}
