import { type GivenAnswer } from "#domain/foundation/answered-hold";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding, note } from "#domain/foundation/finding";
import { ended } from "#domain/foundation/full-stop";

/** An answer to a hold of law that covers no hold of its visit any more. */
export type FormerAnswer = Omit<GivenAnswer, "rule">;

/** Says what a license holder answered before the plan changed: which hold, for which day, who, when and why. */
export function answeredBefore({ answered, reason, by, license, answeredAt }: FormerAnswer, timeZone: string): Finding {
  const given = `${by}, license ${license}, on ${formatShortDate(calendarDateIn(timeZone, Date.parse(answeredAt)))}: ${ended(reason)}`;
  const words = { rule: "answered-before-the-plan-changed", source: "law" } as const;
  if (answered === null || answered === undefined) {
    return note({ ...words, what: "A hold was answered, and it was not kept which.", figure: given, toDo: "A hold that stands now is answered by itself.", about: [] });
  }
  const { what, figure, citation, about, on } = answered;
  return note({
    ...words,
    what: `A hold was answered for ${formatShortDate(on)}, before the plan changed.`,
    figure: `It said: ${[what, ...(figure === null ? [] : [figure])].join(" ")} ${given}`,
    ...(citation === null ? {} : { citation }),
    about,
  });
}
