import { type Working, type WorkingInput } from "#domain/foundation/working";
import { activeIngredientIn, type Concentration } from "#domain/quantities/active-ingredient";
import { massOf } from "#domain/quantities/density";
import { type ExactQuantity } from "#domain/quantities/exact-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { of } from "#domain/quantities/quantity";
import { rateFrom } from "#domain/quantities/rate";
import { divideRational, rational, type Rational } from "#domain/quantities/rational";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { knownDensity, type LabelFacts } from "#domain/label/label-facts";
import { amountsOn, type MixTicket } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { amountInputs, percentWords, weightLine } from "#domain/mixing/ticket-working-delivered";
import { type Ground, groundInputs, groundLines, groundsOf } from "#domain/mixing/ticket-working-grounds";
import { inUnit } from "#domain/mixing/ticket-working-words";

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
 * a label's limit is for the ground that gets it. What several products bring adds up, as if spots met, and each counts over
 * its own ground. An ingredient of a product whose density is missing can't be counted; the ticket's own findings say so, and
 * it is left out with a line that says it.
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
      const masses = brought.map(({ line, label, active }) => ({ line, name: label.productName, mass: active }));
      const grounds = groundsOf(masses, ticket.mixes, zoneId, "spots-alone");
      return grounds.length === 0 ? [] : [activeWorking({ zoneId, lawnName: name, ingredient, brought, grounds })];
    });
  });
}

interface Asked {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly ingredient: string;
  readonly brought: readonly Brought[];
  readonly grounds: readonly Ground[];
}

function activeWorking({ zoneId, lawnName, ingredient, brought, grounds }: Asked): ActiveWorking {
  const { lines, total: perAcre } = groundLines(grounds, ACRE);
  const words = formatRate(rateFrom("active-ingredient-mass-per-area", perAcre, ACRE), "us");
  const working: Working = {
    title: `${ingredient} on ${lawnName}`,
    formula: "active ingredient = product × what the label says is in it; over the treated area, for each acre of 43,560 sq ft",
    inputs: [
      ...brought.flatMap((one) => [...amountInputs(one.label, one.amount, isByVolume(one)), strengthInput(one)]),
      ...groundInputs(grounds, lawnName),
    ],
    steps: [...brought.flatMap(activeSteps), ...lines],
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
