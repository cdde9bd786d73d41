import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { type LabelFacts } from "#domain/label/label-facts";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";

/**
 * The order of work at a tank in sentences, for products in mixing order and the water of each load, or of the one fill.
 * Half of the water goes in first, by what the load itself takes: a small load in a large tank is less than half a tank.
 * Common practice (half the water first, agitation); a label's own order wins.
 */
export function mixingSteps(products: readonly Pick<LabelFacts, "productName" | "formulation">[], waters: readonly Quantity<"volume">[], of: "load" | "fill"): readonly string[] {
  return [
    `Put in about half of ${halfWords(waters, of)} and start the agitation.`,
    ...products.map(({ productName, formulation }) => `Add ${productName} (${formulation}); let it mix in before the next.`),
    "Fill up with water to the finished volume; keep the agitation on until the tank is empty.",
  ];
}

/** The water that goes in before the first product. */
export function halfOf({ amount }: Quantity<"volume">): Quantity<"volume"> {
  return fromAmount("volume", amount / 2n);
}

/** "this load's water (19 fl oz)"; loads of several sizes each with their own figure. */
function halfWords(waters: readonly Quantity<"volume">[], of: "load" | "fill"): string {
  const halves = waters.map((water, index) => ({ load: String(index + 1), half: formatQuantity(halfOf(water), "us") }));
  const [first, ...others] = groupedBy(halves, ({ half }) => half);
  if (first === undefined) return `the ${of}'s water`;
  if (others.length === 0) return waters.length === 1 ? `this ${of}'s water (${first[0]})` : `each ${of}'s water (${first[0]})`;
  const parts = [first, ...others].map(([half, own]) => `${half} in ${own.length === 1 ? of : `${of}s`} ${listWords(own.map(({ load }) => load))}`);
  return `each ${of}'s water (${parts.join("; ")})`;
}
