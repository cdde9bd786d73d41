import { listProducts } from "#application/products/list-products";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { labelRangeWords } from "#domain/scheduling/planned-rate";
import { asMember } from "../../session";
import { type ProductChoice } from "./treatment-row.client";

/** Every use of every product whose label is confirmed and that is not retired, by product and use. */
export async function productChoices(): Promise<readonly ProductChoice[]> {
  const answer = await asMember(listProducts, {});
  if (!answer.ok) return [];
  return answer.value.products.flatMap(({ productId, name, retiredAt, label }) => {
    const facts = label.confirmed?.facts;
    if (facts === undefined || retiredAt !== null) return [];
    return facts.uses.map(({ useName, rates }) => ({
      key: productUseKey(productId, useName),
      words: `${name}: ${useName} (${labelRangeWords(rates)})`,
      rates,
      facts: { productName: name, analysis: facts.analysis, density: facts.density },
    }));
  });
}
