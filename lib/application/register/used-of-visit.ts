import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { fromAmount } from "#domain/quantities/quantity";
import { isGrass } from "#domain/turf/grass";
import { type DrawOfFill, type FillAtHand, lessDrawn, type ReallyUsed, type UsedOfMix } from "#application/register/drawn-from-fills";
import { type DrawTogether, drawsTogether, fillsOfDraw, refuseOddDraw } from "#application/register/draws-together";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { type MixAsked, mixesAsked } from "#application/register/mixes-asked";
import { type MixEntered } from "#application/register/mix-entered";
import { type AtHand, reallyUsed, usedAsTyped } from "#application/register/really-used";
import { type ProductPutDown, type RecordPlan, treatmentOnLine } from "#application/register/record-plan";
import { type DrawAsked, unplannedInFills } from "#application/register/unplanned-in-fills";
import { badField, type UseCaseRefusal } from "#application/refusal";
import { type LotOfProductAt, lotsAt } from "#application/stock/lots-at";
import { locationOfVehicle, singularLocation } from "#application/stock/stock-locations";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";

/** What a visit really used, from which lots and which fills. */
export interface UsedOfVisit {
  readonly used: readonly ReallyUsed[];
  /** One for each fill that was drawn from. */
  readonly draws: readonly (DrawOfFill & { readonly isMeasured: boolean })[];
  readonly findings: readonly Finding[];
  /** What came out of fills and was not planned here, each with a line of its own. */
  readonly unplanned: readonly ProductPutDown[];
  readonly lotNumbers: ReadonlyMap<string, string>;
}

/**
 * Turns what a form said of each mix into product, lot by lot. What one mix has taken is gone for the next, from bags and
 * from fills alike; lines that name one fill for the same lawns are one draw. Refused where nothing was said of a mix, where its
 * words are no amount, where lines contradict each other, and for an unknown fill.
 * @param endedAt of the visit: a tank that was measured since has what it took missing already
 */
export async function usedOfVisit(
  work: Work,
  entered: Readonly<Record<string, MixEntered>>,
  reached: ReadonlySet<string>,
  visit: VisitRow,
  plan: RecordPlan,
  endedAt: Date,
): Promise<Outcome<UsedOfVisit, UseCaseRefusal>> {
  const truck = visit.stop === null ? undefined : await locationOfVehicle(work, visit.stop.vehicleId);
  const places = [...(truck === undefined ? [] : [truck]), await singularLocation(work, "shop")];
  let lots = await lotsAt(work, places, [...new Set(plan.treatments.map(({ productId }) => productId))]);
  const asked = mixesAsked(plan).filter(({ lawns }) => lawns.some(({ zoneId }) => reached.has(zoneId)));
  const together = drawsTogether(asked, entered);
  const fills = new Map(await fillsAtHand(work, [...new Set(together.flatMap((draw) => fillsOfDraw(draw, entered).map(({ fillId }) => fillId)))], endedAt));
  const fillsOf = (draw: DrawTogether) => fillsOfDraw(draw, entered).flatMap(({ fillId }) => fills.get(fillId) ?? []);
  const lotNumbers = new Map([...lots.map(({ lotId, number }) => [lotId, number] as const), ...[...fills.values()].flatMap(({ numberOfLot }) => [...numberOfLot])]);
  const besideOf = await unplannedInFills(work, plan, drawsAsked(plan, together, fillsOf));
  const unplanned = [...besideOf.values()].flat();
  const answers: UsedOfMix[] = [];
  for (const draw of together) {
    const { lead, others } = draw;
    const said = entered[lead.key];
    if (said === undefined) return badField(`mixes.${lead.key}.measuredBy`, "Say how much was put down, or that it was as planned and not measured.");
    const refusal = refuseUnknown(draw, entered, fills) ?? refuseOddDraw(draw, entered, (fillId) => fills.get(fillId)?.number) ?? refuseTwice(plan, lead, said, together.flatMap((other) => (other === draw || other.lead.ground !== lead.ground ? [] : fillsOf(other))));
    if (refusal !== undefined) return { ok: false, refusal };
    const at: AtHand = {
      fills: fillsOf(draw),
      together: { lines: others.flatMap(({ lines }) => lines), fills: fillsOfDraw(draw, entered) },
      treatmentOf: (line) => unplanned.find((other) => other.line === line) ?? treatmentOnLine(plan.treatments, line),
      beside: (besideOf.get(lead.key) ?? []).map(({ line }) => line),
      isPlannedOn: (productId, zoneIds) => zoneIds.every((zoneId) => plan.treatments.some((one) => one.productId === productId && one.lawns.some((lawn) => lawn.zoneId === zoneId))),
      grassesOf: (zoneIds) => plan.lawns.filter(({ zoneId }) => zoneIds.includes(zoneId)).flatMap(({ grasses }) => grasses.filter(isGrass)),
      lotsOf: (productId) => placeByPlace(lots, places, productId),
    };
    const answer = "mix" in lead ? reallyUsed(lead.mix, said, reached, at) : usedAsTyped(lead.treatment, said, reached, at);
    if (!answer.ok) return answer;
    answers.push(answer.value);
    lots = lessTaken(lots, answer.value);
    for (const drawn of answer.value.draws) fills.set(drawn.fill.fillId, lessDrawn(drawn));
  }
  const findings = answers.flatMap((answer) => answer.findings);
  const used = answers.flatMap((answer) => answer.used);
  return accept({ used, draws: drawsByFill(answers), findings, unplanned: unplanned.filter(({ line }) => used.some((one) => one.line === line)), lotNumbers });
}

function refuseUnknown(draw: DrawTogether, entered: Readonly<Record<string, MixEntered>>, fills: ReadonlyMap<string, FillAtHand>): UseCaseRefusal | undefined {
  const unknown = fillsOfDraw(draw, entered).find(({ fillId }) => !fills.has(fillId));
  return unknown === undefined ? undefined : badField(`${unknown.field}.fillId`, "This fill is not on file. Choose another.").refusal;
}

/**
 * Refuses a product without a mix ticket as planned and out of no fill, where a fill that was drawn from on the same lawns
 * holds it: what was planned of it is in that fill, and nobody can tell whether it went down once or twice.
 */
function refuseTwice({ treatments }: RecordPlan, { key, lines, ...asked }: MixAsked, { measuredBy, fillId }: MixEntered, drawnOnGround: readonly FillAtHand[]): UseCaseRefusal | undefined {
  if ("mix" in asked || fillId !== null || measuredBy !== "as-planned-not-measured") return undefined;
  const { productId, productName } = treatmentOnLine(treatments, lines[0] ?? 0);
  const holding = drawnOnGround.find(({ productOfLot, lots }) => lots.some(({ lotId }) => productOfLot.get(lotId) === productId));
  if (holding === undefined) return undefined;
  return badField(`mixes.${key}.fillId`, `Fill ${String(holding.number)}, which was drawn from here, holds ${productName} too. Did it come out of that fill? Choose it here as well. Or say how much more of it went down beside that.`).refusal;
}

function drawsAsked({ treatments }: RecordPlan, together: readonly DrawTogether[], fillsOf: (draw: DrawTogether) => readonly FillAtHand[]): readonly DrawAsked[] {
  return together.flatMap((draw) => {
    const { lead, others } = draw;
    const fills = fillsOf(draw);
    if (fills.length === 0) return [];
    const lines = [lead, ...others].flatMap((one) => one.lines);
    return [{ key: lead.key, planned: lines.map((line) => treatmentOnLine(treatments, line)), lawns: lead.lawns, fills }];
  });
}

function placeByPlace(lots: readonly LotOfProductAt[], places: readonly string[], productId: string): readonly (readonly LotOfProductAt[])[] {
  return places.map((place) => lots.filter((lot) => lot.productId === productId && lot.stockLocationId === place));
}

function lessTaken(lots: readonly LotOfProductAt[], { used }: UsedOfMix): readonly LotOfProductAt[] {
  const taken = used.flatMap((one) => one.lots);
  return lots.map((lot) => {
    const own = taken.filter(({ lotId, from }) => lotId === lot.lotId && from === lot.stockLocationId);
    return { ...lot, amount: own.reduce((left, { amount }) => left - amount, lot.amount) };
  });
}

function drawsByFill(answers: readonly UsedOfMix[]): UsedOfVisit["draws"] {
  const draws = new Map<string, UsedOfVisit["draws"][number]>();
  for (const { draws: own, used } of answers) {
    for (const { fill, sprayed } of own.filter((draw) => draw.sprayed.amount > 0n)) {
      const before = draws.get(fill.fillId);
      const isMeasured = used.every(({ measuredBy }) => measuredBy === "meter") && before?.isMeasured !== false;
      draws.set(fill.fillId, { fill, sprayed: fromAmount("volume", sprayed.amount + (before?.sprayed.amount ?? 0n)), isMeasured });
    }
  }
  return [...draws.values()];
}
