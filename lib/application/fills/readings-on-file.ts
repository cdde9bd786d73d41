import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { sprayedBetween } from "#domain/mixing/tank-day";
import { fromAmount, type Quantity, sum } from "#domain/quantities/quantity";
import { type FillOfTank } from "#application/fills/fills-in-books";
import { type MovedFromTank, movedFromTanks } from "#application/fills/moved-from-tank";
import { type MissingFromTankWent } from "#application/fills/record-tank-reading.schema";
import { type Work } from "#application/use-case";

/** What somebody found in a tank, as it was written down, beside what the books had. */
export interface ReadingOnFile {
  readonly tankReadingId: string;
  readonly readOn: CalendarDate;
  readonly readAt: Date;
  readonly readBy: string;
  readonly how: string;
  readonly volume: Quantity<"volume">;
  readonly inTheBooks: Quantity<"volume">;
  /** Where what was missing went, as it was said; null where nothing was. */
  readonly missingWent: MissingFromTankWent | null;
  readonly note: string | null;
  /** What the ledger moved for it, lot by lot. */
  readonly moved: readonly MovedFromTank[];
  /** What left the tank since the reading before it, by the two readings and by the records; null without one, and after a clean-out. */
  readonly sinceLast: { readonly byReading: Quantity<"volume"> | "more than before"; readonly byRecords: Quantity<"volume"> } | null;
}

/** So many readings of all tanks are looked back upon. */
const MOST_READINGS = 100;

type ReadingRow = Awaited<ReturnType<Work["tx"]["tankReading"]["findMany"]>>[number];

/** The last readings of each tank, the newest first, by equipment. */
export async function readingsOnFile(work: Work, fills: readonly FillOfTank[]): Promise<ReadonlyMap<string, readonly ReadingOnFile[]>> {
  const { companyId, timeZone } = work.company;
  const rows = await work.tx.tankReading.findMany({ where: { companyId }, orderBy: { readAt: "desc" }, take: MOST_READINGS });
  if (rows.length === 0) return new Map();
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ readById }) => readById) } } });
  const cleanOuts = await work.tx.cleanOut.findMany({ where: { companyId, equipmentId: { in: rows.map(({ equipmentId }) => equipmentId) } }, select: { equipmentId: true, cleanedAt: true } });
  const moved = await movedFromTanks(work, rows.flatMap(({ stockPostingId }) => stockPostingId ?? []));
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  return new Map(
    [...groupedBy(rows, ({ equipmentId }) => equipmentId)].map(([equipmentId, own]): readonly [string, readonly ReadingOnFile[]] => {
      const cleanedAt = cleanOuts.filter((one) => one.equipmentId === equipmentId).map((one) => one.cleanedAt);
      const inTank = fills.filter(({ row }) => row.equipmentId === equipmentId);
      return [
        equipmentId,
        own.map((row, index) => ({
          ...{ tankReadingId: row.tankReadingId, readAt: row.readAt, how: row.how, note: row.note },
          readOn: calendarDateIn(timeZone, row.readAt.getTime()),
          readBy: nameOf.get(row.readById) ?? "",
          volume: fromAmount("volume", row.volume),
          inTheBooks: fromAmount("volume", row.inTheBooks),
          missingWent: row.missingWent as MissingFromTankWent | null,
          moved: moved.get(row.stockPostingId ?? "") ?? [],
          sinceLast: sinceLast(own[index + 1], row, inTank, cleanedAt),
        })),
      ];
    }),
  );
}

/** A fill in the minute of a reading came after it, as did a clean-out. */
function sinceLast(before: ReadingRow | undefined, after: ReadingRow, fills: readonly FillOfTank[], cleanedAt: readonly Date[]): ReadingOnFile["sinceLast"] {
  if (before === undefined || cleanedAt.some((at) => at >= before.readAt && at < after.readAt)) return null;
  const [from, until] = [before.readAt.getTime(), after.readAt.getTime()];
  const filledBetween = sum("volume", fills.filter(({ filledAt }) => filledAt >= from && filledAt < until).map(({ finished }) => finished));
  const byRecords = sum("volume", fills.flatMap(({ draws }) => draws).filter(({ endedAt }) => endedAt > from && endedAt <= until).map((draw) => draw.sprayed));
  const sprayed = sprayedBetween({ by: "dip", before: fromAmount("volume", before.volume), after: fromAmount("volume", after.volume), filledBetween });
  return { byReading: sprayed.ok ? sprayed.value : "more than before", byRecords };
}
