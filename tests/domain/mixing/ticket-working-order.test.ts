import { expect, test } from "vitest";
import { FORMULATIONS } from "#domain/label/label-facts";
import { inMixingOrder, type SprayTreatment } from "#domain/mixing/spray-mix";
import { isSprayed } from "#domain/mixing/ticket-question";
import { mixingOrderWorking } from "#domain/mixing/ticket-working-order";
import { IRON } from "../../support/ticket";

const productOf = (productName: string, label: Partial<(typeof IRON)["label"]>) => ({ ...IRON, label: { ...IRON.label, productName, ...label } });
const REGISTERED = { analysis: "none", epaRegistrationNumber: { number: "DEMO-0000-1" } } as const;

test("each product with the reason for its place, in the order of the tank", () => {
  const treatments = inMixingOrder(
    [IRON, productOf("Oil", { ...REGISTERED, formulation: "emulsifiable concentrate" }), productOf("Bags", { ...REGISTERED, formulation: "water-soluble bag" })].filter(isSprayed),
  );
  const working = mixingOrderWorking(treatments);
  expect(working.result).toBe("Bags, then Rustwater Iron, then Oil");
  expect(working.steps).toEqual([
    "Bags: bags that dissolve go in first and must dissolve whole.",
    "Rustwater Iron: a fertilizer that is no pesticide goes in before everything but bags.",
    "Oil: oils go in after solutions, else they coat what is still dry.",
  ]);
  expect(working.source).toContain("Manitoba Guide to Crop Protection");
  expect(working.source).not.toContain("memory");
});

test("every formulation has a reason of its own, and a place from memory says so", () => {
  const each = FORMULATIONS.map((formulation) => productOf(formulation, { ...REGISTERED, formulation })).filter((one): one is SprayTreatment => isSprayed(one));
  const { steps, source } = mixingOrderWorking(each);
  expect(new Set(steps.map((step) => step.split(": ")[1])).size).toBe(FORMULATIONS.length);
  expect(source).toContain("the place of soluble powder and suspo-emulsion is from memory");
});

test("a product alone has no order", () => {
  expect(mixingOrderWorking([IRON].filter(isSprayed)).result).toBe("Rustwater Iron alone");
});
