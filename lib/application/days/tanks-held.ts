import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { isCleanSince } from "#domain/mixing/clean-out";
import { inFillingOrder } from "#domain/mixing/tank-books";
import { latestOfEach } from "#domain/mixing/tank-contents";
import { type FilledBefore, type FilledLater, type FilledMix, type HeldMix, type LastHeld, type RestInTank } from "#domain/mixing/tank-plan-question";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { amountOfMarks } from "#domain/quantities/rounding";
import { houseSettingsOf } from "#application/companies/house-settings";
import { earliestOf, filledBeforeOf, filledMixOf, type FillsBelow, fillsBelow, type MixesOnFile, productsOfMixes } from "#application/fills/filled-onto";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { mixAlone, type MixedForVisit, mixedForVisits } from "#application/fills/mixed-for-visits";
import { type FillRead, fillsRead, leftNow, type OpenVisit, openVisits } from "#application/days/left-in-fills";
import { labelsOfProducts, type LabelsRead } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

/** A day as far as its tanks ask. */
export interface DayOfTanks {
  readonly date: CalendarDate;
  /** In the order of the routes. */
  readonly visitIds: readonly string[];
}

/** All that the books say of the tanks of a company. */
interface Books extends MixesOnFile {
  readonly timeZone: string;
  /** A mark of the gauge: of less nothing counts as there. */
  readonly mark: Quantity<"volume">;
  readonly day: DayOfTanks;
  readonly readOf: ReadonlyMap<string, FillRead>;
  readonly below: ReadonlyMap<string, FillsBelow>;
  readonly open: ReadonlyMap<string, OpenVisit>;
  /** The last clean-out of each sprayer, in milliseconds since 1970. */
  readonly cleanedAt: ReadonlyMap<string, number>;
}

/**
 * What each sprayer's tank held last by the books: the latest fill on record or what was mixed for one visit alone, what is
 * left of it and of the fills under it, and all that was in the tank before since its last clean-out. Where the tank's stock
 * has been posted away nothing is left. A sprayer that was cleaned out since is clean. One of which neither a clean-out nor
 * a fill is on record is not among them: nobody knows what it held. A fill that was drawn from is under way until all of its
 * visits are done. Where the tank was filled on that very day for one of its open visits and then for later ones, it begins
 * with the first of these fills, and the others come with it: records are often written at the day's end. The number of
 * queries does not hang on that of fills.
 * @param known labels that were read already, which are not read again
 */
export async function tanksHeld(work: Work, day: DayOfTanks, known: LabelsRead = new Map()): Promise<ReadonlyMap<string, LastHeld>> {
  const books = await booksOf(work, day, known);
  const fillsOf = groupedBy([...books.fillOf.values()].filter(({ fillId }) => books.readOf.has(fillId)).toSorted(inFillingOrder), ({ row }) => row.equipmentId);
  const equipmentIds = new Set([...fillsOf.keys(), ...books.cleanedAt.keys()]);
  return new Map(
    [...equipmentIds].flatMap((equipmentId): readonly (readonly [string, LastHeld])[] => {
      const held = heldIn(books, equipmentId, fillsOf.get(equipmentId) ?? []);
      return held === undefined ? [] : [[equipmentId, held]];
    }),
  );
}

async function booksOf(work: Work, day: DayOfTanks, known: LabelsRead): Promise<Books> {
  const { companyId, timeZone } = work.company;
  const mark = amountOfMarks((await houseSettingsOf(work)).tankMark, 1n);
  const read = await fillsRead(work, day.visitIds, mark);
  const below = await fillsBelow(work, read.filter((one) => one.is_last || one.is_of_day).map((one) => one.fill_id));
  const fillIds = [...new Set([...read.map((one) => one.fill_id), ...[...below.values()].flatMap((one) => one.fillIds)])];
  const fillOf = await fillsInBooks(work, await work.tx.fill.findMany({ where: { companyId, fillId: { in: fillIds } } }));
  const cleanOuts = await work.tx.cleanOut.groupBy({ by: ["equipmentId"], where: { companyId }, _max: { cleanedAt: true } });
  const cleanedAt = new Map(cleanOuts.flatMap(({ equipmentId, _max }) => (_max.cleanedAt === null ? [] : [[equipmentId, _max.cleanedAt.getTime()] as const])));
  const alone = await mixedForVisits(work, earliestOf([...cleanedAt.values(), ...[...below.values()].map((one) => one.cleanedAt)]));
  const asked = productsOfMixes({ fillOf, alone }).filter((productId) => !known.has(productId));
  const labels = new Map([...known, ...(await labelsOfProducts(work.tx, companyId, asked))]);
  const open = await openVisits(work, [...fillOf.values()].flatMap(({ row }) => row.plannedVisitIds));
  return { timeZone, mark, day, fillOf, alone, labels, below, open, cleanedAt, readOf: new Map(read.map((one) => [one.fill_id, one])) };
}

/** @param fills those of the tank of which anything may be left, and its latest, in their order */
function heldIn(books: Books, equipmentId: string, fills: readonly FillOfTank[]): LastHeld | undefined {
  const cleanedAt = books.cleanedAt.get(equipmentId);
  const alone = cleanedAt === undefined ? [] : books.alone.filter((one) => one.equipmentId === equipmentId && one.endedAt > cleanedAt);
  const latest = fills.at(-1);
  const isClean = isCleanSince(cleanedAt === undefined ? undefined : { cleanedAt }, latest);
  if (latest === undefined || isClean) {
    const [last, ...before] = alone;
    if (last === undefined) return isClean ? "clean" : undefined;
    return heldAlone(books, last, mixesOf(books, before), []);
  }
  const since = alone.filter(({ endedAt }) => endedAt > latest.filledAt);
  const [last, ...before] = since;
  // Whatever else was mixed in it, of a fill that is not used up there is something to spray.
  if (last === undefined || isSomething(leftOf(books, latest, false))) return heldFill(books, fills, latest, since);
  const onto = [...mixesOf(books, before), filledMixOf(latest, books.labels)];
  return heldAlone(books, last, latestOfEach([...onto, ...filledBeforeOf(books.below.get(latest.fillId), books)]), restsUnder(books, fills, latest));
}

function mixesOf({ labels }: Books, alone: readonly MixedForVisit[]): readonly FilledMix[] {
  return alone.map((one) => mixAlone(one, labels));
}

/** What was mixed for one visit alone went down there: nothing is left of it but what clings to the tank. */
function heldAlone({ labels, day }: Books, last: MixedForVisit, onto: FilledBefore, under: readonly RestInTank[]): HeldMix {
  return {
    ...mixAlone(last, labels),
    left: fromAmount("volume", 0n),
    isUnderWay: false,
    isOfThatDay: day.visitIds.includes(last.visitId),
    filledOnto: onto,
    ...(under.length === 0 ? {} : { under }),
  };
}

function heldFill(books: Books, fills: readonly FillOfTank[], latest: FillOfTank, since: readonly MixedForVisit[]): HeldMix {
  const needed = firstNeeded(books, fills);
  const first = needed.includes(latest) ? (needed[0] ?? latest) : latest;
  const later = laterThan(books, fills.slice(fills.indexOf(first) + 1), since, openOfDay(books, first));
  const under = restsUnder(books, fills.slice(0, fills.indexOf(first)), first);
  return { ...ofFill(books, first, since, first !== latest), ...(under.length === 0 ? {} : { under }), ...(later.length === 0 ? {} : { later }) };
}

/** One whose own visits are all recorded and of which something is left goes with the visits of the fill before it. */
function laterThan(books: Books, fills: readonly FillOfTank[], since: readonly MixedForVisit[], visitsBefore: readonly string[]): readonly FilledLater[] {
  let served = visitsBefore;
  return fills.flatMap((fill, index) => {
    const own = openOfDay(books, fill);
    const later = ofFill(books, fill, since, index < fills.length - 1);
    if (own.length === 0 && !isSomething(later.left)) return [];
    if (own.length > 0) served = own;
    return [{ ...later, visitIds: served }];
  });
}

function ofFill(books: Books, fill: FillOfTank, since: readonly MixedForVisit[], isFollowed: boolean): HeldMix {
  const mix = filledMixOf(fill, books.labels);
  return {
    ...mix,
    left: leftOf(books, fill, isFollowed),
    isUnderWay: fill.draws.length > 0 && fill.row.plannedVisitIds.some((visitId) => books.open.has(visitId)),
    isOfThatDay: isOfThatDay(books, fill),
    filledOnto: latestOfEach([...mixesOf(books, since), ...filledBeforeOf(books.below.get(fill.fillId), books)]),
  };
}

/**
 * Earlier fills since the last clean-out before one, the latest first, down to the first of which the books still have a mark of
 * the gauge or more: those in between that are used up keep what is under them from running together with what is above.
 */
function restsUnder(books: Books, fills: readonly FillOfTank[], above: FillOfTank): readonly RestInTank[] {
  const cleanedAt = books.below.get(above.fillId)?.cleanedAt ?? -Infinity;
  const under = fills.filter((fill) => fill !== above && fill.filledAt >= cleanedAt).map((fill) => ({ ...filledMixOf(fill, books.labels), left: leftOf(books, fill, false) }));
  const lowest = under.findIndex(({ left }) => left === "unknown" || left.amount >= books.mark.amount);
  return lowest < 0 ? [] : under.slice(lowest).toReversed();
}

function isSomething(left: RestInTank["left"]): boolean {
  return left === "unknown" || left.amount > 0n;
}

/** @param isFollowed it was filled on top for a later visit, and what was found of it since is what its own visits left */
function leftOf({ timeZone, mark, day, open, readOf }: Books, fill: FillOfTank, isFollowed: boolean): RestInTank["left"] {
  const asFilled = isFollowed ? { ...fill, rests: [], isPostedAway: false } : fill;
  return leftNow(asFilled, { timeZone, mark, day, open, isBesideReading: !isFollowed && readOf.get(fill.fillId)?.is_beside_reading === true });
}

/** The fills that were made on the day itself for open visits of it, that of the first of these visits first. */
function firstNeeded(books: Books, fills: readonly FillOfTank[]): readonly FillOfTank[] {
  const { timeZone, day: { date, visitIds } } = books;
  const placeOf = new Map(visitIds.map((visitId, place) => [visitId, place]));
  return fills
    .filter(({ filledAt }) => calendarDateIn(timeZone, filledAt) === date)
    .map((fill) => ({ fill, place: Math.min(...openOfDay(books, fill).map((visitId) => placeOf.get(visitId) ?? Infinity)) }))
    .filter(({ place }) => place !== Infinity)
    .toSorted((one, other) => one.place - other.place || inFillingOrder(one.fill, other.fill))
    .map(({ fill }) => fill);
}

/** Its visits of the day that nobody has recorded. */
function openOfDay({ day, open }: Books, { row }: FillOfTank): readonly string[] {
  const ofDay = new Set(day.visitIds);
  return row.plannedVisitIds.filter((visitId) => ofDay.has(visitId) && open.has(visitId));
}

/** Filled on that day for visits of it, or before it and drawn from on it. */
function isOfThatDay({ timeZone, day: { date, visitIds }, open }: Books, { filledAt, row }: FillOfTank): boolean {
  const ofDay = new Set(visitIds);
  const own = row.plannedVisitIds.filter((visitId) => ofDay.has(visitId));
  return own.length > 0 && (calendarDateIn(timeZone, filledAt) === date || own.some((visitId) => !open.has(visitId)));
}
