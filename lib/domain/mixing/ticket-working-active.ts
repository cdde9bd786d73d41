import { groupedBy } from "#domain/foundation/grouping";
import { type Working, type WorkingInput } from "#domain/foundation/working";
import { activeIngredientIn, type Concentration } from "#domain/quantities/active-ingredient";
import { massOf } from "#domain/quantities/density";
import { addExact, type ExactQuantity, fromExactAmount, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateFrom } from "#domain/quantities/rate";
import { shareWords } from "#domain/quantities/share";
import { divideRational, rational, type Rational, ZERO } from "#domain/quantities/rational";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { knownDensity, type LabelFacts } from "#domain/label/label-facts";
import { amountsOn, type MixTicket } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { amountInputs, percentWords, weightLine } from "#domain/mixing/ticket-working-delivered";
import { inUnit, sumLine } from "#domain/mixing/ticket-working-words";

/** What one lawn gets of one active ingredient with the visit, over all products, and how that comes about. */
export interface ActiveWorking {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly ingredient: string;
  /** "0.483 lb per acre". */
  readonly words: string;
  readonly working: Working;
}

const ACRE = of("acre", 1n);
const HUNDRED = rational(100n);

interface Brought {
  readonly line: number;
  readonly label: LabelFacts;
  readonly amount: ProductAmount;
  readonly concentration: Concentration;
  readonly active: ExactQuantity<"mass">;
}

/**
 * The active ingredients that go down on each lawn, per acre of what is treated: of spot work per acre of its spots, because
 * a label's limit is for the ground that gets it. What goes on the same ground adds up, as if spots met. An ingredient of a product whose
 * density is missing can't be counted; the ticket's own findings say so, and it is left out with a line that says it.
 */
export function activeWorkings(question: TicketQuestion, ticket: MixTicket): readonly ActiveWorking[] {
  return ticket.delivered.flatMap(({ zoneId, name }) => {
    const put = amountsOn(zoneId, ticket.mixes).flatMap(({ line, amount }) =>
      question.treatments.filter((one) => one.line === line).flatMap(({ label }) => (label.activeIngredients === "unknown" ? [] : label.activeIngredients.map((active) => ({ line, label, amount, active })))),
    );
    const names = put.map(({ active }) => active.name);
    const own = names.filter((one, index) => names.findIndex((other) => isSameIngredient(one, other)) === index);
    return own.flatMap((ingredient): readonly ActiveWorking[] => {
      const named = put.filter(({ active }) => isSameIngredient(active.name, ingredient));
      const brought = named.flatMap(({ line, label, amount, active: { concentration } }): readonly Brought[] => {
        const active = activeIngredientIn(amount, concentration, knownDensity(label));
        return active.ok ? [{ line, label, amount, concentration, active: active.value }] : [];
      });
      if (brought.length < named.length || brought.length === 0) return [];
      const grounds = groundsOf(brought, ticket, zoneId);
      return grounds.length === 0 ? [] : [activeWorking({ zoneId, lawnName: name, ingredient, brought, grounds })];
    });
  });
}

/** What goes on one area: everything that goes all over the lawn, or the spot work of one share. */
interface Ground {
  readonly area: Quantity<"area">;
  readonly from: string;
  /** Product by product. */
  readonly parts: readonly ExactQuantity<"mass">[];
  readonly total: ExactQuantity<"mass">;
}

/** The areas on which an ingredient goes, with what of it goes there: all over the lawn, and share by share of spot work. */
function groundsOf(brought: readonly Brought[], { mixes }: MixTicket, zoneId: string): readonly Ground[] {
  const lawnsOf = (line: number) => mixes.filter((mix) => (mix.kind === "granular" ? mix.line === line : mix.products.some((product) => product.line === line))).flatMap((mix) => mix.lawns.filter((lawn) => lawn.zoneId === zoneId));
  const shares = groupedBy(brought, ({ line }) => lawnsOf(line)[0]?.spot?.shareBasisPoints);
  const allOver = mixes.flatMap((mix) => mix.lawns.filter((lawn) => lawn.zoneId === zoneId && lawn.spot === undefined));
  return [...shares].flatMap(([shareBasisPoints, own]): readonly Ground[] => {
    const lawns = shareBasisPoints === undefined ? allOver : own.flatMap(({ line }) => lawnsOf(line));
    const area = lawns.reduce((most, { treatedArea }) => (treatedArea.amount > most.amount ? treatedArea : most), of("sq ft", 0n));
    if (area.amount === 0n) return [];
    const from = shareBasisPoints === undefined ? "the largest of its products" : `spot work on ${shareWords(shareBasisPoints)} of it`;
    const parts = own.map(({ active }) => active);
    return [{ area, from, parts, total: totalOf(parts) }];
  });
}

function totalOf(parts: readonly ExactQuantity<"mass">[]): ExactQuantity<"mass"> {
  return parts.reduce((sum, active) => addExact(sum, active), fromExactAmount("mass", ZERO));
}

interface Asked {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly ingredient: string;
  readonly brought: readonly Brought[];
  readonly grounds: readonly Ground[];
}

function activeWorking({ zoneId, lawnName, ingredient, brought, grounds }: Asked): ActiveWorking {
  const perAcres = grounds.map(({ area, total }) => multiplyExact(total, rational(ACRE.amount, area.amount)));
  const perAcre = totalOf(perAcres);
  const words = formatRate(rateFrom("active-ingredient-mass-per-area", perAcre, ACRE), "us");
  const working: Working = {
    title: `${ingredient} on ${lawnName}`,
    formula: "active ingredient = product × what the label says is in it; over the treated area, for each acre of 43,560 sq ft",
    inputs: [
      ...brought.flatMap((one) => [...amountInputs(one.label, one.amount, isByVolume(one)), strengthInput(one)]),
      ...grounds.map(({ area, from }) => ({ name: "Treated area", figure: inUnit(area, "sq ft"), from: `of ${lawnName}, ${from}` })),
    ],
    steps: [
      ...brought.flatMap(activeSteps),
      ...grounds.flatMap(({ area, parts, total }, index) => [
        ...(parts.length > 1 ? [sumLine(parts, total, "lb")] : []),
        `${inUnit(total, "lb")} ÷ ${inUnit(area, "sq ft")} × 43,560 sq ft = ${inUnit(perAcres[index] ?? perAcre, "lb")}`,
      ]),
      ...(grounds.length > 1 ? [sumLine(perAcres, perAcre, "lb")] : []),
    ],
    result: words,
    source: [...new Set(brought.map(({ label }) => `the label of ${label.productName}`))].join("; "),
  };
  return { zoneId, lawnName, ingredient, words, working };
}

/** What is weighed and has its strength by volume takes its density too. */
function isByVolume({ amount, concentration }: Brought): boolean {
  return amount.dimension === "volume" ? concentration.kind === "part-of-weight" : concentration.kind === "mass-in-volume";
}

function percentOf(part: Rational): Rational {
  return divideRational(part, divideRational(rational(1n), HUNDRED));
}

function strengthInput({ label, concentration }: Brought): WorkingInput {
  const from = `the label of ${label.productName}`;
  if (concentration.kind === "part-of-weight") return { name: `In ${label.productName}`, figure: `${percentWords(percentOf(concentration.part))} of its weight`, from };
  return { name: `In a gallon of ${label.productName}`, figure: inUnit(massOf(of("gal", 1n), concentration.massInVolume), "lb"), from };
}

function activeSteps({ label, amount, concentration, active }: Brought): readonly string[] {
  const result = inUnit(active, "lb");
  if (concentration.kind === "part-of-weight") {
    const weight = weightLine(amount, label.density);
    return weight === undefined ? [] : [...weight.lines, `${inUnit(weight.mass, "lb")} × ${percentWords(percentOf(concentration.part))} = ${result}`];
  }
  const inGallon = inUnit(massOf(of("gal", 1n), concentration.massInVolume), "lb");
  if (amount.dimension === "volume") return [`${inUnit(amount, "fl oz")} ÷ 128 fl oz × ${inGallon} = ${result}`];
  const { density } = label;
  return density === "unknown" ? [] : [`${inUnit(amount, "lb")} ÷ ${inUnit(massOf(of("gal", 1n), density), "lb")} × ${inGallon} = ${result}`];
}
