import { expect, test } from "vitest";
import { isLeftOverOf, isOnTopFor } from "#domain/mixing/left-over-mix";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { IRON, SPRAYER } from "../../support/ticket";

// 1.5 fl oz in 1.5 gal per 1,000 sq ft: an ounce in every gallon, to half an ounce in the whole fill.
const treatment = { ...IRON, gear: SPRAYER, tool: { name: "Cup", mark: exactly("fl oz", "0.5") } } as const;
const filled = (fluidOunces: string, productId = IRON.productId) => ({
  finished: of("gal", 40n), products: [{ productId, productName: "Rustwater Iron", label: IRON.label, amount: of("fl oz", fluidOunces) }],
});

test("what is left of the same products within 2 % or a mark of the plan's strength is the mix, and nothing else", () => {
  expect(["40", "39.75", "40.25", "38", "42"].map((amount) => isLeftOverOf(filled(amount), [treatment]))).toEqual([true, true, true, false, false]);
  expect(isLeftOverOf(filled("40", "kelp"), [treatment])).toBe(false);
  expect(isLeftOverOf(filled("40"), [treatment, { ...treatment, line: 9, productId: "kelp" }])).toBe(false);
  expect(isLeftOverOf(filled("40"), [])).toBe(false);
});

test("what is stronger by more than 2 % than the label lets it be there is not", () => {
  const { rates } = treatment.use;
  const asPlanned = { ...treatment, use: { ...treatment.use, rates: { ...rates, high: treatment.rate } as typeof rates } };
  expect(["40", "40.8", "41"].map((amount) => isLeftOverOf(filled(amount), [asPlanned]))).toEqual([true, true, false]);
});

test("what lies under another mix is not on top, whatever that has left", () => {
  const layers = (...amounts: readonly string[]) => amounts.map((amount) => filled(amount));
  expect([layers("40"), layers("40", "40.25"), layers("40", "80"), layers("40", "80", "40")].map((own) => isOnTopFor(own, [treatment]))).toEqual([true, true, false, false]);
});
