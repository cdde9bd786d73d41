import { addDays } from "#domain/foundation/calendar-date";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { isLeftOverOf } from "#domain/mixing/left-over-mix";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { inFillingOrder, leftBy } from "#domain/mixing/tank-books";
import { isSprayed } from "#domain/mixing/ticket-question";
import { type Quantity } from "#domain/quantities/quantity";
import { amountOfMarks } from "#domain/quantities/rounding";
import { instantOfMinute } from "#domain/weather/local-hours";
import { houseSettingsOf } from "#application/companies/house-settings";
import { type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { filledMixOf } from "#application/fills/filled-onto";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { type LeftOverFill, leftOverFills } from "#application/fills/left-over-fills";
import { MOST_FURTHER_FILLS } from "#application/register/complete-visit.schema";
import { type MixAsked } from "#application/register/mixes-asked";
import { ticketInHand } from "#application/visits/issued-ticket";
import { type VisitOnFile } from "#application/visits/read-visit";
import { type Work } from "#application/use-case";

/** One thing that a record asks of, with the sprayer that is planned for it; null where none is on file. */
export interface SprayAsked {
  readonly asked: MixAsked;
  readonly productIds: readonly string[];
  readonly equipmentId: string | null;
}

/**
 * The fills that each spray of a visit is to come out of, in the order in which they were filled, which is that in which
 * they count as emptied: first what other visits left over of the same mix in the same tank, as the day's tank plan takes it,
 * then the fills that were made for the visit. What another mix was filled onto before the last of these, or before the truck's
 * day where there is none, can't have come out of the tank any more.
 */
export async function fillsToName(work: Work, found: VisitOnFile, sprays: readonly SprayAsked[], gear: readonly EquipmentOnFile[]): Promise<(spray: SprayAsked) => readonly string[]> {
  const made = await fillsMadeFor(work, found.visit.visitId);
  const mark = amountOfMarks((await houseSettingsOf(work)).tankMark, 1n);
  const { leftOver, began } = await leftOverFor(work, found);
  const question = ticketInHand(found.issued, found.outcome)?.question;
  const treatments = question === undefined ? [] : treatmentsForRounding(question).filter(isSprayed);
  const onTruck = gear.filter(({ kind, vehicleId, isStoodDown }) => isSprayer(kind) && !isStoodDown && vehicleId !== null && vehicleId === found.visit.stop?.vehicleId).map((one) => one.equipmentId);
  return (spray) => {
    const { asked, productIds, equipmentId } = spray;
    const pass = sprays.filter((other) => other.asked.ground === asked.ground && ("treatment" in asked || other === spray || "treatment" in other.asked));
    const isSameMix = (fill: FillOfTank) => {
      // Where a product of the pass has no ticket nobody knows how strong it was to be; then what it is made of decides.
      if ("mix" in asked && pass.length === 1) return isLeftOverOf(filledMixOf(fill, new Map()), treatments.filter(({ line }) => asked.lines.includes(line)));
      return fill.products.every(({ productId }) => pass.some((one) => one.productIds.includes(productId)));
    };
    const planned = pass.flatMap((one) => one.equipmentId ?? []);
    const sprayers = equipmentId !== null ? [equipmentId] : planned.length > 0 ? planned : onTruck;
    const isOfProducts = ({ products }: FillOfTank) => products.some(({ productId }) => productIds.includes(productId));
    const own = made.filter((fill) => (equipmentId === null || fill.row.equipmentId === equipmentId) && isOfProducts(fill));
    const last = own.at(-1);
    const isUnder = (fill: FillOfTank) => (last === undefined ? fill.filledAt < began : isBefore(fill, last));
    const isOnTop = ({ fill, onTop }: LeftOverFill) => [fill, ...onTop.filter(isUnder)].every(isSameMix);
    return namesOf(own, leftOver.filter((one) => sprayers.includes(one.fill.row.equipmentId) && isOfProducts(one.fill) && isOnTop(one)).map(({ fill }) => fill), mark);
  };
}

/**
 * Of the fills made for the visit those that still have something, or whose tank was measured since, which its record takes
 * from what was missing then; with what others left before the last of them, from a
 * mark of the gauge on. Where nothing is left at all the last one made:
 * something came out of it. Where there are more than a form has rows for, the latest.
 */
function namesOf(own: readonly FillOfTank[], leftOver: readonly FillOfTank[], mark: Quantity<"volume">): readonly string[] {
  const last = own.at(-1);
  const isThere = (fill: FillOfTank, at: number) => leftBy(fill, Infinity).amount >= mark.amount || fill.rests.some(({ settledAt }) => settledAt >= at);
  // What was gone from the tank before the visit's own fill was made is none of it.
  const before = last === undefined ? leftOver : leftOver.filter((fill) => isBefore(fill, last) && isThere(fill, last.filledAt));
  const atHand = own.filter((fill) => fill.rests.length > 0 || leftBy(fill, Infinity).amount > 0n);
  const all = [...before, ...atHand].toSorted(inFillingOrder);
  return (all.length === 0 ? own.slice(-1) : all).slice(-1 - MOST_FURTHER_FILLS).map(({ fillId }) => fillId);
}

function isBefore(one: FillOfTank, other: FillOfTank): boolean {
  return inFillingOrder(one, other) < 0;
}

async function fillsMadeFor(work: Work, visitId: string): Promise<readonly FillOfTank[]> {
  const { companyId } = work.company;
  const rows = await work.tx.fill.findMany({ where: { companyId, plannedVisitIds: { has: visitId } }, orderBy: [{ filledAt: "asc" }, { number: "asc" }] });
  return [...(await fillsInBooks(work, rows)).values()];
}

/** What other visits left that this one may have had: filled by the end of its day, and in the tank or missing from it since its truck's day began. */
async function leftOverFor(work: Work, { visit: { visitId, stop } }: VisitOnFile): Promise<{ readonly leftOver: readonly LeftOverFill[]; readonly began: number }> {
  const { timeZone } = work.company;
  const began = stop === null ? null : instantOfMinute(stop.date, stop.startsAtMinute, timeZone);
  const until = stop === null ? Infinity : instantOfMinute(addDays(stop.date, 1), 0, timeZone);
  const leftOver = (await leftOverFills(work, began === null ? null : new Date(began))).filter(({ fill: { filledAt, row } }) => filledAt < until && !row.plannedVisitIds.includes(visitId));
  return { leftOver, began: began ?? Infinity };
}
