import { capitalized } from "#domain/foundation/capitalized";
import { type Finding, hold } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { type LabelFacts, type ProductRate } from "#domain/label/label-facts";
import { canonicalAmountOf } from "#domain/quantities/exact-quantity";
import { compareRates, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { compareRational, rational, subtractRational } from "#domain/quantities/rational";
import { amountIn, type FillStop, type SprayConcentration } from "#domain/mixing/tank-fill";
import { type HeldMix, type TreatedStop } from "#domain/mixing/tank-plan-question";
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
    readonly concentration: SprayConcentration;
  }[];
}

/** The mix that comes next, where it goes first. */
export interface NextMix {
  readonly stop: TreatedStop;
  readonly products: FillStop["products"];
  readonly gear: TicketSprayer;
}

/** Why a product that was in the tank must not reach a lawn. */
export interface Unwanted {
  readonly productName: string;
  readonly why: "not-labeled-for-its-turf" | "label-not-known" | "pesticide-not-planned";
}

/** What lies between two mixes in one tank. */
export interface ChangeOfMix {
  /** Nothing: the same products; a rinse: others, of which a trace does no harm; a clean-out: what must not reach the lawn. */
  readonly cleaning: "none" | "rinse" | "clean-out";
  readonly unwanted: readonly Unwanted[];
  /** Whether the last mix may go on the next lawn first: all of its products are planned there, none above its label's highest rate. */
  readonly mayRunOn: boolean;
}

/**
 * What a tank needs between its last mix and the next one. A product that the next stop gets anyway asks for nothing. Any
 * other is rinsed out; it is cleaned out where its label is not known, where its label does not name the grasses of the
 * next lawns, and where it is a registered pesticide that nobody planned there. Common practice; that a label's site is
 * binding is FIFRA 12(a)(2)(G) (from memory).
 */
export function changeOfMix(last: MixInTank, next: NextMix): ChangeOfMix {
  const planned = new Set(next.products.map(({ productId }) => productId));
  const others = last.products.filter(({ productId }) => !planned.has(productId));
  const grasses = grassesUnder(next);
  const unwanted = others.flatMap(({ productName, label }) => {
    const why = whyUnwanted(label, grasses);
    return why === undefined ? [] : [{ productName, why }];
  });
  const cleaning = unwanted.length > 0 ? "clean-out" : others.length > 0 ? "rinse" : "none";
  return { cleaning, unwanted, mayRunOn: others.length === 0 && last.products.every((product) => isWithinLabel(product, next)) };
}

/** The grasses of the lawns that the next mix goes on at its first stop. */
function grassesUnder({ stop, products }: NextMix): readonly Grass[] {
  const planned = new Set(products.map(({ productId }) => productId));
  const zoneIds = new Set(stop.treatments.filter(({ productId }) => planned.has(productId)).flatMap((treatment) => treatment.zoneIds));
  return stop.lawns.filter(({ zoneId }) => zoneIds.has(zoneId)).flatMap((lawn) => lawn.grasses);
}

function whyUnwanted(label: LabelFacts | "unknown", grasses: readonly Grass[]): Unwanted["why"] | undefined {
  if (label === "unknown") return "label-not-known";
  const named = label.uses.map((use) => use.grasses);
  const isNamed = (grass: Grass) => named.some((names) => names === "any turfgrass" || (names !== "unknown" && names.includes(grass)));
  if (!grasses.every(isNamed)) return named.includes("unknown") ? "label-not-known" : "not-labeled-for-its-turf";
  if (grasses.length === 0 || label.epaRegistrationNumber === "unknown") return "label-not-known";
  return label.epaRegistrationNumber === "none" ? undefined : "pesticide-not-planned";
}

/** What a concentration comes to on the ground at what the sprayer puts out. */
function rateOnGround(concentration: SprayConcentration, { amount, per }: Rate<"carrier-volume-per-area">): ProductRate {
  const [over, under] = [concentration.amount * amount, concentration.per * per];
  return concentration.basis === "product-mass-per-spray-volume"
    ? rateFromAmounts("product-mass-per-area", over, under)
    : rateFromAmounts("product-volume-per-area", over, under);
}

function isWithinLabel({ productId, concentration }: MixInTank["products"][number], { stop, gear }: NextMix): boolean {
  const treatment = stop.treatments.find((one) => one.productId === productId);
  return treatment !== undefined && isAtMost(rateOnGround(concentration, gear.carrier.rate), treatment);
}

function isAtMost(rate: ProductRate, { use }: TicketTreatment): boolean {
  const high: ProductRate = use.rates.high;
  return high.basis === rate.basis && compareRates<ProductRate["basis"]>(rate, high) <= 0;
}

/**
 * Whether what a tank held is the mix that comes next: the same products, each by less than one mark of its tool away
 * from its plan over that fill, or by nothing where no tool measures it.
 */
export function isSameMix(held: HeldMix, next: FillStop["products"], toolOf: (productId: string) => TicketTool | undefined): boolean {
  if (held.products.length !== next.length) return false;
  return next.every(({ productId, concentration }) => {
    const had = held.products.find((product) => product.productId === productId);
    const wanted = amountIn(concentration, held.finished);
    if (had?.amount.dimension !== wanted.dimension) return false;
    const apart = subtractRational(canonicalAmountOf(had.amount), wanted.exactAmount);
    const distance = apart.numerator < 0n ? { ...apart, numerator: -apart.numerator } : apart;
    const mark = toolOf(productId)?.mark;
    // A stored amount is a whole number of canonical units, which lies within half a unit of its plan.
    const room = mark?.dimension === wanted.dimension ? canonicalAmountOf(mark) : rational(1n);
    return compareRational(distance, room) < 0;
  });
}

const WHY: Readonly<Record<Unwanted["why"], string>> = {
  "not-labeled-for-its-turf": "is not labeled for the grass there",
  "label-not-known": "may not be labeled for the grass there: its label, or the grass, is not on file",
  "pesticide-not-planned": "is a pesticide that is not planned there",
};

/** The hold for a last mix that has to be out of the tank before the next lawn, with no clean-out on file. */
export function notCleanedOut(last: MixInTank, { stop, gear }: NextMix, unwanted: readonly Unwanted[]): Finding {
  const reasons = unwanted.map(({ productName, why }) => `${productName} ${WHY[why]}`);
  return hold("office", {
    rule: "clean-out",
    source: "label",
    what: `The last mix in the tank of ${gear.name} is not cleaned out for the turf at ${stop.name}.`,
    figure: `${capitalized(last.name)}: ${listWords(reasons)}.`,
    toDo: "Clean out tank, pump and hose before this stop and record it, or take another sprayer for it.",
    about: [gear.name, stop.name],
  });
}

/** The hold for a tank of which the books don't know what it held. */
export function heldNotKnown({ stop, gear }: NextMix): Finding {
  return hold("office", {
    rule: "clean-out",
    source: "house",
    what: `What the tank of ${gear.name} held last is not on file.`,
    figure: `Whether that may go on the turf at ${stop.name} can't be decided.`,
    toDo: "Clean it out before the first fill and record that, and its fills from now on.",
    about: [gear.name],
  });
}
