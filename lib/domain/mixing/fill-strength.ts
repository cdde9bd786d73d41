import { distanceFrom, isMoreThanPercent } from "#domain/equipment/repeats";
import { type Finding, gravestFirst, hold, note, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { areOverArea, citationOfUse, isOverArea, type LabelFacts, type SprayRate, type UseRate } from "#domain/label/label-facts";
import { CARE_ABOVE_PERCENT, NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { type ProductAmount, type SprayTreatment } from "#domain/mixing/spray-mix";
import { rateOnGround, statedOf, strengthOf } from "#domain/mixing/stated-rate";
import { isWeaker } from "#domain/mixing/tank-fill";
import { canonicalAmountOf, type Measure } from "#domain/quantities/exact-quantity";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { compareRates } from "#domain/quantities/rate";
import { addRational, compareRational, multiplyRational, rational, roundToWhole } from "#domain/quantities/rational";

/** So much of a product that went into a fill. */
export interface ProductFilled {
  readonly productId: string;
  readonly productName: string;
  readonly amount: ProductAmount;
  readonly label: LabelFacts | "unknown";
}

/** A product in the tank as a visit's mix ticket has it. */
export interface ProductPlanned {
  readonly productId: string;
  readonly concentration: SprayRate;
  readonly treatment: SprayTreatment;
}

/** What one visit's mix ticket has in the tank. */
export type MixPlanned = readonly ProductPlanned[];

/** What went into a tank by the two readings around it, and how finely its gauge reads. */
export interface FinishedByGauge {
  readonly finished: Quantity<"volume">;
  /** The mark of the gauge. */
  readonly mark: Measure<"volume">;
}

/**
 * How strong a recorded fill is beside what was planned, with care from 10 % off either way, and beside the most that its
 * label allows: over the ground at what the sprayer puts out by the plan, or in the finished spray. It is above the label where
 * it is so however far the readings may be off; what they can explain is a note. None of it keeps the fill from being recorded.
 * Where nothing says how strong it should be, that is said. Throws for a fill of nothing.
 * @param mixes what the mix tickets of its visits have in this tank, none where it was filled for no planned visit
 */
export function fillStrengthFindings(filled: FinishedByGauge, products: readonly ProductFilled[], mixes: readonly MixPlanned[]): readonly Finding[] {
  const planned = mixesMeant(products, mixes).flat();
  const most = mostFilled(filled);
  const held = products.map((product) => ({ product, ...heldAgainst(product, { asRead: strengthOf(product.amount, filled.finished), atLeast: strengthOf(product.amount, most) }, planned) }));
  const leftOut = planned.filter(({ productId }, index) => !products.some((one) => one.productId === productId) && planned.findIndex((one) => one.productId === productId) === index);
  return [...held.flatMap(({ findings }) => findings), ...leftOut.map(notPutIn), ...againstNothing(held.filter(({ isHeld }) => !isHeld).map(({ product }) => product.productName))];
}

/**
 * The most that a fill may be in truth: each of its two readings is a mark off, or the amounts are off by as much as is near
 * enough in mixing, whichever is more.
 */
function mostFilled({ finished, mark }: FinishedByGauge): Quantity<"volume"> {
  const asRead = rational(finished.amount);
  const byMarks = addRational(asRead, multiplyRational(canonicalAmountOf(mark), rational(2n)));
  const nearEnough = multiplyRational(asRead, addRational(rational(1n), multiplyRational(NEAR_ENOUGH_PERCENT, rational(1n, 100n))));
  return fromAmount("volume", roundToWhole(compareRational(byMarks, nearEnough) > 0 ? byMarks : nearEnough, "up"));
}

/** How strong a product came to be by the readings, and how strong it is at least. */
interface Strength {
  readonly asRead: SprayRate;
  readonly atLeast: SprayRate;
}

/** A visit may have two mixes of one tank: the fill is of that one whose products went in. */
function mixesMeant(products: readonly ProductFilled[], mixes: readonly MixPlanned[]): readonly MixPlanned[] {
  const shared = (mix: MixPlanned) => mix.filter(({ productId }) => products.some((product) => product.productId === productId)).length;
  const most = Math.max(0, ...mixes.map(shared));
  const nearest = mixes.filter((mix) => shared(mix) === most);
  const fewest = Math.min(...nearest.map((mix) => mix.length));
  return nearest.filter((mix) => mix.length === fewest);
}

interface Held {
  readonly findings: readonly Finding[];
  /** False where neither a plan nor a label says by this measure how strong it should be. */
  readonly isHeld: boolean;
}

function heldAgainst(product: ProductFilled, strength: Strength, planned: readonly ProductPlanned[]): Held {
  const own = planned.filter(({ productId }) => productId === product.productId);
  const unplanned = planned.length > 0 && own.length === 0 ? [notPlanned(product)] : [];
  if (own.length === 0) {
    const ofLabel = aboveAnyUse(product, strength);
    return { findings: [...unplanned, ...(ofLabel ?? [])], isHeld: unplanned.length > 0 || ofLabel !== undefined };
  }
  const comparable = own.filter(({ concentration }) => concentration.basis === strength.asRead.basis);
  const above = gravestFirst(own.flatMap((one) => aboveLabel(strength, one))).slice(0, 1);
  return { findings: [...offPlan(product, strength.asRead, comparable), ...above], isHeld: comparable.length > 0 };
}

/** Visits that share a mix have one strength; of several the nearest is meant. */
function offPlan({ productName }: ProductFilled, strength: SprayRate, planned: readonly ProductPlanned[]): readonly Finding[] {
  const byStrength = planned.map(({ concentration }) => concentration).toSorted((one, other) => (isWeaker(one, other) ? -1 : 1));
  const [weakest, strongest] = [byStrength.at(0), byStrength.at(-1)];
  if (weakest === undefined || strongest === undefined) return [];
  const isLess = isWeaker(strength, weakest);
  const meant = isLess ? weakest : strongest;
  if (meant.amount === 0n || (!isLess && !isWeaker(strongest, strength))) return [];
  if (!isMoreThanPercent(distanceFrom(rational(meant.amount, meant.per), rational(strength.amount, strength.per)), CARE_ABOVE_PERCENT)) return [];
  const [came, asPlanned] = formatRatesApart<SprayRate["basis"]>(strength, meant, "us");
  return [
    takeCare({
      rule: "fill-strength-not-as-planned",
      source: "house",
      what: `${productName} is ${isLess ? "weaker" : "stronger"} in this fill than planned.`,
      figure: `It came to ${came}; the plan is ${asPlanned}.`,
      toDo: `Look at its amount and unit and at both readings of the tank. Where they are right, the lawns get ${isLess ? "less" : "more"} of it than their mix tickets say.`,
      about: [productName],
    }),
  ];
}

/** What it comes to against the most that the label allows for the planned use: every limit is by a measure of its own. */
function aboveLabel({ asRead, atLeast }: Strength, { treatment }: ProductPlanned): readonly Finding[] {
  const { label, use, gear } = treatment;
  const { rates } = statedOf(treatment);
  const most = areOverArea(rates) ? undefined : use.besideRates?.mostOnArea;
  const limits: readonly UseRate[] = [rates.high, ...(most === undefined ? [] : [most])];
  return limits.flatMap((limit) => {
    const cameTo = (strength: SprayRate) => (isOverArea(limit) ? rateOnGround(strength, gear.carrier.rate) : strength);
    const how = isOverArea(limit) ? `Sprayed at ${formatRate(gear.carrier.rate, "us")} it` : "It";
    return aboveLimit({ productName: label.productName, how, asRead: cameTo(asRead), atLeast: cameTo(atLeast), limit, citation: citationOfUse(label.productName, use.useName) });
  });
}

/** Of what nobody planned the use is not known: what none of the label's uses allows; undefined where one is over ground. */
function aboveAnyUse({ productName, label }: ProductFilled, strength: Strength): readonly Finding[] | undefined {
  if (label === "unknown" || label.uses.length === 0) return undefined;
  const limits = label.uses.map(({ useName, rates }) => ({ useName, most: rates.high }));
  if (limits.some(({ most }) => most.basis !== strength.asRead.basis)) return undefined;
  const highest = limits.reduce((one, other) => (isAbove(other.most, one.most) ? other : one));
  return aboveLimit({ productName, how: "It", ...strength, limit: highest.most, citation: citationOfUse(productName, highest.useName) });
}

/** Two of one measure; what is by another is not above. */
function isAbove(rate: UseRate, limit: UseRate): boolean {
  return rate.basis === limit.basis && compareRates<UseRate["basis"]>(rate, limit) > 0;
}

/** What a product comes to in a fill beside the most that its label allows by the same measure. */
interface BesideLimit {
  readonly productName: string;
  /** How the sentence begins that says what it comes to. */
  readonly how: string;
  readonly asRead: UseRate;
  readonly atLeast: UseRate;
  readonly limit: UseRate;
  readonly citation: string;
}

function aboveLimit({ productName, how, asRead, atLeast, limit, citation }: BesideLimit): readonly Finding[] {
  if (!isAbove(asRead, limit)) return [];
  const [came, highest] = formatRatesApart<UseRate["basis"]>(asRead, limit, "us");
  const beside = { source: "label", figure: `${how} comes to ${came}; the label's highest is ${highest}.`, citation, about: [productName] } as const;
  if (isAbove(atLeast, limit)) {
    return [
      hold("nobody", {
        rule: "fill-above-label",
        what: `${productName} is stronger in this fill than its label allows.`,
        toDo: "Look at its amount and unit and at both readings of the tank. Where they are right, do not spray it, and tell the license holder today.",
        ...beside,
      }),
    ];
  }
  return [
    note({
      rule: "fill-at-label-limit",
      what: `${productName} is at the most that its label allows in this fill, as near as a gauge reads.`,
      toDo: "What it is above that, the readings of the tank and of its amount can be off. Look at them once more.",
      ...beside,
    }),
  ];
}

function notPlanned({ productName }: ProductFilled): Finding {
  return takeCare({
    rule: "fill-product-not-planned",
    source: "house",
    what: `${productName} went in, and the visits of this fill have none of it planned.`,
    toDo: "Look at which product it was and which visits it was filled for.",
    about: [productName],
  });
}

function notPutIn({ treatment: { label } }: ProductPlanned): Finding {
  return takeCare({
    rule: "planned-product-not-in-fill",
    source: "house",
    what: `${label.productName} is planned for the visits of this fill, and none of it went in.`,
    toDo: "Write how much went in, or take it off the visits.",
    about: [label.productName],
  });
}

function againstNothing(productNames: readonly string[]): readonly Finding[] {
  if (productNames.length === 0) return [];
  return [
    note({
      rule: "fill-strength-not-checked",
      source: "house",
      what: `How strong ${listWords(productNames)} may be in this fill is not on file.`,
      figure: "A label's rate over ground is known in a tank only by the mix ticket of a visit, which says how much ground so much spray covers.",
      toDo: "Where it was filled for planned visits, record it from their day.",
      about: productNames,
    }),
  ];
}
