import { type LawnLook as LawnLookRow } from "#adapters/postgres/generated/client";
import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { bloomOnDay, type BloomOnDay, type BloomSeen, type LawnLook, lookWords } from "#domain/properties/lawn-look";
import { type LawnWatering, type WateredBy, type WaterToldBy, wateringWords } from "#domain/properties/lawn-watering";
import { fromAmount } from "#domain/quantities/quantity";
import { minuteOfDayAt } from "#domain/weather/local-hours";
import { type Work } from "#application/use-case";

/** A look at a lawn as it was written down. */
export interface LookOnFile extends LawnLook {
  readonly lawnLookId: string;
  readonly zoneId: string;
  readonly seenBy: string;
  readonly said: string | null;
  /** That it was watered in, where that was said. */
  readonly watering: (LawnWatering & { readonly words: string }) | null;
  /** "Seen in bloom on Apr 14, 2026, 9:12 am, by Rowan Ash: clover along the walk." */
  readonly words: string;
}

/** What was seen on some lawns, by lawn, the latest look first; two queries for any number of lawns. */
export async function looksOfZones(work: Work, zoneIds: readonly string[]): Promise<ReadonlyMap<string, readonly LookOnFile[]>> {
  const { companyId, timeZone } = work.company;
  const rows = await work.tx.lawnLook.findMany({
    where: { companyId, zoneId: { in: [...zoneIds] } },
    orderBy: [{ seenAt: "desc" }, { enteredAt: "desc" }, { lawnLookId: "asc" }],
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ seenById }) => seenById) } }, select: { personId: true, name: true } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const looks = rows.map((row): LookOnFile => {
    const { lawnLookId, zoneId, said } = row;
    const seenAtEpochMilliseconds = row.seenAt.getTime();
    const seenBy = nameOf.get(row.seenById) ?? "";
    const blooms = row.blooms as BloomSeen;
    const seenOn = calendarDateIn(timeZone, seenAtEpochMilliseconds);
    return {
      ...{ lawnLookId, zoneId, seenOn, seenAtEpochMilliseconds, seenBy, blooms, said },
      enteredAtEpochMilliseconds: row.enteredAt.getTime(),
      watering: wateringOf(row, timeZone),
      words: lookWords({ seenOn, minuteOfDay: minuteOfDayAt(seenAtEpochMilliseconds, timeZone), seenBy, blooms, said }),
    };
  });
  return groupedBy(looks, ({ zoneId }) => zoneId);
}

function wateringOf({ wateredAt, wateredBy, waterToldBy, waterDepth }: LawnLookRow, timeZone: string): LookOnFile["watering"] {
  if (wateredAt === null) return null;
  const wateredAtEpochMilliseconds = wateredAt.getTime();
  const said = {
    wateredBy: wateredBy as WateredBy,
    toldBy: waterToldBy as WaterToldBy,
    depth: waterDepth === null ? ("not-stated" as const) : fromAmount("length", waterDepth),
  };
  const words = wateringWords({ ...said, wateredOn: calendarDateIn(timeZone, wateredAtEpochMilliseconds), minuteOfDay: minuteOfDayAt(wateredAtEpochMilliseconds, timeZone) });
  return { wateredAtEpochMilliseconds, ...said, words };
}

/** What a mix ticket asks of a lawn's flowers on a day, from the looks at it. */
export function bloomOfLawn(looks: readonly LookOnFile[], day: CalendarDate): { readonly inBloom: BloomOnDay<LookOnFile>["inBloom"]; readonly bloomSeen: string | null } {
  const { inBloom, look } = bloomOnDay(looks, day);
  return { inBloom, bloomSeen: look?.words ?? null };
}

/** The last water that a lawn was told of, by when it was done. */
export function lastWatering(looks: readonly LookOnFile[]): LookOnFile["watering"] {
  const waterings = looks.flatMap(({ watering }) => watering ?? []);
  return waterings.toSorted((one, other) => other.wateredAtEpochMilliseconds - one.wateredAtEpochMilliseconds)[0] ?? null;
}
