import { expect, test } from "vitest";
import { type CostOfVisit } from "#application/visits/cost-of-visit";
import { of } from "#domain/quantities/quantity";
import { type CostOfNamedProduct, costOfTaken, priceOfLot } from "#domain/stock/cost-of-product";
import { CostOfProducts } from "../../app/(office)/visits/[visitId]/cost-of-products";
import { markupOf, tableRowsOf } from "./read-markup";

const SIZE = of("lb", "50").amount;
const lot = (number: string, paidPerContainerCents: bigint | null) => ({
  lot: { lotId: number, number, containerSize: SIZE, price: priceOfLot([{ amount: SIZE, paidPerContainerCents }]) },
  amount: of("lb", "20").amount,
});
const product = (productName: string, cost: CostOfNamedProduct["cost"]): CostOfNamedProduct => ({ productId: productName, productName, quantity: of("lb", "40"), cost });

const COST: CostOfVisit = {
  basis: "lots-to-open",
  products: [
    product("Greenmere", costOfTaken("mass", [lot("GM-1", 3125n), lot("MG-1", null)])),
    product("Wardlow", costOfTaken("mass", [lot("WD-1", 1000n)])),
    product("Fieldrow", costOfTaken("mass", [])),
    product("Ironside", "counted-by-another-measure"),
  ],
};

test("each product with its lots and its cost, then the sum with what has no price", () => {
  const markup = markupOf(<CostOfProducts cost={COST} />);
  expect(tableRowsOf(markup)).toEqual([
    ["Greenmere", "20 lb of GM-1, 20 lb of MG-1", "$12.50 and more"],
    ["Wardlow", "20 lb of WD-1", "$4.00"],
    ["Fieldrow", "none on hand", "not known"],
    ["Ironside", "not known", "not known"],
  ]);
  expect(markup).toContain("Cost of product: $16.50; 20 lb of lot MG-1 has no price on file and 40 lb of Ironside is planned by another measure than it is counted by.");
  expect(markup).toContain("By the lots that will be opened for it");
  expect(markupOf(<CostOfProducts cost={{ ...COST, basis: "lots-put-down" }} />)).toContain("By the lots that the record took down.");
});

test("whoever may not see money sees nothing at all", () => {
  expect(markupOf(<CostOfProducts cost={undefined} />)).toBe("");
});
