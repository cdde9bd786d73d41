import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type LawnSeeding, type SeedingKind, type SeedingStanding, type SowingMethod } from "#domain/properties/lawn-seeding";
import { todayOf } from "#application/programs/visits-of-rounds";
import { badField, type UseCaseRefusal } from "#application/refusal";
import { calendarDayOf, dayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";

/** What a form says of seed or sod on a lawn. */
export interface SeedingForm {
  readonly date: CalendarDate;
  readonly kind: SeedingKind;
  readonly method: SowingMethod;
  readonly standing: SeedingStanding;
}

/** Seed or sod of a lawn as it stands on file. */
export interface SeedingOnFile {
  readonly seedingId: string;
  readonly version: number;
  readonly seeding: LawnSeeding;
  /** It was planned for a day that has passed, and nobody has said whether it was done. */
  readonly isOverdue: boolean;
}

/** The columns of seed or sod; sod has no method. */
export function seedingColumns({ date, kind, method, standing }: SeedingForm) {
  return { date: dayOf(date), kind, method: kind === "sod" ? null : method, standing };
}

/** A stored row as the domain knows it. */
export function seedingOf(row: { readonly date: Date; readonly kind: string; readonly method: string | null; readonly standing: string }): LawnSeeding {
  const when = { date: calendarDayOf(row.date), standing: row.standing as SeedingStanding };
  if (row.kind === "sod") return { kind: "sod", ...when };
  return { kind: row.kind as "new-lawn" | "overseeding", method: row.method as SowingMethod, ...when };
}

/**
 * Lets a form through whose standing fits its day, and which says nothing that is on file of its lawn already. What is
 * done can't lie ahead, and what is planned can't lie behind: it is done or given up. Its own row does not count.
 */
export async function acceptSeeding(work: Work, zoneId: string, form: SeedingForm, ownId?: string): Promise<Outcome<null, UseCaseRefusal>> {
  const { date, kind, standing } = form;
  if (standing === "done" && date > todayOf(work)) return badField("date", "This day has not come yet: say that it is planned.");
  if (standing === "planned" && date < todayOf(work)) return badField("date", "This day has passed: say that it is done, or give a day ahead.");
  const { companyId } = work.company;
  const rows = await work.tx.seeding.findMany({ where: { companyId, zoneId, date: dayOf(date), kind, removedAt: null }, select: { seedingId: true } });
  if (rows.some(({ seedingId }) => seedingId !== ownId)) return badField("date", `This is on file already for ${formatShortDate(date)}.`);
  return accept(null);
}

/** Seed and sod of some lawns by lawn, the latest first, without what was taken off; one query for any number of lawns. */
export async function seedingsOfZones(work: Work, zoneIds: readonly string[]): Promise<ReadonlyMap<string, readonly SeedingOnFile[]>> {
  const { companyId } = work.company;
  const rows = await work.tx.seeding.findMany({
    where: { companyId, zoneId: { in: [...zoneIds] }, removedAt: null },
    orderBy: [{ date: "desc" }, { createdAt: "desc" }, { seedingId: "asc" }],
  });
  const day = todayOf(work);
  const byZone = groupedBy(rows, ({ zoneId }) => zoneId);
  return new Map(
    [...byZone].map(([zoneId, own]) => [
      zoneId,
      own.map((row) => {
        const seeding = seedingOf(row);
        return { seedingId: row.seedingId, version: row.version, seeding, isOverdue: seeding.standing === "planned" && seeding.date < day };
      }),
    ]),
  );
}
