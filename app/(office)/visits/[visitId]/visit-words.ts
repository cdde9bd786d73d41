import { type CalendarDate, formatLongDate } from "#domain/foundation/calendar-date";
import { localTimeAt } from "#domain/weather/local-hours";
import { type VisitRow } from "#application/visits/visit-rows";
import { clockWords } from "#domain/foundation/clock-words";
import { type VisitState } from "#ui/visit-mark";

/** Where a visit stands, as its mark has it. */
export function standingOf({ state, stop, opensOn, closesOn }: VisitRow, today: CalendarDate): VisitState {
  if (state !== "planned") return state;
  if (stop !== null) return stop.isPinned ? "promised" : "on-a-day";
  if (today < opensOn) return "waiting";
  return today > closesOn ? "past-its-window" : "open";
}

/** "9:12 am" of an instant at the property. */
export function clockOf(instant: Date | number, timeZone: string): string {
  const { localTime } = localTimeAt(typeof instant === "number" ? instant : instant.getTime(), timeZone);
  const [hours = 0, minutes = 0] = localTime.split(":").map(Number);
  return clockWords(hours * 60 + minutes);
}

/** "Tuesday, April 14, 9:12 am" of an instant at the property. */
export function momentOf(instant: Date | number, timeZone: string): string {
  const at = typeof instant === "number" ? instant : instant.getTime();
  return `${formatLongDate(localTimeAt(at, timeZone).date)}, ${clockOf(at, timeZone)}`;
}

/** A name of a lawn with its letter: "A Front". */
export function lawnWords({ letter, name }: { readonly letter: string; readonly name: string }): string {
  return `${letter} ${name}`;
}
