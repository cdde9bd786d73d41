import { listWords } from "#domain/foundation/list-words";
import { type Working, type WorkingInput } from "#domain/foundation/working";
import { activeIngredientIn, type Concentration, takesDensity } from "#domain/quantities/active-ingredient";
import { massOf } from "#domain/quantities/density";
import { type ExactQuantity } from "#domain/quantities/exact-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { of } from "#domain/quantities/quantity";
import { rateFrom } from "#domain/quantities/rate";
import { divideRational, rational, type Rational } from "#domain/quantities/rational";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { knownDensity, type LabelFacts } from "#domain/label/label-facts";
import { uncountableWords } from "#domain/mixing/ingredient-checks";
import { amountsOn, type MixTicket } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { amountInputs, percentWords, weightLine } from "#domain/mixing/ticket-working-delivered";
import { groundInputs, groundLines, groundsOf } from "#domain/mixing/ticket-working-grounds";
import { inUnit } from "#domain/mixing/ticket-working-words";

/** What one lawn gets of one active ingredient with the visit, over all products, and how that comes about. */
export interface ActiveWorking {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly ingredient: string;
  /** Whether all of it is counted; of what is only in part the words say at least how much it is. */
  readonly counted: "all" | "in-part" | "nothing";
  /** "0.483 lb per acre", "at least 0.483 lb per acre", "not countable: density of Clearfen". */
  readonly words: string;
  readonly working: Working;
}

const ACRE = of("acre", 1n);
const HUNDRED = rational(100n);

/** One product that goes on a lawn. */
interface Put {
  readonly line: number;
  readonly label: LabelFacts;
  readonly amount: ProductAmount;
}

interface Named extends Put {
  readonly concentration: Concentration;
}

interface Brought extends Named {
  readonly active: ExactQuantity<"mass">;
}

/**
 * The active ingredients that go down on each lawn, per acre of what is treated: of spot work per acre of its spots, because
 * a label's limit is for the ground that gets it. What several products bring adds up, as if spots met, and each counts over
 * its own ground. What can't be counted for want of a density, or may be in a product that nobody has read, takes nothing
 * off: the rest is at least so much, and the way to it says what is missing.
 */
export function activeWorkings(question: TicketQuestion, ticket: MixTicket): readonly ActiveWorking[] {
  return ticket.delivered.flatMap(({ zoneId, name }) => {
    const put = amountsOn(zoneId, ticket.mixes).flatMap(({ line, amount }) => question.treatments.filter((one) => one.line === line).map(({ label }): Put => ({ line, label, amount })));
    const unread = put.filter(({ label }) => label.activeIngredients === "unknown");
    const named = put.flatMap((one) => (one.label.activeIngredients === "unknown" ? [] : one.label.activeIngredients.map((active) => ({ name: active.name, product: { ...one, concentration: active.concentration } }))));
    const names = named.map((one) => one.name);
    const own = names.filter((one, index) => names.findIndex((other) => isSameIngredient(one, other)) === index);
    return own.flatMap((ingredient) => {
      const products = named.filter((one) => isSameIngredient(one.name, ingredient)).map(({ product }) => product);
      return workingOf({ zoneId, lawnName: name, ingredient, products, unread }, ticket.mixes);
    });
  });
}

interface Asked {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly ingredient: string;
  readonly products: readonly Named[];
  readonly unread: readonly Put[];
}

function workingOf({ zoneId, lawnName, ingredient, products, unread }: Asked, mixes: MixTicket["mixes"]): readonly ActiveWorking[] {
  const brought = products.flatMap((one): readonly Brought[] => {
    const active = activeIngredientIn(one.amount, one.concentration, knownDensity(one.label));
    return active.ok ? [{ ...one, active: active.value }] : [];
  });
  const uncounted = products.filter((one) => one.amount.amount > 0n && one.label.density === "unknown" && isByDensity(one));
  const grounds = groundsOf(brought.map(({ line, label, active }) => ({ line, name: label.productName, mass: active })), mixes, zoneId);
  if (grounds.length === 0 && uncounted.length === 0) return [];
  const { lines, total: perAcre } = groundLines(grounds, ACRE);
  const counted = grounds.length === 0 ? "nothing" : uncounted.length + unread.length > 0 ? "in-part" : "all";
  const rate = formatRate(rateFrom("active-ingredient-mass-per-area", perAcre, ACRE), "us");
  const words = { all: rate, "in-part": `at least ${rate}`, nothing: `not countable: density of ${listWords(namesOf(uncounted))}` }[counted];
  const working: Working = {
    title: `${ingredient} on ${lawnName}`,
    formula: "active ingredient = product × what the label says is in it; over the treated area, for each acre of 43,560 sq ft",
    inputs: [...products.flatMap((one) => [...amountInputs(one.label, one.amount, isByDensity(one)), strengthInput(one)]), ...groundInputs(grounds, lawnName)],
    steps: [
      ...uncounted.map(({ label, amount }) => `${uncountableWords(label.productName, amount.dimension)} It is not counted.`),
      ...namesOf(unread).map((name) => `Nobody has read which active ingredients ${name} has. It is not counted.`),
      ...brought.flatMap(activeSteps),
      ...lines,
    ],
    result: words,
    source: namesOf(products).map((name) => `the label of ${name}`).join("; "),
  };
  return [{ zoneId, lawnName, ingredient, counted, words, working }];
}

function namesOf(products: readonly Put[]): readonly string[] {
  return [...new Set(products.map(({ label }) => label.productName))];
}

/** What is weighed and has its strength by volume takes its density too, and what is poured and has it by weight. */
function isByDensity({ amount, concentration }: Named): boolean {
  return takesDensity(amount.dimension, concentration);
}

function percentOf(part: Rational): Rational {
  return divideRational(part, divideRational(rational(1n), HUNDRED));
}

function strengthInput({ label, concentration }: Named): WorkingInput {
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
