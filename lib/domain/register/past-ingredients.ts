import { type ActiveIngredient, knownDensity, type LabelFacts, type ProductRate } from "#domain/label/label-facts";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { rateOver } from "#domain/mixing/spray-mix";
import { type PastApplication, type PastIngredient, type PastRate } from "#domain/mixing/ticket-question";
import { activeIngredientRate, type Concentration } from "#domain/quantities/active-ingredient";
import { fromAmount } from "#domain/quantities/quantity";
import { rateFromAmounts } from "#domain/quantities/rate";
import { type RecordedLawnAmount, type RecordedTreatment } from "#domain/register/record-content";

/** What a lawn got of a product, per area; undefined where no ground was treated. */
export function recordedRate({ amount, treatedArea }: RecordedLawnAmount): ProductRate | undefined {
  const area = fromAmount("area", BigInt(treatedArea.amount));
  if (area.amount === 0n) return undefined;
  return rateOver(fromAmount(amount.dimension === "mass" ? "mass" : "volume", BigInt(amount.amount)), area);
}

/**
 * The active ingredients that a record has a lawn get. Amounts are the record's own. What could not be counted when it was
 * written is counted by the product's label as it is on file now, and is not countable, or unknown, while that can't be
 * either: nothing that went down is taken for none.
 * @param facts the product's label as it is on file now, if there is one
 */
export function pastIngredients(treatment: RecordedTreatment, lawn: RecordedLawnAmount, facts: LabelFacts | undefined): PastApplication["activeIngredients"] {
  const onLabel = facts === undefined ? "unknown" : facts.activeIngredients;
  const rateOf = partsOn(lawn, facts);
  const counted = lawn.activeIngredients.map(({ name, amount, per }): PastIngredient => {
    const rate = rateFromAmounts("active-ingredient-mass-per-area", BigInt(amount), BigInt(per));
    return { name, rate, ...fromLabel(namedOn(onLabel, name), rateOf) };
  });
  const missing = notCountableIn(treatment, lawn);
  if (missing === "not-read" && onLabel === "unknown") return "unknown";
  const names = missing === "not-read" ? onLabel === "unknown" ? [] : onLabel.map(({ name }) => name) : missing;
  return [...counted, ...names.map((name) => countedNow(name, namedOn(onLabel, name), rateOf))];
}

/** What a record says that it could not count. Of one that was written before this was kept, what it names without an amount. */
function notCountableIn({ notCountable, activeIngredients }: RecordedTreatment, lawn: RecordedLawnAmount): readonly string[] | "not-read" {
  if (notCountable !== undefined) return notCountable;
  if (activeIngredients.length === 0) return "not-read";
  return activeIngredients.filter((name) => !lawn.activeIngredients.some((counted) => counted.name === name));
}

function namedOn(ingredients: LabelFacts["activeIngredients"], name: string): ActiveIngredient | undefined {
  return ingredients === "unknown" ? undefined : ingredients.find((active) => isSameIngredient(active.name, name));
}

/** What a part of the product comes to on the lawn. */
type RateOfPart = (part: Concentration) => PastRate;

function countedNow(name: string, active: ActiveIngredient | undefined, rateOf: RateOfPart): PastIngredient {
  return { name, rate: active === undefined ? "not-countable" : rateOf(active.concentration), ...fromLabel(active, rateOf) };
}

/** What a record holds neither of: the resistance group, and what the ingredient comes to as its acid. */
function fromLabel(active: ActiveIngredient | undefined, rateOf: RateOfPart): Pick<PastIngredient, "modeOfAction" | "acid"> {
  if (active === undefined) return { modeOfAction: "unknown" };
  const { modeOfAction, acid } = active;
  return acid === undefined ? { modeOfAction } : { modeOfAction, acid: { name: acid.name, rate: rateOf(acid.equivalent) } };
}

function partsOn(lawn: RecordedLawnAmount, facts: LabelFacts | undefined): RateOfPart {
  const rate = recordedRate(lawn);
  const density = facts === undefined ? undefined : knownDensity(facts);
  return (part) => {
    const counted = rate === undefined ? undefined : activeIngredientRate(rate, part, density);
    return counted?.ok === true ? counted.value : "not-countable";
  };
}
