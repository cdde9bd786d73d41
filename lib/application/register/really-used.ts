import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { type Outcome } from "#domain/foundation/outcome";
import { settle, sumExact } from "#domain/quantities/exact-quantity";
import { parseNumber } from "#domain/quantities/parse-number";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { allocate, fromAmount, type Quantity, sum } from "#domain/quantities/quantity";
import { times } from "#domain/quantities/rate";
import { multiplyRational, rational, roundToWhole } from "#domain/quantities/rational";
import { isOverArea } from "#domain/label/label-facts";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { type ProductAmount, sprayForGround, type SprayMix } from "#domain/mixing/spray-mix";
import { drawFromFill, type FillOnRecord } from "#domain/mixing/tank-fill";
import { productNotPlanned } from "#domain/register/product-not-planned";
import { type LotAtPlace, takeDown } from "#domain/register/put-down";
import { type MeasuredBy } from "#domain/register/record-content";
import { type Grass } from "#domain/turf/grass";
import { type ProductPutDown, type RecordTreatment } from "#application/register/record-plan";
import { badField, type UseCaseRefusal } from "#application/refusal";

/** What a form said of one mix. */
export interface MixEntered {
  readonly measuredBy: MeasuredBy;
  readonly amount: string;
  readonly fillId: string | null;
}

/** Where in the ledger a fill's spray comes from: out of the tank, or out of what was missing when the tank was measured later. */
export interface SourceAtHand {
  readonly stockLocationId: string;
  /** So much at most; null: all that is asked. */
  readonly upTo: Quantity<"volume"> | null;
}

/** A fill as it stands for a visit, with the product and number of each of its lots. */
export interface FillAtHand extends FillOnRecord {
  readonly fillId: string;
  readonly number: number;
  readonly mixingPlace: string;
  /** One after the other; the last one has no limit. */
  readonly sources: readonly SourceAtHand[];
  /** Where the tank was measured or cleaned out after the visit: the rest in which what it took is missing already; else null. */
  readonly fillRestId: string | null;
  readonly productOfLot: ReadonlyMap<string, string>;
  readonly numberOfLot: ReadonlyMap<string, string>;
}

/** Finished spray out of a fill. */
export interface DrawOfFill {
  readonly fill: FillAtHand;
  readonly sprayed: Quantity<"volume">;
}

/** What was really used of one product, and where it came from. */
export interface ReallyUsed {
  readonly line: number;
  readonly measuredBy: MeasuredBy;
  readonly total: ProductAmount;
  readonly lots: readonly { readonly lotId: string; readonly from: string; readonly amount: bigint }[];
  readonly draw: DrawOfFill | null;
}

export interface UsedOfMix {
  readonly used: readonly ReallyUsed[];
  /** Once for a mix, however many products it has. */
  readonly draw: DrawOfFill | null;
  readonly findings: readonly Finding[];
}

type UsedOutcome = Outcome<UsedOfMix, UseCaseRefusal>;
type LotWithContainer = LotAtPlace & { readonly containerSize: bigint };

/** Where what was used may have come from. */
export interface AtHand {
  readonly fill: FillAtHand | undefined;
  readonly treatmentOf: (line: number) => ProductPutDown;
  /** The lines of what the fill holds beyond what was planned to come out of it. */
  readonly beside: readonly number[];
  readonly grassesOf: (zoneIds: readonly string[]) => readonly Grass[];
  /** The lots of a product, place by place. */
  readonly lotsOf: (productId: string) => readonly (readonly LotWithContainer[])[];
}

/**
 * What one mix really used, from a fill or from bags and jugs. As planned means as planned for the lawns that were
 * reached: a lawn that was left out got nothing of it. Out of a fill for several visits that is what their ground takes;
 * mixed for the visit alone it is their share of the visit's own loads, which went to a mark of the gauge.
 */
export function reallyUsed(mix: GranularMix | SprayMix, entered: MixEntered, reached: ReadonlySet<string>, at: AtHand): UsedOutcome {
  if (mix.kind === "spray") {
    const key = `mixes.${String(mix.products[0]?.line)}.amount`;
    const planned = at.fill === undefined ? shareOfLoads(mix, reached) : sprayForGround(mix.carrier, mix.lawns.filter(({ zoneId }) => reached.has(zoneId)));
    const sprayed = volumeOf(entered, planned, key);
    if (!sprayed.ok) return sprayed;
    const lines = mix.products.map(({ line }) => line);
    return { ok: true, value: at.fill === undefined ? fromJugs(mix, sprayed.value, entered, at) : fromFill(lines, sprayed.value, at.fill, entered, at) };
  }
  const planned = sum("mass", mix.lawns.filter(({ zoneId }) => reached.has(zoneId)).map(({ amount }) => amount));
  const total = massOf(entered, planned, at.lotsOf(at.treatmentOf(mix.line).productId), `mixes.${String(mix.line)}.amount`);
  return total.ok ? { ok: true, value: fromLots(mix.line, total.value, entered, at) } : total;
}

function shareOfLoads({ lawns, finished }: SprayMix, reached: ReadonlySet<string>): Quantity<"volume"> {
  const shares = allocate(finished, lawns.map(({ treatedArea }) => treatedArea.amount));
  return sum("volume", shares.filter((_share, index) => reached.has(lawns[index]?.zoneId ?? "")));
}

/** What was used of a product that has no mix ticket: the amount as it was typed, or gallons of a fill, or rate times ground. */
export function usedAsTyped(treatment: RecordTreatment, entered: MixEntered, reached: ReadonlySet<string>, at: AtHand): UsedOutcome {
  const { line, productId, productName, countedBy } = treatment;
  const key = `mixes.${String(line)}.amount`;
  if (at.fill !== undefined) {
    const sprayed = volumeOf(entered, undefined, key);
    return sprayed.ok ? { ok: true, value: fromFill([line], sprayed.value, at.fill, entered, at) } : sprayed;
  }
  const total = typedAmount(treatment, entered, reached, at.lotsOf(productId), key);
  if (!total.ok) return total;
  const { used, draw, findings } = fromLots(line, total.value, entered, at);
  return { ok: true, value: { used, draw, findings: [notWorkedOut(productName, countedBy), ...findings] } };
}

function notWorkedOut(productName: string, countedBy: "mass" | "volume"): Finding {
  return takeCare({
    rule: "mix-not-worked-out",
    source: "house",
    what: `No mix ticket could be worked out for ${productName}.`,
    figure: `Its ${countedBy === "mass" ? "weight" : "volume"} stands here as it was entered, and nothing was held against a label before it went down.`,
    toDo: "Enter what is missing before it is put down again.",
    about: [productName],
  });
}

function volumeOf({ measuredBy, amount }: MixEntered, planned: Quantity<"volume"> | undefined, key: string): Outcome<Quantity<"volume">, UseCaseRefusal> {
  if (measuredBy === "as-planned-not-measured") return planned === undefined ? badField(key, "No mix was planned here. Say how many gallons were sprayed.") : { ok: true, value: planned };
  if (measuredBy === "bags" || measuredBy === "weight") return badField(key, "A spray is measured in gallons, or it is as planned.");
  const read = parseQuantity(amount, { field: key, dimensions: ["volume"], unitWhenNone: "gal" });
  return read.ok ? { ok: true, value: read.value.quantity } : badField(key, read.refusal.sentence);
}

function massOf({ measuredBy, amount }: MixEntered, planned: Quantity<"mass">, places: readonly (readonly LotWithContainer[])[], key: string): Outcome<Quantity<"mass">, UseCaseRefusal> {
  if (measuredBy === "as-planned-not-measured") return { ok: true, value: planned };
  if (measuredBy === "meter") return badField(key, "What is spread is measured in bags or weighed, or it is as planned.");
  if (measuredBy === "weight") {
    const read = parseQuantity(amount, { field: key, dimensions: ["mass"], unitWhenNone: "lb" });
    return read.ok ? { ok: true, value: read.value.quantity } : badField(key, read.refusal.sentence);
  }
  const counted = countedInContainers(amount, places, key);
  return counted.ok ? { ok: true, value: fromAmount("mass", counted.value) } : counted;
}

function typedAmount(treatment: RecordTreatment, entered: MixEntered, reached: ReadonlySet<string>, places: readonly (readonly LotWithContainer[])[], key: string): Outcome<ProductAmount, UseCaseRefusal> {
  const { countedBy, rate, lawns } = treatment;
  if (entered.measuredBy === "bags") {
    const counted = countedInContainers(entered.amount, places, key);
    return counted.ok ? { ok: true, value: { dimension: countedBy, amount: counted.value } } : counted;
  }
  if (entered.measuredBy === "as-planned-not-measured") {
    if (!isOverArea(rate)) return badField(key, "No mix was planned here, and its rate is by the gallon of spray. Say how much was used.");
    const ground = lawns.filter(({ zoneId }) => reached.has(zoneId)).map(({ treatedArea }) => treatedArea);
    const area = sumExact("area", ground);
    const planned = rate.basis === "product-mass-per-area" ? settle(times(rate, area), "nearest") : settle(times(rate, area), "nearest");
    if (planned.dimension === countedBy) return { ok: true, value: planned };
    return badField(key, `It is counted by ${countedBy === "mass" ? "weight" : "volume"}. Say how much was used.`);
  }
  const read = parseQuantity(entered.amount, { field: key, dimensions: [countedBy], unitWhenNone: countedBy === "mass" ? "lb" : "gal" });
  return read.ok ? { ok: true, value: { dimension: countedBy, amount: read.value.quantity.amount } } : badField(key, read.refusal.sentence);
}

/** Bags and jugs turned into an amount by what the ones at hand hold, which must be one size. */
function countedInContainers(text: string, places: readonly (readonly LotWithContainer[])[], key: string): Outcome<bigint, UseCaseRefusal> {
  const count = parseNumber(key, text.replace(/\s*(?:bag|jug)s?$/iu, ""));
  if (!count.ok) return badField(key, "Say how many bags were used, such as 1½ or 0.25.");
  const atHand = places.find((place) => place.some(({ amount }) => amount > 0n))?.filter(({ amount }) => amount > 0n) ?? places.flat();
  const [size, another] = new Set(atHand.map(({ containerSize }) => containerSize));
  if (size === undefined) return badField(key, "What a bag holds is not on file. Weigh it instead.");
  if (another !== undefined) return badField(key, "Bags of more than one size are on the truck. Give the weight instead.");
  return { ok: true, value: roundToWhole(multiplyRational(count.value, rational(size)), "nearest") };
}

/** Out of bags and jugs. What is counted by another measure than it was used by can't be taken off the books. */
function fromLots(line: number, total: ProductAmount, { measuredBy }: MixEntered, { treatmentOf, lotsOf }: AtHand): UsedOfMix {
  const { productId, productName, countedBy } = treatmentOf(line);
  const { taken, findings } = takeDown(productName, total, total.dimension === countedBy ? lotsOf(productId) : []);
  const lots = taken.map(({ lotId, stockLocationId, amount }) => ({ lotId, from: stockLocationId, amount }));
  return { used: [{ line, measuredBy, total, lots, draw: null }], draw: null, findings };
}

/** Gallons times what the fill holds: of what was planned, and of everything else that was in it, which went down too. */
function fromFill(lines: readonly number[], sprayed: Quantity<"volume">, fill: FillAtHand, { measuredBy }: MixEntered, { treatmentOf, beside, grassesOf }: AtHand): UsedOfMix {
  const drawn = drawFromFill(fill, sprayed, `fill ${String(fill.number)}`);
  const taken = takenFrom(fill, sprayed);
  const draw = { fill, sprayed };
  const usedOf = (line: number): ReallyUsed => {
    const { productId, countedBy } = treatmentOf(line);
    const lots = taken.filter(({ lotId, amount }) => amount > 0n && fill.productOfLot.get(lotId) === productId);
    const amount = lots.reduce((total, lot) => total + lot.amount, 0n);
    return {
      ...{ line, measuredBy, draw },
      total: { dimension: countedBy, amount },
      lots: lots.map(({ lotId, from, amount: part }) => ({ lotId, from, amount: part })),
    };
  };
  const unplanned = beside.map(usedOf).filter(({ total }) => total.amount > 0n);
  const missing = lines.map(treatmentOf).filter(({ productId }) => !fill.lots.some(({ lotId }) => fill.productOfLot.get(lotId) === productId));
  const names = missing.map(({ productName }) => productName);
  const notPlannedHere = ({ productName, label, lawns }: ProductPutDown, amount: ProductAmount) =>
    productNotPlanned({ productName, label, amount, fillNumber: fill.number, grasses: grassesOf(lawns.map(({ zoneId }) => zoneId)) });
  const findings = [
    ...drawn.findings,
    ...(fill.fillRestId === null ? [] : [settledSince(fill)]),
    ...(names.length > 0 ? [otherMix(fill, names)] : []),
    ...unplanned.map(({ line, total }) => notPlannedHere(treatmentOf(line), total)),
  ];
  return { used: [...lines.map(usedOf), ...unplanned], draw, findings };
}

/** How much of a draw comes from each source, one after the other. */
function partsOfDraw(sources: FillAtHand["sources"], sprayed: Quantity<"volume">): readonly (SourceAtHand & { readonly part: bigint })[] {
  let rest = sprayed.amount;
  return sources.map((source) => {
    const part = source.upTo === null || source.upTo.amount > rest ? rest : source.upTo.amount;
    rest -= part;
    return { ...source, part };
  });
}

/** What a draw takes of each lot, source after source. */
function takenFrom(fill: FillAtHand, sprayed: Quantity<"volume">): readonly { readonly lotId: string; readonly from: string; readonly amount: bigint }[] {
  let drawn = fill.drawn.amount;
  return partsOfDraw(fill.sources, sprayed).flatMap(({ stockLocationId, part }) => {
    const { lots } = drawFromFill({ ...fill, drawn: { dimension: "volume", amount: drawn } }, fromAmount("volume", part), "");
    drawn += part;
    return lots.map(({ lotId, amount }) => ({ lotId, from: stockLocationId, amount }));
  });
}

/** The fill as it stands for the next draw of the same visit. */
export function lessDrawn({ fill, sprayed }: DrawOfFill): FillAtHand {
  const sources = partsOfDraw(fill.sources, sprayed).map(
    ({ stockLocationId, upTo, part }): SourceAtHand => ({ stockLocationId, upTo: upTo === null ? null : fromAmount("volume", upTo.amount - part) }),
  );
  return { ...fill, sources, drawn: { dimension: "volume", amount: fill.drawn.amount + sprayed.amount } };
}

function settledSince({ number }: FillAtHand): Finding {
  return note({
    rule: "fill-settled-since",
    source: "stock",
    what: `The tank of fill ${String(number)} was measured or cleaned out after this visit.`,
    figure: "What was sprayed here was missing from it then, so it is taken from there and no more out of the tank.",
    about: [],
  });
}

function otherMix({ number }: FillAtHand, missing: readonly string[]): Finding {
  return takeCare({
    rule: "fill-of-another-mix",
    source: "stock",
    what: `Fill ${String(number)} is not the mix that was planned here.`,
    figure: `It holds none of ${missing.join(" and ")}.`,
    toDo: "Tell the license holder, and look at the label of what really went down.",
    about: missing,
  });
}

/** Mixed at the site for this lawn alone: each product in the planned proportion of what was sprayed. */
function fromJugs(mix: SprayMix, sprayed: Quantity<"volume">, entered: MixEntered, at: AtHand): UsedOfMix {
  const parts = mix.products.map(({ line, total }) => {
    const amount = roundToWhole(multiplyRational(rational(total.amount), rational(sprayed.amount, mix.finished.amount)), "nearest");
    return fromLots(line, { dimension: total.dimension, amount }, entered, at);
  });
  return { used: parts.flatMap(({ used }) => used), draw: null, findings: parts.flatMap(({ findings }) => findings) };
}
