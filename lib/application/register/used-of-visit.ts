import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { fromAmount } from "#domain/quantities/quantity";
import { isGrass } from "#domain/turf/grass";
import { type DrawOfFill, type FillAtHand, lessDrawn, type ReallyUsed, type UsedOfMix } from "#application/register/drawn-from-fills";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { type AtHand, type MixEntered, reallyUsed, usedAsTyped } from "#application/register/really-used";
import { linesOf, type Mix, type ProductPutDown, type RecordPlan, type RecordTreatment, treatmentOnLine } from "#application/register/record-plan";
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

/** What is asked of once in the form: a mix, or a product that has none. */
type Asked = { readonly key: string; readonly lawns: Mix["lawns"] | RecordTreatment["lawns"] } & ({ readonly mix: Mix } | { readonly treatment: RecordTreatment });

function askedOf({ mixes, treatments }: RecordPlan): readonly Asked[] {
  const mixed = new Set(mixes.flatMap(linesOf));
  const without = treatments.filter(({ line }) => !mixed.has(line));
  return [
    ...mixes.map((mix) => ({ key: String(linesOf(mix)[0]), lawns: mix.lawns, mix })),
    ...without.map((treatment) => ({ key: String(treatment.line), lawns: treatment.lawns, treatment })),
  ];
}

/**
 * Turns what a form said of each mix into product, lot by lot. What one mix has taken is gone for the next, from bags and
 * from fills alike. Refused where nothing was said of a mix, where its words are no amount, and for an unknown fill.
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
  const asked = askedOf(plan).filter(({ lawns }) => lawns.some(({ zoneId }) => reached.has(zoneId)));
  const named = asked.flatMap(({ key }) => fillsNamed(key, entered[key]).map(({ fillId }) => fillId));
  const fills = new Map(await fillsAtHand(work, [...new Set(named)], endedAt));
  const fillsOf = (key: string) => fillsNamed(key, entered[key]).flatMap(({ fillId }) => fills.get(fillId) ?? []);
  const lotNumbers = new Map([...lots.map(({ lotId, number }) => [lotId, number] as const), ...[...fills.values()].flatMap(({ numberOfLot }) => [...numberOfLot])]);
  const besideOf = await unplannedInFills(work, plan, drawsAsked(plan, asked, fillsOf));
  const unplanned = [...besideOf.values()].flat();
  const answers: UsedOfMix[] = [];
  for (const one of asked) {
    const said = entered[one.key];
    if (said === undefined) return badField(`mixes.${one.key}.measuredBy`, "Say how much was put down, or that it was as planned and not measured.");
    const unknown = fillsNamed(one.key, said).find(({ fillId }) => !fills.has(fillId));
    if (unknown !== undefined) return badField(unknown.field, "This fill is not on file. Choose another.");
    const at: AtHand = {
      fills: fillsOf(one.key),
      treatmentOf: (line) => unplanned.find((other) => other.line === line) ?? treatmentOnLine(plan.treatments, line),
      beside: (besideOf.get(one.key) ?? []).map(({ line }) => line),
      grassesOf: (zoneIds) => plan.lawns.filter(({ zoneId }) => zoneIds.includes(zoneId)).flatMap(({ grasses }) => grasses.filter(isGrass)),
      lotsOf: (productId) => placeByPlace(lots, places, productId),
    };
    const answer = "mix" in one ? reallyUsed(one.mix, said, reached, at) : usedAsTyped(one.treatment, said, reached, at);
    if (!answer.ok) return answer;
    answers.push(answer.value);
    lots = lessTaken(lots, answer.value);
    for (const draw of answer.value.draws) fills.set(draw.fill.fillId, lessDrawn(draw));
  }
  const findings = answers.flatMap((answer) => answer.findings);
  const used = answers.flatMap((answer) => answer.used);
  return accept({ used, draws: drawsByFill(answers), findings, unplanned: unplanned.filter(({ line }) => used.some((one) => one.line === line)), lotNumbers });
}

/** The fills that a form names for a mix, in their order, each with its field. */
function fillsNamed(key: string, said: MixEntered | undefined): readonly { readonly fillId: string; readonly field: string }[] {
  if (said === undefined || said.fillId === null) return [];
  const further = said.alsoFrom.map(({ row, fillId }) => ({ fillId, field: `mixes.${key}.alsoFrom.${row}.fillId` }));
  return [{ fillId: said.fillId, field: `mixes.${key}.fillId` }, ...further];
}

function drawsAsked(plan: RecordPlan, asked: readonly Asked[], fillsOf: (key: string) => readonly FillAtHand[]): readonly DrawAsked[] {
  return asked.flatMap((one) => {
    const fills = fillsOf(one.key);
    if (fills.length === 0) return [];
    const planned = "mix" in one ? linesOf(one.mix).map((line) => treatmentOnLine(plan.treatments, line)) : [one.treatment];
    return [{ key: one.key, planned, lawns: one.lawns, fills }];
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
