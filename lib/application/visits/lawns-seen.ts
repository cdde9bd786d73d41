import { type CalendarDate } from "#domain/foundation/calendar-date";
import { firstDayOpen } from "#domain/scheduling/visit-standing";
import { bloomOfLawn, lastWatering } from "#application/properties/lawn-looks";
import { type WorkedVisit } from "#application/visits/visit-ticket";

/** A lawn of a visit with what is known of its flowers on the visit's day. */
export interface LawnSeen {
  readonly zoneId: string;
  readonly letter: string;
  readonly name: string;
  readonly inBloom: "yes" | "no" | "unknown";
  /** The last look that said yes or no, in words; null where nobody has looked. */
  readonly bloomSeen: string | null;
  /** The last water that it was told of, in words; null where nobody told of any. */
  readonly watered: string | null;
}

/** The lawns of a visit by letter, without those that were taken off the plan, as they were seen for its day. */
export function lawnsSeen({ visit, lawns }: Pick<WorkedVisit, "visit" | "lawns">, today: CalendarDate): { readonly on: CalendarDate; readonly lawns: readonly LawnSeen[] } {
  const on = visit.stop?.date ?? firstDayOpen(visit, today);
  const asked = new Set([...visit.treatments, ...visit.looks].flatMap(({ zoneIds }) => zoneIds));
  const own = lawns.filter(({ lawn }) => asked.has(lawn.zoneId));
  return { on, lawns: own.map(({ lawn: { zoneId, letter, name }, looks }) => ({ zoneId, letter, name, ...bloomOfLawn(looks, on), watered: lastWatering(looks)?.words ?? null })) };
}
