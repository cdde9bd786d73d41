import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { type Finding } from "#domain/foundation/finding";
import { accept } from "#domain/foundation/outcome";
import { type GaugeAroundFill } from "#domain/mixing/fill-by-gauge";
import { isCleanSince } from "#domain/mixing/clean-out";
import { addUpInBooks, lotsInTank } from "#domain/mixing/tank-books";
import { enteredAfterReading } from "#domain/mixing/tank-reading";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { equipmentOnFile, type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { type CleanOutOnFile, latestCleanOuts } from "#application/fills/clean-outs-on-file";
import { type FillOfTank, fillsInBooks, type ProductInFill } from "#application/fills/fills-in-books";
import { listFillsSchema } from "#application/fills/list-fills.schema";
import { type MovedFromTank, movedByCleanOuts } from "#application/fills/moved-from-tank";
import { openStreetOf } from "#application/fills/open-streets";
import { type ReadingOnFile, readingsOnFile } from "#application/fills/readings-on-file";
import { fromStoredJson } from "#application/stored-json";
import { useCase, type Work } from "#application/use-case";

/** What a visit took from a fill. */
export interface DrawOfFill {
  readonly visitId: string;
  readonly visitName: string;
  readonly street: string;
  readonly registerEntryId: string;
  readonly recordNumber: number;
  readonly volume: Quantity<"volume">;
  readonly isMeasured: boolean;
  /** What that volume brought of each product: gallons times the fill's concentration. */
  readonly products: readonly ProductInFill[];
}

/** A filling of a tank with what was drawn from it since. */
export interface FillOnFile {
  readonly fillId: string;
  readonly number: number;
  readonly filledOn: CalendarDate;
  readonly filledAt: Date;
  readonly filledBy: string;
  readonly mixingPlace: string;
  readonly finished: Quantity<"volume">;
  /** What the tank held before and after by its gauge, and what the books had in it before; null for a fill from before both were asked for. */
  readonly gauge: GaugeOfFill | null;
  readonly products: readonly ProductInFill[];
  readonly draws: readonly DrawOfFill[];
  /** What was found of it, less what was drawn since; by the books alone where nobody measured. Never below nothing. */
  readonly left: Quantity<"volume">;
  /** What of each product that holds. */
  readonly leftOf: readonly ProductInFill[];
  /** The visits that it was made for. */
  readonly plannedVisitIds: readonly string[];
  /** What the tank was found to have of it the last time that it was measured or cleaned out; null: never. */
  readonly found: FillFound | null;
  /** What was said of it when it was recorded. */
  readonly whenRecorded: readonly Finding[];
  /** What does not add up and was not posted yet, with where to post it. */
  readonly findings: readonly Finding[];
}

interface GaugeOfFill extends GaugeAroundFill {
  readonly inTheBooks: Quantity<"volume">;
}

/** What was left of a fill when somebody looked, beside what the books had of it. */
interface FillFound {
  readonly at: Date;
  readonly left: Quantity<"volume">;
  readonly inTheBooks: Quantity<"volume">;
}

/** A sprayer's tank with its fills, the newest first. */
export interface TankOnFile {
  readonly equipmentId: string;
  readonly name: string;
  readonly vehicleId: string | null;
  readonly capacity: Quantity<"volume">;
  /** What pump and hose hold beyond the tank; null where nobody measured it. */
  readonly holdUp: Quantity<"volume"> | null;
  /** Over all fills; of a tank without a fill on the books what was found in it. */
  readonly left: Quantity<"volume">;
  readonly fills: readonly FillOnFile[];
  /** The streets of the visits that the fills with some left were made for and that nobody has recorded: what they took is in `left`. */
  readonly openStreets: readonly string[];
  /** The fill that went in last by the clock; null where none is on record. */
  readonly lastFillNumber: number | null;
  /** The latest on file. */
  readonly cleanOut: CleanOutOnFile | null;
  /** What left the books with it. */
  readonly movedByCleanOut: readonly MovedFromTank[];
  /** True from a clean-out to the next fill. */
  readonly isClean: boolean;
  /** What was found in it, the newest first. */
  readonly readings: readonly ReadingOnFile[];
}

/** So many fills of all tanks are looked back upon. */
const MOST_FILLS = 200;

/** What names the visits of draws: their names and streets. */
async function visitsOf(work: Work, fills: readonly FillOfTank[]): Promise<ReadonlyMap<string, { readonly visitName: string; readonly street: string }>> {
  const { companyId } = work.company;
  const visitIds = [...new Set(fills.flatMap(({ draws }) => draws.map(({ visitId }) => visitId)))];
  const visits = await work.tx.visit.findMany({ where: { companyId, visitId: { in: visitIds } } });
  const properties = await work.tx.property.findMany({ where: { companyId, propertyId: { in: visits.map(({ propertyId }) => propertyId) } } });
  const streetOf = new Map(properties.map(({ propertyId, street }) => [propertyId, street]));
  return new Map(visits.map(({ visitId, name, propertyId }) => [visitId, { visitName: name, street: streetOf.get(propertyId) ?? "" }]));
}

function gaugeOf({ gaugeBefore, gaugeAfter, inTheBooks }: FillOfTank["row"]): GaugeOfFill | null {
  if (gaugeBefore === null || gaugeAfter === null || inTheBooks === null) return null;
  return { before: fromAmount("volume", gaugeBefore), after: fromAmount("volume", gaugeAfter), inTheBooks: fromAmount("volume", inTheBooks) };
}

interface AroundTank {
  readonly cleanOut: CleanOutOnFile | undefined;
  readonly movedByCleanOut: readonly MovedFromTank[];
  readonly readings: readonly ReadingOnFile[];
  /** By visit. */
  readonly openStreets: ReadonlyMap<string, string>;
}

function tankOf(equipment: EquipmentOnFile, fills: readonly FillOnFile[], { cleanOut, movedByCleanOut, readings, openStreets }: AroundTank): readonly TankOnFile[] {
  const { equipmentId, name, vehicleId, capacity, holdUp } = equipment;
  if (capacity.dimension !== "volume") return [];
  const [last] = fills.toSorted((one, other) => other.filledAt.getTime() - one.filledAt.getTime() || other.number - one.number);
  const [reading] = readings;
  const isClean = isCleanSince(
    cleanOut && { cleanedAt: cleanOut.cleanedAt.getTime() },
    last && { number: last.number, filledAt: last.filledAt.getTime() },
  );
  const ofNoFill = last === undefined && !isClean ? (reading?.volume.amount ?? 0n) : 0n;
  const left = fromAmount("volume", fills.reduce((total, fill) => total + fill.left.amount, ofNoFill));
  const plannedFor = [...new Set(fills.filter((fill) => fill.left.amount > 0n).flatMap(({ plannedVisitIds }) => plannedVisitIds))];
  const open = plannedFor.flatMap((visitId) => openStreets.get(visitId) ?? []);
  return [{ equipmentId, name, vehicleId, capacity, holdUp, left, fills, openStreets: open, lastFillNumber: last?.number ?? null, cleanOut: cleanOut ?? null, movedByCleanOut, isClean, readings }];
}

/** The tanks of the sprayers with their last fills: what went in, who drew what, and what is left of each. */
export const listFills = useCase("fills/list-fills", listFillsSchema, async (work, { vehicleId }) => {
  const { companyId, timeZone } = work.company;
  const equipment = (await equipmentOnFile(work)).filter((one) => isSprayer(one.kind) && (vehicleId === undefined || one.vehicleId === vehicleId));
  const rows = await work.tx.fill.findMany({
    where: { companyId, equipmentId: { in: equipment.map(({ equipmentId }) => equipmentId) } },
    orderBy: { number: "desc" },
    take: MOST_FILLS,
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const inBooks = [...(await fillsInBooks(work, rows)).values()];
  const visitOf = await visitsOf(work, inBooks);
  const readings = await readingsOnFile(work, inBooks);
  const fills = inBooks.map((fill): FillOnFile & { readonly equipmentId: string } => {
    const { row, fillId, number, finished, products, rests } = fill;
    const rest = rests.at(-1);
    const { equipmentId, filledAt, mixingPlace, plannedVisitIds } = row;
    const byProduct = { ...fill, lots: products.map(({ productId, amount: { amount } }) => ({ lotId: productId, amount })) };
    const added = addUpInBooks(byProduct);
    const inTank = lotsInTank(byProduct);
    return {
      ...{ fillId, equipmentId, number, filledAt, mixingPlace, finished, products, plannedVisitIds },
      filledOn: calendarDateIn(timeZone, filledAt.getTime()),
      filledBy: nameOf.get(row.personId) ?? "",
      draws: fill.draws.map(({ visitId, registerEntryId, recordNumber, isMeasured, sprayed }, index) => ({
        ...{ visitId, registerEntryId, recordNumber, isMeasured },
        ...(visitOf.get(visitId) ?? { visitName: "", street: "" }),
        volume: sprayed,
        products: products.map((product, line) => ({ ...product, amount: { ...product.amount, amount: added.visits[index]?.lots[line]?.amount ?? 0n } })),
      })),
      left: added.left,
      leftOf: products.map((product, line) => ({ ...product, amount: { ...product.amount, amount: inTank[line]?.amount ?? 0n } })).filter(({ amount }) => amount.amount > 0n),
      gauge: gaugeOf(row),
      whenRecorded: fromStoredJson(row.findings) as readonly Finding[],
      found: rest === undefined ? null : { at: new Date(rest.settledAt), left: rest.left, inTheBooks: rest.inTheBooks },
      findings: [...added.findings, ...enteredAfterReading(fill, (readings.get(equipmentId) ?? []).map(({ readAt }) => readAt.getTime()))],
    };
  });
  const fillsOf = groupedBy(fills, ({ equipmentId }) => equipmentId);
  const cleanOuts = await latestCleanOuts(work);
  const moved = await movedByCleanOuts(work, [...cleanOuts.values()].map(({ cleanOutId }) => cleanOutId));
  const openStreets = await openStreetOf(work, fills.filter(({ left }) => left.amount > 0n).flatMap(({ plannedVisitIds }) => plannedVisitIds));
  const inUse = equipment.filter((one) => !one.isStoodDown || fillsOf.has(one.equipmentId));
  const tanks = inUse.flatMap((one) => {
    const cleanOut = cleanOuts.get(one.equipmentId);
    const movedByCleanOut = moved.get(cleanOut?.cleanOutId ?? "") ?? [];
    return tankOf(one, fillsOf.get(one.equipmentId) ?? [], { cleanOut, movedByCleanOut, readings: readings.get(one.equipmentId) ?? [], openStreets });
  });
  return accept({ tanks });
});
