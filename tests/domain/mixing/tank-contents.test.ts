import fc from "fast-check";
import { expect, test } from "vitest";
import { type LabelFacts } from "#domain/label/label-facts";
import { type MixInTank } from "#domain/mixing/mix-change";
import { changeOfRun, onTopOf, residuesFor, type TankContents } from "#domain/mixing/tank-contents";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON, IRON_LABEL, LAWN, SPRAYER } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

const CONCENTRATION = rateOf("product-volume-per-spray-volume", "1", "fl oz per gal");
const KELP = { ...IRON_LABEL, productName: "Kelp Tonic" };
const DOCK = { ...KELP, productName: "Dockaway", epaRegistrationNumber: { number: "DEMO-0000-4" } };
const productOf = (productId: string, label: LabelFacts = KELP) => ({ productId, productName: label.productName, label, concentration: CONCENTRATION });
const mixOf = (name: string, ...products: readonly ReturnType<typeof productOf>[]): MixInTank => ({ name, products });
const iron = mixOf("fill 9", productOf("iron", IRON_LABEL));
const kelp = mixOf("fill 8", productOf("kelp", KELP));
const dock = mixOf("fill 7", productOf("dock", DOCK));
const run = (...stops: readonly ReturnType<typeof truckStop>[]) => ({ gear: SPRAYER, draws: stops.map(({ visitId, treatments }, stopIndex) => ({ stopIndex, visitId, finished: of("gal", 3n), ground: of("sq ft", 2000n), treatments })) });
const stop = truckStop("a", [IRON]);
const next = { stop, treatments: [IRON], gear: SPRAYER };
const changeAt = (...contents: TankContents) => changeOfRun(contents, run(stop), [stop]);

test("a run is cleaned out for the one of its stops that needs it most; pump and hose run on at its first stop alone", () => {
  const other = { ...truckStop("b", [IRON]), lawns: [{ ...LAWN, grasses: ["bermudagrass" as const] }] };
  expect(changeAt(kelp)).toEqual({ cleaning: "rinse", unwanted: [], mayRunOn: false });
  expect(changeOfRun([kelp], run(stop, other), [stop, other])).toEqual({ cleaning: "clean-out", unwanted: [{ productName: "Kelp Tonic", why: "not-labeled-for-its-turf" }], mayRunOn: false });
  expect(changeOfRun([iron], run(stop, stop), [stop, stop])).toEqual({ cleaning: "none", unwanted: [], mayRunOn: true });
  expect(changeOfRun([kelp], run(stop), [])).toEqual({ cleaning: "none", unwanted: [], mayRunOn: false });
});

test("what another mix followed asks for a clean-out as if it were the last, however many followed, and its tank's line does not run on", () => {
  const unwanted = [{ productName: "Dockaway", why: "pesticide-not-planned" }];
  expect(changeAt(dock)).toMatchObject({ cleaning: "clean-out", unwanted });
  expect(changeAt(iron, dock)).toEqual({ cleaning: "clean-out", unwanted, mayRunOn: false });
  expect(changeAt(iron, kelp, dock)).toEqual({ cleaning: "clean-out", unwanted, mayRunOn: false });
  expect(residuesFor([iron, kelp, dock], next)).toEqual([{ mix: dock, unwanted }]);
});

test("what another mix followed is thinned as by a rinse and asks for no other", () => {
  expect(changeAt(kelp, iron).cleaning).toBe("rinse");
  expect(changeAt(iron, kelp)).toEqual({ cleaning: "none", unwanted: [], mayRunOn: true });
});

test("what nobody knows of is cleaned out", () => {
  expect(changeAt(iron, "unknown")).toEqual({ cleaning: "clean-out", unwanted: [], mayRunOn: false });
  expect(residuesFor([iron, "unknown"], next)).toEqual([]);
});

test("a product is named with the mix that brought it last, and once", () => {
  const again = mixOf("fill 8", productOf("dock", DOCK), productOf("kelp", KELP));
  expect(residuesFor([iron, again, dock], next)).toEqual([{ mix: again, unwanted: [{ productName: "Dockaway", why: "pesticide-not-planned" }] }]);
});

test("a mix is on top of what was there, less mixes of which every product came again", () => {
  expect(onTopOf(iron, [])).toEqual([iron]);
  expect(onTopOf(iron, [kelp, dock, "unknown"])).toEqual([iron, kelp, dock, "unknown"]);
  const both = mixOf("fill A", productOf("iron"), productOf("dock", DOCK));
  expect(onTopOf(both, [kelp, dock, iron])).toEqual([both, kelp]);
});

const PRODUCTS = ["iron", "kelp", "dock", "clover", "moss"];

test("however many mixes follow one another, the contents hold every product that was in the tank, with no more mixes than products", () => {
  fc.assert(
    fc.property(fc.array(fc.uniqueArray(fc.constantFrom(...PRODUCTS), { minLength: 1 }), { minLength: 1, maxLength: 60 }), (fillings) => {
      const contents = fillings.reduce<TankContents>((below, products, index) => onTopOf(mixOf(String(index), ...products.map((productId) => productOf(productId))), below), []);
      const lastWith = new Map(fillings.flatMap((products, index) => products.map((productId) => [productId, String(index)] as const)));
      const found = contents.flatMap((mix) => (mix === "unknown" ? [] : mix.products.map(({ productId }) => [productId, mix.name] as const))).toReversed();
      expect(new Map(found)).toEqual(lastWith);
      expect(contents.length).toBeLessThanOrEqual(PRODUCTS.length);
    }),
  );
});
