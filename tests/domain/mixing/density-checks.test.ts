import { expect, test } from "vitest";
import { checkDensity, densityOfMix } from "#domain/mixing/density-checks";
import { type SprayMix, type SprayTreatment } from "#domain/mixing/spray-mix";
import { densityFromSpecificGravity, densityIn, densityOf } from "#domain/quantities/density";
import { rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { IRON, rulesOf, SPRAYER, sprayOf, withIron } from "../../support/ticket";
import { saying } from "../../support/said";

const SALT = densityOf("10.65", "lb per gal");
const treatmentOf = (density: SprayTreatment["label"]["density"]): SprayTreatment => ({ ...IRON, label: { ...IRON.label, density }, gear: SPRAYER });
const MIX = sprayOf();

function mixOf(concentration: SprayMix["products"][number]["concentration"], carrier: Partial<SprayMix["carrier"]> = {}): SprayMix {
  if (MIX === undefined) throw new Error("The iron is sprayed.");
  return { ...MIX, carrier: { ...MIX.carrier, ...carrier }, products: MIX.products.map((product) => ({ ...product, concentration })) };
}
const half = rateOf("product-volume-per-spray-volume", "64", "fl oz per gal");
const poundsOf = (mix: SprayMix, density: SprayTreatment["label"]["density"] = SALT) => {
  const found = densityOfMix([treatmentOf(density)], mix);
  return found === undefined ? undefined : toNumber(densityIn(found.density, "lb per gal"));
};

test("a mix weighs what its water and its products weigh, poured or weighed out", () => {
  const water = toNumber(densityIn(densityFromSpecificGravity("1"), "lb per gal"));
  expect(poundsOf(mixOf(half))).toBeCloseTo((water + 10.65) / 2, 9);
  // Half a gallon of it weighs 5.325 lb.
  expect(poundsOf(mixOf(rateOf("product-mass-per-spray-volume", "5.325", "lb per gal")))).toBeCloseTo((water + 10.65) / 2, 9);
});

test("products that leave no room for water weigh what they weigh themselves", () => {
  expect(poundsOf(mixOf(rateOf("product-volume-per-spray-volume", "128", "fl oz per gal")))).toBeCloseTo(10.65, 9);
  expect(poundsOf(mixOf(rateOf("product-volume-per-spray-volume", "200", "fl oz per gal")))).toBeCloseTo(10.65, 9);
});

test("without a product's density nobody knows what a mix weighs, and nothing is said", () => {
  expect(poundsOf(mixOf(half), "unknown")).toBeUndefined();
  expect(checkDensity([treatmentOf("unknown")], mixOf(half))).toEqual([]);
});

test("what has no density on file is taken for water beside what has one, poured or weighed out, and is named", () => {
  const partner = rateOf("product-volume-per-spray-volume", "4", "fl oz per gal");
  const dry = rateOf("product-mass-per-spray-volume", "0.25", "lb per gal");
  const sticker: SprayTreatment = { ...treatmentOf("unknown"), line: 20, label: { ...IRON.label, productName: "Clingwell", density: "unknown" } };
  const alone = mixOf(half);
  for (const concentration of [partner, dry]) {
    const both: SprayMix = { ...alone, products: [...alone.products, ...mixOf(concentration).products.map((product) => ({ ...product, line: 20 }))] };
    const treatments = [treatmentOf(SALT), sticker];
    expect(densityOfMix(treatments, both)).toEqual({ density: densityOfMix([treatmentOf(SALT)], alone)?.density, takenForWater: ["Clingwell"] });
    expect(checkDensity(treatments, both)).toMatchObject([
      { level: "take-care", rule: "calibration-of-another-density", what: saying("6.3% less"), figure: saying("It weighs 9.50 lb a gallon with Clingwell taken for water, whose density is not on file, against 8.35 lb a gallon;") },
    ]);
  }
});

test("a spray that comes over 5% slower than what was caught wants care, with both rates", () => {
  const [finding, ...more] = checkDensity([treatmentOf(SALT)], mixOf(half));
  // The root of 8.3454 over 9.4977 is 0.9374.
  expect(finding).toMatchObject({
    level: "take-care",
    rule: "calibration-of-another-density",
    what: saying("6.3% less"),
    figure: "It weighs 9.50 lb a gallon, against 8.35 lb a gallon; it puts out 1.41 gal per 1,000 sq ft, and the ticket counts with 1½ gal per 1,000 sq ft.",
  });
  expect(more).toEqual([]);
  expect(checkDensity([treatmentOf(SALT)], mixOf(rateOf("product-volume-per-spray-volume", "20", "fl oz per gal")))).toEqual([]);
});

test("calibrated for this weight it is right, and a lighter spray comes faster", () => {
  expect(checkDensity([treatmentOf(SALT)], mixOf(half, { density: densityOf("9.5", "lb per gal") }))).toEqual([]);
  expect(checkDensity([treatmentOf(SALT)], mixOf(half, { density: densityOf("12", "lb per gal") }))[0]).toMatchObject({ what: saying("comes faster") });
});

test("a ticket says it, with the products of its tank", () => {
  const heavy = withIron({ label: { ...IRON.label, density: densityOf("20", "lb per gal") }, rate: rateOf("product-volume-per-area", "64", "fl oz per 1,000 sq ft") });
  expect(rulesOf(heavy)).toContain("take-care calibration-of-another-density");
});
