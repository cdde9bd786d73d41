import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { bloomOfLawn, looksOfZones } from "#application/properties/lawn-looks";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";

/** A lawn of a visit with what is known of its flowers on the visit's day. */
export interface LawnSeen {
  readonly zoneId: string;
  readonly letter: string;
  readonly name: string;
  readonly inBloom: "yes" | "no" | "unknown";
  /** The last look that said yes or no, in words; null where nobody has looked. */
  readonly bloomSeen: string | null;
}

/** The lawns of a visit by letter, without those that were taken off the plan, as they were seen for its day. */
export async function lawnsSeen(work: Work, visit: VisitRow): Promise<{ readonly on: CalendarDate; readonly lawns: readonly LawnSeen[] }> {
  const { companyId, timeZone } = work.company;
  const today = calendarDateIn(timeZone, work.now.getTime());
  const on = visit.stop?.date ?? (today > visit.opensOn ? today : visit.opensOn);
  const zoneIds = [...new Set([...visit.treatments, ...visit.looks].flatMap((task) => task.zoneIds))];
  const zones = await work.tx.zone.findMany({ where: { companyId, zoneId: { in: zoneIds }, removedAt: null }, select: { zoneId: true, letter: true, name: true }, orderBy: { letter: "asc" } });
  const looksOf = await looksOfZones(work, zones.map(({ zoneId }) => zoneId));
  return { on, lawns: zones.map((zone) => ({ ...zone, ...bloomOfLawn(looksOf.get(zone.zoneId) ?? [], on) })) };
}
