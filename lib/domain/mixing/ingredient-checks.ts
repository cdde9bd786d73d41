import { type Finding, hold } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { takesDensity } from "#domain/quantities/active-ingredient";
import { type ActiveIngredient } from "#domain/label/label-facts";
import { isSaidByLimit } from "#domain/mixing/season-limits";
import { type TicketTreatment } from "#domain/mixing/ticket-question";

/** The ingredients of a product that can't be counted, measured as its rate measures it: what stands between is a density that is not on file. */
export function uncountableIn({ label: { density, activeIngredients }, rate }: Pick<TicketTreatment, "label" | "rate">): readonly ActiveIngredient[] {
  if (density !== "unknown" || activeIngredients === "unknown" || activeIngredients.length === 0) return [];
  const dimension = rate.basis === "product-mass-per-area" ? "mass" : "volume";
  return activeIngredients.filter(({ concentration }) => takesDensity(dimension, concentration));
}

/** Why ingredients of a product are not counted: "Clearfen is measured by volume, and its label states what is in it by weight; its density is not on file." */
export function uncountableWords(productName: string, dimension: "mass" | "volume"): string {
  const [measured, stated] = dimension === "mass" ? ["by weight", "by volume"] : ["by volume", "by weight"];
  return `${productName} is measured ${measured}, and its label states what is in it ${stated}; its density is not on file.`;
}

/**
 * The hold for active ingredients of a treatment that can't be counted, once for the product: a sum without them is no
 * sum. What a limit over time already says is not said again, and ingredients that nobody has read are said by the label's own check.
 */
export function checkIngredients(treatment: TicketTreatment, treatments: readonly TicketTreatment[]): readonly Finding[] {
  const uncountable = uncountableIn(treatment);
  if (uncountable.length === 0) return [];
  const dimension = treatment.rate.basis === "product-mass-per-area" ? "mass" : "volume";
  const open = uncountable.filter((active) => !isSaidByLimit(treatment, active, active.acid !== undefined && !takesDensity(dimension, active.acid.equivalent), treatments));
  if (open.length === 0) return [];
  const { productName } = treatment.label;
  return [
    hold("office", {
      rule: "active-ingredient-not-countable",
      source: "house",
      what: `How much ${listWords(open.map(({ name }) => name))} goes down with ${productName} can't be counted.`,
      figure: uncountableWords(productName, dimension),
      toDo: "Enter its density from the label or the safety data sheet.",
      about: [productName],
    }),
  ];
}
