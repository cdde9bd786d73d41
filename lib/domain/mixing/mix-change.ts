import { capitalized } from "#domain/foundation/capitalized";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { type LabelFacts, type SprayRate } from "#domain/label/label-facts";
import { compareToLabel } from "#domain/label/label-rates";
import { canonicalAmountOf } from "#domain/quantities/exact-quantity";
import { WHOLE_LAWN } from "#domain/quantities/share";
import { compareRational, multiplyRational, type Rational, rational, subtractRational } from "#domain/quantities/rational";
import { amountIn, type FillStop } from "#domain/mixing/tank-fill";
import { isKeptApartInTank } from "#domain/mixing/kept-apart-checks";
import { NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { rateOnGround, strengthOf } from "#domain/mixing/stated-rate";
import { type FilledMix, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type TicketSprayer, type TicketTool, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type Grass } from "#domain/turf/grass";

/** A mix in a tank, as far as the next mix asks about it. */
export interface MixInTank {
  /** "fill A" */
  readonly name: string;
  readonly products: readonly {
    readonly productId: string;
    readonly productName: string;
    readonly label: LabelFacts | "unknown";
    /** Unknown of what was mixed for one visit alone. */
    readonly concentration: SprayRate | "unknown";
  }[];
}

/** What a tank was filled with as the next mix asks about it: how strong it is. */
export function mixInTank({ name, finished, products }: FilledMix): MixInTank {
  return {
    name,
    products: products.map(({ productId, productName, label, amount }) => ({
      productId,
      productName,
      label,
      concentration: finished === "unknown" ? "unknown" : strengthOf(amount, finished),
    })),
  };
}

/** The mix that comes next, where it goes first. */
export interface NextMix {
  readonly stop: Pick<TreatedStop, "name" | "lawns" | "treatments">;
  /** What of the stop's plan is in it. */
  readonly treatments: readonly TicketTreatment[];
  readonly gear: TicketSprayer;
}

/** Why a product that was in the tank must not reach a lawn. */
export interface Unwanted {
  readonly productName: string;
  readonly why: "not-labeled-for-its-turf" | "label-not-known" | "pesticide-not-planned" | "kept-apart-in-a-tank";
}

/** What lies between two mixes in one tank. */
export interface ChangeOfMix {
  /** Nothing: the same products; a rinse: others, of which a trace does no harm; a clean-out: what must not reach the lawn. */
  readonly cleaning: "none" | "rinse" | "clean-out";
  readonly unwanted: readonly Unwanted[];
  /** Whether the last mix may go on the next lawn first, in place of the next one: all of its products are in that too, none above its highest rate. */
  readonly mayRunOn: boolean;
}

/**
 * What a tank needs between its last mix and the next one. A product that the lawns of the next mix get anyway at that
 * stop, in that mix or all over, asks for nothing: nobody knows whether spots of another mix are where this one goes. Any
 * other is rinsed out; it is cleaned out where its label is not known, where its label does not name the grasses of the
 * next lawns, and where it is a registered pesticide that nobody planned there. What a label keeps out of a tank with
 * something that comes next is cleaned out wherever it is planned. Common practice; that a label's site is binding is
 * FIFRA 12(a)(2)(G) (from memory).
 */
export function changeOfMix(last: MixInTank, next: NextMix): ChangeOfMix {
  const others = last.products.filter((product) => isOut(product, next));
  const grasses = grassesUnder(next);
  const unwanted = others.flatMap(({ productName, label }) => {
    const why = isApart(label, next) ? "kept-apart-in-a-tank" : whyUnwanted(label, grasses);
    return why === undefined ? [] : [{ productName, why }];
  });
  const cleaning = unwanted.length > 0 ? "clean-out" : others.length > 0 ? "rinse" : "none";
  return { cleaning, unwanted, mayRunOn: last.products.every((product) => isWithinLabel(product, next)) };
}

function zonesOf(treatments: readonly TicketTreatment[]): ReadonlySet<string> {
  return new Set(treatments.flatMap(({ zoneIds }) => zoneIds));
}

/** Whether a product of the last mix has to be out of the tank: it is not in the next one, and not planned there or kept apart from that. */
function isOut({ productId, label }: MixInTank["products"][number], next: NextMix): boolean {
  if (next.treatments.some((treatment) => treatment.productId === productId)) return false;
  return !isPlannedThere(productId, next) || isApart(label, next);
}

function isApart(label: LabelFacts | "unknown", { treatments }: NextMix): boolean {
  return label !== "unknown" && isKeptApartInTank(label, treatments);
}

/** Whether the stop's plan has a product all over every lawn that the next mix goes on. */
function isPlannedThere(productId: string, { stop, treatments }: NextMix): boolean {
  const planned = zonesOf(stop.treatments.filter((treatment) => treatment.productId === productId && isAllOver(treatment)));
  return planned.size > 0 && [...zonesOf(treatments)].every((zoneId) => planned.has(zoneId));
}

function isAllOver({ spot }: TicketTreatment): boolean {
  return spot === undefined || spot.shareBasisPoints === WHOLE_LAWN;
}

/** The grasses of the lawns that the next mix goes on at its first stop. */
function grassesUnder({ stop, treatments }: NextMix): readonly Grass[] {
  const zoneIds = zonesOf(treatments);
  return stop.lawns.filter(({ zoneId }) => zoneIds.has(zoneId)).flatMap((lawn) => lawn.grasses);
}

/** Why a product must not reach lawns of these grasses without a plan; undefined for a feed whose label names them all. */
export function whyUnwanted(label: LabelFacts | "unknown", grasses: readonly Grass[]): Unwanted["why"] | undefined {
  if (label === "unknown") return "label-not-known";
  const named = label.uses.map((use) => use.grasses);
  const isNamed = (grass: Grass) => named.some((names) => names === "any turfgrass" || (names !== "unknown" && names.includes(grass)));
  if (!grasses.every(isNamed)) return named.includes("unknown") ? "label-not-known" : "not-labeled-for-its-turf";
  if (grasses.length === 0 || label.epaRegistrationNumber === "unknown") return "label-not-known";
  return label.epaRegistrationNumber === "none" ? undefined : "pesticide-not-planned";
}

function isWithinLabel({ productId, concentration }: MixInTank["products"][number], { treatments, gear }: NextMix): boolean {
  const treatment = treatments.find((one) => one.productId === productId);
  const toHigh = treatment === undefined || concentration === "unknown" ? undefined : compareToLabel(rateOnGround(concentration, gear.carrier.rate), treatment.use.rates, "high");
  return toHigh !== undefined && toHigh <= 0;
}

/**
 * Whether what a tank held is the mix that comes next: the same products, each by no more than 2 % of its plan over that fill
 * away from it or by less than one mark of its tool, since by a gauge nobody knows the fill any better; and none stronger by
 * more than those 2 % than the stops of the next mix let it be. What was mixed for one visit alone is never known to be the same.
 */
export function isSameMix(held: Pick<FilledMix, "finished" | "products">, next: FillStop["products"], toolOf: (productId: string) => TicketTool | undefined): boolean {
  const { finished } = held;
  if (finished === "unknown" || held.products.length !== next.length) return false;
  return next.every(({ productId, concentration, strongest }) => {
    const had = held.products.find((product) => product.productId === productId);
    const wanted = amountIn(concentration, finished);
    if (had?.amount.dimension !== wanted.dimension) return false;
    const most = amountIn(strongest, finished).exactAmount;
    if (!isNear(subtractRational(canonicalAmountOf(had.amount), most), most)) return false;
    const apart = subtractRational(canonicalAmountOf(had.amount), wanted.exactAmount);
    const distance = apart.numerator < 0n ? { ...apart, numerator: -apart.numerator } : apart;
    const mark = toolOf(productId)?.mark;
    const isWithinMark = mark?.dimension === wanted.dimension && compareRational(distance, canonicalAmountOf(mark)) < 0;
    return isWithinMark || isNear(distance, wanted.exactAmount);
  });
}

/** Whether what lies beyond a plan is no more than 2 % of it; below nothing is. */
function isNear(beyond: Rational, plan: Rational): boolean {
  return compareRational(multiplyRational(beyond, rational(100n)), multiplyRational(plan, NEAR_ENOUGH_PERCENT)) <= 0;
}

/** The same in words, after the product's name. */
export const WHY_UNWANTED: Readonly<Record<Unwanted["why"], string>> = {
  "not-labeled-for-its-turf": "is not labeled for the grass there",
  "label-not-known": "may not be labeled for the grass there: its label, or the grass, is not on file",
  "pesticide-not-planned": "is a pesticide that is not planned there",
  "kept-apart-in-a-tank": "may not share a tank with what comes next",
};

/** What a mix left in a tank, and why it must not reach a lawn. */
interface LeftInTank {
  readonly mix: Pick<MixInTank, "name">;
  readonly unwanted: readonly Unwanted[];
}

function whyWords(left: readonly LeftInTank[]): string {
  return left.map(({ mix: { name }, unwanted }) => `${capitalized(name)}: ${listWords(unwanted.map(({ productName, why }) => `${productName} ${WHY_UNWANTED[why]}`))}.`).join(" ");
}

/** The hold for what was in a tank and has to be out of it before the next lawn, with no clean-out on file. */
export function notCleanedOut(left: readonly LeftInTank[], { stop, gear }: Pick<NextMix, "stop" | "gear">): Finding {
  return hold("office", {
    rule: "clean-out",
    source: "label",
    what: `What was in the tank of ${gear.name} is not cleaned out for the turf at ${stop.name}.`,
    figure: whyWords(left),
    toDo: "Clean out tank, pump and hose before the tank is filled and record it, or take another sprayer for it.",
    about: [gear.name, stop.name],
  });
}

/**
 * What is said of a clean-out between two mixes of one day: it is a step of the plan, which nobody can have done the evening
 * before. Where nothing unwanted is known to be left, it is for what nobody knows of.
 */
export function cleanOutComesFirst(left: readonly LeftInTank[], { stop, gear }: Pick<NextMix, "stop" | "gear">): Finding {
  return takeCare({
    rule: "clean-out-comes-first",
    source: "label",
    what: `${gear.name} is cleaned out before it is filled for ${stop.name}.`,
    figure: left.length === 0 ? "All that was in the tank since its last clean-out is not on file." : whyWords(left),
    toDo: "Clean out tank, pump and hose before that fill and record it.",
    about: [gear.name, stop.name],
  });
}

/** The same as a record says it, once the work is done: that no such clean-out is on file. Any other finding stays as it is. */
export function cleanOutNotOnFile(finding: Finding): Finding {
  if (finding.rule !== "clean-out-comes-first") return finding;
  const [gearName = "", stopName = ""] = finding.about;
  return {
    ...finding,
    rule: "clean-out-not-on-file",
    what: `No clean-out of ${gearName} is on file before the work at ${stopName}.`,
    toDo: "Record the clean-out with its time where one was done.",
  };
}

/** What is said of a tank that is not clean by what is on file. */
export const OF_CLEAN_OUTS: ReadonlySet<string> = new Set(["clean-out", "clean-out-not-on-file"]);
/** The same, and what is said of a clean-out that is a step of the day to come. */
export const OF_CLEAN_OUTS_OF_DAY: ReadonlySet<string> = new Set([...OF_CLEAN_OUTS, "clean-out-comes-first"]);

/** The hold for a tank that was filled for a stop with no clean-out on file before, although what it held had to go. */
export function filledUncleaned(left: readonly LeftInTank[], filled: Pick<MixInTank, "name">, { stop, gear }: Pick<NextMix, "stop" | "gear">): Finding {
  return hold("office", {
    rule: "clean-out",
    source: "label",
    what: `${gear.name} was filled for the turf at ${stop.name} with no clean-out on file before ${filled.name}.`,
    figure: whyWords(left),
    toDo: "Record the clean-out with its time where one was done. Else empty the tank, clean it out and record that.",
    about: [gear.name, stop.name],
  });
}

/** The hold for a tank of which the books don't know what it held before a mix; null: before the first fill. */
export function heldNotKnown({ gear }: Pick<NextMix, "gear">, filled: Pick<MixInTank, "name"> | null): Finding {
  return hold("office", {
    rule: "clean-out",
    source: "house",
    what: filled === null ? `What the tank of ${gear.name} held last is not on file.` : `What the tank of ${gear.name} held before ${filled.name} is not on file.`,
    figure: "Whether that may go on the turf here can't be decided.",
    toDo: filled === null ? "Clean it out before the first fill and record that, and its fills from now on." : "Record the clean-out with its time where one was done. Else empty the tank, clean it out and record that.",
    about: [gear.name],
  });
}
