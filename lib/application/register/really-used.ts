import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { type Outcome } from "#domain/foundation/outcome";
import { settle, sumExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { parseNumber } from "#domain/quantities/parse-number";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { allocate, compare, fromAmount, type Quantity, subtract, sum } from "#domain/quantities/quantity";
import { times } from "#domain/quantities/rate";
import { multiplyRational, rational, roundToWhole } from "#domain/quantities/rational";
import { isOverArea } from "#domain/label/label-facts";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { type ProductAmount, sprayForGround, type SprayMix } from "#domain/mixing/spray-mix";
import { inTurn } from "#domain/mixing/fills-in-turn";
import { type LotAtPlace, takeDown } from "#domain/register/put-down";
import { type DrawOfFill, type FillAtHand, fromFills, type ProductsInFills, type UsedOfMix } from "#application/register/drawn-from-fills";
import { type FillEntered, fillsEntered, type MixEntered } from "#application/register/mix-entered";
import { type RecordTreatment } from "#application/register/record-plan";
import { badField, type UseCaseRefusal } from "#application/refusal";

type UsedOutcome = Outcome<UsedOfMix, UseCaseRefusal>;
type LotWithContainer = LotAtPlace & { readonly containerSize: bigint };

/** Where what was used may have come from. */
export interface AtHand extends ProductsInFills {
  /** Those that were named, in their order; none where it was mixed for the visit alone. */
  readonly fills: readonly FillAtHand[];
  /** What further lines of the form say of the same draws: products without a mix ticket, and fills that only they name. */
  readonly together: { readonly lines: readonly number[]; readonly fills: readonly FillEntered[] };
  /** The lots of a product, place by place. */
  readonly lotsOf: (productId: string) => readonly (readonly LotWithContainer[])[];
}

/**
 * What one mix really used, from fills or from bags and jugs. As planned means as planned for the lawns that were
 * reached: a lawn that was left out got nothing of it. Out of fills for several visits that is what their ground takes, out
 * of one after the other; mixed for the visit alone it is their share of the visit's own loads, which went to a mark of the
 * gauge, less what the mix ticket says is left of them.
 */
export function reallyUsed(mix: GranularMix | SprayMix, entered: MixEntered, reached: ReadonlySet<string>, at: AtHand): UsedOutcome {
  if (mix.kind === "spray") {
    const lines = mix.products.map(({ line }) => line);
    if (at.fills.length > 0) return outOfFills(lines, sprayForGround(mix.carrier, mix.lawns.filter(({ zoneId }) => reached.has(zoneId))), entered, at);
    const sprayed = volumeOf(entered, shareOfLoads(mix, reached), `mixes.${String(lines[0])}.amount`);
    return sprayed.ok ? { ok: true, value: fromJugs(mix, sprayed.value, entered, at) } : sprayed;
  }
  const planned = sum("mass", mix.lawns.filter(({ zoneId }) => reached.has(zoneId)).map(({ amount }) => amount));
  const total = massOf(entered, planned, at.lotsOf(at.treatmentOf(mix.line).productId), `mixes.${String(mix.line)}.amount`);
  return total.ok ? { ok: true, value: fromLots(mix.line, total.value, entered, at) } : total;
}

function shareOfLoads({ lawns, finished, rest }: SprayMix, reached: ReadonlySet<string>): Quantity<"volume"> {
  const goesDown = rest === undefined ? finished : subtract(finished, rest.finished);
  const shares = allocate(goesDown, lawns.map(({ treatedArea }) => treatedArea.amount));
  return sum("volume", shares.filter((_share, index) => reached.has(lawns[index]?.zoneId ?? "")));
}

/** What was used of a product that has no mix ticket: the amount as it was typed, or gallons of a fill, or rate times ground. */
export function usedAsTyped(treatment: RecordTreatment, entered: MixEntered, reached: ReadonlySet<string>, at: AtHand): UsedOutcome {
  const { line, productId, productName, countedBy } = treatment;
  const key = `mixes.${String(line)}.amount`;
  if (at.fills.length > 0) return outOfFills([line], undefined, entered, at);
  const total = typedAmount(treatment, entered, reached, at.lotsOf(productId), key);
  if (!total.ok) return total;
  const { used, draws, findings } = fromLots(line, total.value, entered, at);
  return { ok: true, value: { used, draws, findings: [notWorkedOut(productName, countedBy), ...findings] } };
}

/** Each fill with its own gallons, or with what it has in its turn where it was as planned. */
function outOfFills(lines: readonly number[], planned: Quantity<"volume"> | undefined, entered: MixEntered, at: AtHand): UsedOutcome {
  const { measuredBy } = entered;
  const said = [...fillsEntered(String(lines[0]), entered), ...at.together.fills];
  const parts = planned === undefined ? [] : inTurn(planned, at.fills.map(({ finished, drawn }) => finished.amount - drawn.amount));
  const draws: DrawOfFill[] = [];
  for (const [index, fill] of at.fills.entries()) {
    const { field, amount } = said.find(({ fillId }) => fillId === fill.fillId) ?? { field: `mixes.${String(lines[0])}`, amount: "" };
    const key = `${field}.amount`;
    if (at.fills.length > 1 && measuredBy === "meter" && amount === "") return badField(key, `Say how many gallons came out of fill ${String(fill.number)}.`);
    const sprayed = volumeOf({ measuredBy, amount }, parts[index], key);
    if (!sprayed.ok) return sprayed;
    draws.push({ fill, sprayed: sprayed.value });
  }
  return { ok: true, value: fromFills([...lines, ...at.together.lines], draws, measuredBy, at) };
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

function volumeOf({ measuredBy, amount }: Pick<MixEntered, "measuredBy" | "amount">, planned: Quantity<"volume"> | undefined, key: string): Outcome<Quantity<"volume">, UseCaseRefusal> {
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
  // A bare number may be gallons of spray, which say nothing of the product: its unit is asked for.
  const unit = entered.measuredBy === "meter" ? {} : ({ unitWhenNone: countedBy === "mass" ? "lb" : "gal" } as const);
  const read = parseQuantity(entered.amount, { field: key, dimensions: [countedBy], ...unit });
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
  return { used: [{ line, measuredBy, total, lots, draws: [] }], draws: [], findings };
}

/** Mixed at the site for this visit alone: each product in the planned proportion of what was sprayed. What is left of it went on no lawn. */
function fromJugs(mix: SprayMix, sprayed: Quantity<"volume">, entered: MixEntered, at: AtHand): UsedOfMix {
  const parts = mix.products.map(({ line, total }) => {
    const amount = roundToWhole(multiplyRational(rational(total.amount), rational(sprayed.amount, mix.finished.amount)), "nearest");
    return fromLots(line, { dimension: total.dimension, amount }, entered, at);
  });
  const used = parts.flatMap((part) => part.used);
  return { used, draws: [], findings: [...parts.flatMap(({ findings }) => findings), ...leftOfLoads(mix, sprayed, used)] };
}

/** What the mix ticket leaves of its loads by plan, and what is left by the meter: on no lawn, and in no lot any more once it is mixed. */
function leftOfLoads({ products, finished, rest }: SprayMix, sprayed: Quantity<"volume">, used: UsedOfMix["used"]): readonly Finding[] {
  if (rest === undefined || rest.finished.amount === 0n || compare(sprayed, finished) >= 0) return [];
  const amounts = products.flatMap(({ line, productName, total }) => {
    const onLawns = used.find((one) => one.line === line)?.total;
    return onLawns === undefined ? [] : [`${formatQuantity(fromAmount(total.dimension, total.amount - onLawns.amount), "us")} ${productName}`];
  });
  return [
    note({
      rule: "left-of-the-mix",
      source: "stock",
      what: "Mixed as its mix ticket says, more spray was made than went down here.",
      figure: `${formatQuantity(subtract(finished, sprayed), "us")} are left, with ${listWords(amounts)}. It went on no lawn, and it is not taken off the books here.`,
      toDo: "Use it where it is labeled and write it into that record, or take it off the books as rinsed out.",
      about: products.map(({ productName }) => productName),
    }),
  ];
}
