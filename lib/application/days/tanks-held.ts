import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { isCleanSince } from "#domain/mixing/clean-out";
import { leftBy } from "#domain/mixing/tank-books";
import { type LastHeld } from "#domain/mixing/tank-plan-question";
import { fromAmount } from "#domain/quantities/quantity";
import { filledBeforeOf, filledMixOf, fillsBelow } from "#application/fills/filled-onto";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { labelsOfProducts, type LabelsRead } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

interface FillRead {
  readonly fill_id: string;
  readonly is_last: boolean;
  /** Filled for visits of the day. */
  readonly is_of_day: boolean;
  /** The tank's latest reading found a rest of it. */
  readonly is_rest: boolean;
}

interface OpenVisit {
  readonly visit_id: string;
  /** The day whose route it is on; null where it is on none. */
  readonly date: string | null;
}

/** A day as far as its tanks ask. */
export interface DayOfTanks {
  readonly date: CalendarDate;
  /** In the order of the routes. */
  readonly visitIds: readonly string[];
}

/**
 * What each sprayer's tank held last by the books: the latest fill on record, what went in, and what is left of it with the
 * rests of the same mix that were measured below it, and all that was in the tank before since its last clean-out. Where the tank's stock has been posted away nothing is left. A sprayer
 * that was cleaned out since its latest fill is clean. One without a fill and without a clean-out on record is not among
 * them: nobody knows what it held. While visits that a fill was made for are neither recorded nor among those of the day,
 * what is left of it is not known, unless the tank was measured on their day or later: then it is what was found.
 * A fill that was drawn from is under way until all of its visits are done. Where the tank was filled on that very day
 * for one of its open visits and then with another mix for a later one, it begins with the first of these fills: records are
 * often written at the day's end. The number of queries does not hang on that of fills.
 * @param known labels that were read already, which are not read again
 */
export async function tanksHeld(work: Work, day: DayOfTanks, known: LabelsRead = new Map()): Promise<ReadonlyMap<string, LastHeld>> {
  const { companyId } = work.company;
  const read = await fillsRead(work, day.visitIds);
  const readOf = new Map(read.map((one) => [one.fill_id, one]));
  const below = await fillsBelow(work, read.filter((one) => one.is_last || one.is_of_day).map((one) => one.fill_id));
  const fillIds = [...new Set([...read.map((one) => one.fill_id), ...[...below.values()].flatMap((one) => one.fillIds)])];
  const rows = await work.tx.fill.findMany({ where: { companyId, fillId: { in: fillIds } } });
  const fillOf = await fillsInBooks(work, rows);
  const ofTanks = [...fillOf.values()].filter(({ fillId }) => readOf.get(fillId)?.is_last === true || readOf.get(fillId)?.is_of_day === true);
  const filled = new Set([...fillOf.values()].flatMap(({ products }) => products.map(({ productId }) => productId)));
  const labels = new Map([...known, ...(await labelsOfProducts(work.tx, companyId, [...filled].filter((productId) => !known.has(productId))))]);
  const open = await openVisits(work, ofTanks.flatMap(({ row }) => row.plannedVisitIds));
  const cleanOuts = await work.tx.cleanOut.groupBy({ by: ["equipmentId"], where: { companyId }, _max: { cleanedAt: true } });
  const latestOf = new Map(ofTanks.filter(({ fillId }) => readOf.get(fillId)?.is_last === true).map((fill) => [fill.row.equipmentId, fill]));
  const clean = cleanOuts.filter(({ equipmentId, _max: { cleanedAt } }) => cleanedAt !== null && isCleanSince({ cleanedAt: cleanedAt.getTime() }, latestOf.get(equipmentId)));
  const openIds = new Set(open.map(({ visit_id: visitId }) => visitId));
  const held = [...groupedBy(ofTanks, ({ row }) => row.equipmentId)].flatMap(([equipmentId, own]): readonly (readonly [string, LastHeld])[] => {
    const latest = latestOf.get(equipmentId);
    if (latest === undefined) return [];
    const needed = firstNeeded(work, day, own, openIds);
    const fill = needed.first === undefined || !needed.all.includes(latest) || isSameMix(needed.first, latest) ? latest : needed.first;
    const rests = [...fillOf.values()].filter(({ fillId, row }) => fillId !== fill.fillId && row.equipmentId === equipmentId && readOf.get(fillId)?.is_rest === true);
    const alike = [fill, ...rests.filter((one) => isSameMix(one, fill))];
    const left = alike.reduce((total, one) => total + leftBy(one, Infinity).amount, 0n);
    return [
      [
        equipmentId,
        {
          ...filledMixOf(fill, labels),
          left: isOpen(work, fill, open, new Set(day.visitIds)) ? "unknown" : fromAmount("volume", left),
          isUnderWay: fill.draws.length > 0 && fill.row.plannedVisitIds.some((visitId) => openIds.has(visitId)),
          isOfThatDay: isOfThatDay(work, day, fill, openIds),
          filledOnto: filledBeforeOf(below.get(fill.fillId), fillOf, labels),
        },
      ],
    ];
  });
  return new Map<string, LastHeld>([...held, ...clean.map(({ equipmentId }): readonly [string, LastHeld] => [equipmentId, "clean"])]);
}

/** The latest fill of each tank, those for visits of the day, and those of which the tank's latest reading found a rest below the latest. */
async function fillsRead(work: Work, visitIdsOfDay: readonly string[]): Promise<readonly FillRead[]> {
  const { companyId } = work.company;
  return work.tx.$queryRaw<FillRead[]>`
    WITH own AS (
        SELECT f.fill_id, f.company_id, f.equipment_id, f.filled_at, f.planned_visit_ids && ${[...visitIdsOfDay]}::uuid[] AS is_of_day,
          lead(f.fill_id) OVER in_order IS NULL AS is_last
        FROM fill f WHERE f.company_id = ${companyId}::uuid
        WINDOW in_order AS (PARTITION BY f.equipment_id ORDER BY f.filled_at, f.number)),
      reading AS (SELECT DISTINCT ON (equipment_id) tank_reading_id FROM tank_reading WHERE company_id = ${companyId}::uuid ORDER BY equipment_id, read_at DESC),
      rest AS (SELECT r.fill_id FROM fill_rest r JOIN reading USING (tank_reading_id) WHERE r.company_id = ${companyId}::uuid AND r.remaining > 0)
    SELECT o.fill_id, o.is_last, o.is_of_day, o.fill_id IN (SELECT fill_id FROM rest) AND NOT o.is_last AS is_rest
    FROM own o WHERE o.is_last OR o.is_of_day OR o.fill_id IN (SELECT fill_id FROM rest)
    ORDER BY o.equipment_id, o.filled_at, o.fill_id`;
}

/** The fills that were made on the day itself for open visits of it, that of the first of these visits first; of several for one visit the last. */
function firstNeeded({ company }: Work, { date, visitIds }: DayOfTanks, fills: readonly FillOfTank[], openIds: ReadonlySet<string>): { readonly first: FillOfTank | undefined; readonly all: readonly FillOfTank[] } {
  const placeOf = new Map(visitIds.map((visitId, place) => [visitId, place]));
  const all = fills
    .filter(({ filledAt }) => calendarDateIn(company.timeZone, filledAt) === date)
    .map((fill) => ({ fill, place: Math.min(...fill.row.plannedVisitIds.flatMap((visitId) => (openIds.has(visitId) ? (placeOf.get(visitId) ?? []) : []))) }))
    .filter(({ place }) => place !== Infinity)
    .toSorted((one, other) => one.place - other.place || other.fill.filledAt - one.fill.filledAt || other.fill.number - one.fill.number)
    .map(({ fill }) => fill);
  return { first: all[0], all };
}

/** Filled on that day for visits of it, or before it and drawn from on it. */
function isOfThatDay({ company }: Work, { date, visitIds }: DayOfTanks, { filledAt, row }: FillOfTank, openIds: ReadonlySet<string>): boolean {
  const ofDay = new Set(visitIds);
  const own = row.plannedVisitIds.filter((visitId) => ofDay.has(visitId));
  return own.length > 0 && (calendarDateIn(company.timeZone, filledAt) === date || own.some((visitId) => !openIds.has(visitId)));
}

/** The visits that nobody has recorded, with their day. */
async function openVisits(work: Work, visitIds: readonly string[]): Promise<readonly OpenVisit[]> {
  const { companyId } = work.company;
  if (visitIds.length === 0) return [];
  return work.tx.$queryRaw<OpenVisit[]>`
    SELECT v.visit_id, to_char(d.date, 'YYYY-MM-DD') AS date
    FROM visit v
    LEFT JOIN stop s ON s.company_id = v.company_id AND s.visit_id = v.visit_id
    LEFT JOIN route_day d ON d.company_id = s.company_id AND d.route_day_id = s.route_day_id
    WHERE v.company_id = ${companyId}::uuid AND v.visit_id = ANY(${[...visitIds]}::uuid[]) AND v.state = 'planned'`;
}

/** True where visits of a fill may have taken from it what nobody knows of. A tank that was measured had given it by then. */
function isOpen({ company }: Work, { row, rests }: FillOfTank, open: readonly OpenVisit[], ofDay: ReadonlySet<string>): boolean {
  const own = new Set(row.plannedVisitIds);
  const rest = rests.at(-1);
  const measuredOn = rest === undefined ? null : calendarDateIn(company.timeZone, rest.settledAt);
  return open.some(({ visit_id: visitId, date }) => own.has(visitId) && !ofDay.has(visitId) && (measuredOn === null || (date !== null && date > measuredOn)));
}

/** The same products, as strong to the last canonical unit. */
function isSameMix(one: FillOfTank, other: FillOfTank): boolean {
  return (
    one.products.length === other.products.length &&
    one.products.every(({ productId, amount }) => other.products.some((product) => product.productId === productId && product.amount.amount * one.finished.amount === amount.amount * other.finished.amount))
  );
}
