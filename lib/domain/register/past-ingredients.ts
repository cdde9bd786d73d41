import { type ActiveIngredient, type LabelFacts, type ProductRate } from "#domain/label/label-facts";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { type PastApplication, type PastIngredient, type PastRate } from "#domain/mixing/ticket-question";
import { activeIngredientRate, type Concentration } from "#domain/quantities/active-ingredient";
import { fromAmount } from "#domain/quantities/quantity";
import { rateFrom, rateFromAmounts } from "#domain/quantities/rate";
import { type RecordedLawnAmount, type RecordedTreatment } from "#domain/register/record-content";

/** What a lawn got of a product, per area; undefined where no ground was treated. */
export function recordedRate({ amount, treatedArea }: RecordedLawnAmount): ProductRate | undefined {
  const area = fromAmount("area", BigInt(treatedArea.amount));
  if (area.amount === 0n) return undefined;
  if (amount.dimension === "mass") return rateFrom("product-mass-per-area", fromAmount("mass", BigInt(amount.amount)), area);
  return rateFrom("product-volume-per-area", fromAmount("volume", BigInt(amount.amount)), area);
}

/**
 * The active ingredients that a record has a lawn get. Amounts are the record's own. What could not be counted when it was
 * written is counted by the product's label as it is on file now, and is not countable, or unknown, while that can't be
 * either: nothing that went down is taken for none.
 * @param facts the product's label as it is on file now, if there is one
 */
export function pastIngredients(treatment: RecordedTreatment, lawn: RecordedLawnAmount, facts: LabelFacts | undefined): PastApplication["activeIngredients"] {
  const onLabel = facts === undefined ? "unknown" : facts.activeIngredients;
  const counted = lawn.activeIngredients.map(({ name, amount, per }): PastIngredient => {
    const rate = rateFromAmounts("active-ingredient-mass-per-area", BigInt(amount), BigInt(per));
    return { name, rate, ...fromLabel(lawn, namedOn(onLabel, name), facts) };
  });
  const missing = notCountableIn(treatment, lawn);
  if (missing === "not-read" && onLabel === "unknown") return "unknown";
  const names = missing === "not-read" ? onLabel === "unknown" ? [] : onLabel.map(({ name }) => name) : missing;
  return [...counted, ...names.map((name) => countedNow(name, lawn, namedOn(onLabel, name), facts))];
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

function countedNow(name: string, lawn: RecordedLawnAmount, active: ActiveIngredient | undefined, facts: LabelFacts | undefined): PastIngredient {
  return { name, rate: active === undefined ? "not-countable" : rateOfPart(lawn, active.concentration, facts), ...fromLabel(lawn, active, facts) };
}

/** What a record holds neither of: the resistance group, and what the ingredient comes to as its acid. */
function fromLabel(lawn: RecordedLawnAmount, active: ActiveIngredient | undefined, facts: LabelFacts | undefined): Pick<PastIngredient, "modeOfAction" | "acid"> {
  if (active === undefined) return { modeOfAction: "unknown" };
  const { modeOfAction, acid } = active;
  return acid === undefined ? { modeOfAction } : { modeOfAction, acid: { name: acid.name, rate: rateOfPart(lawn, acid.equivalent, facts) } };
}

function rateOfPart(lawn: RecordedLawnAmount, part: Concentration, facts: LabelFacts | undefined): PastRate {
  const rate = recordedRate(lawn);
  const density = facts === undefined || facts.density === "unknown" ? undefined : facts.density;
  const counted = rate === undefined ? undefined : activeIngredientRate(rate, part, density);
  return counted?.ok === true ? counted.value : "not-countable";
}
