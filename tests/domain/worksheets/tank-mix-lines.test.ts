import { expect, test } from "vitest";
import { percentByVolume, rateOf } from "#domain/quantities/rate";
import { TANK_MIX_EXAMPLE, tankMixWorksheet } from "#domain/worksheets/tank-mix";
import { mixRateWords } from "#domain/worksheets/tank-mix-lines";
import { stepsOf } from "../../support/worked";

const typed = TANK_MIX_EXAMPLE.typed;

test("an output by the acre: every factor stands in its line", () => {
  expect(stepsOf(tankMixWorksheet(typed)).slice(0, -1)).toEqual([
    "Area per tank: 20 gal ÷ 20 gal × 1 acre = 1 acre.",
    "The same in square feet: 1 acre × 43,560 sq ft = 43,560 sq ft.",
    "Spray for the job: 1½ acres ÷ 1 acre × 20 gal = 30 gal.",
    "Tanks: 30 gal ÷ 20 gal = 1.5.",
    "Full tanks, 1: 20 gal × 1 = 20 gal.",
    "Part tank: 30 gal − 20 gal = 10 gal.",
    "Herbicide: 32 fl oz ÷ 20 gal = 1.6 fl oz in a gallon of spray.",
    "Herbicide, full tank: 20 gal × 1.6 fl oz = 32 fl oz.",
    "Herbicide, part tank: 10 gal × 1.6 fl oz = 16 fl oz.",
    "Herbicide, whole job: 30 gal × 1.6 fl oz = 48 fl oz.",
    "Surfactant: 0.25% v/v × 128 fl oz = 0.32 fl oz in a gallon of spray.",
    "Surfactant, full tank: 20 gal × 0.32 fl oz = 6.4 fl oz.",
    "Surfactant, part tank: 10 gal × 0.32 fl oz = 3.2 fl oz.",
    "Surfactant, whole job: 30 gal × 0.32 fl oz = 9.6 fl oz.",
    "Liquids, full tank: 32 fl oz + 6.4 fl oz = 38.4 fl oz.",
    "Liquids, full tank: 38.4 fl oz ÷ 128 fl oz × 1 gal = 0.3 gal.",
    "Water, full tank: 20 gal − 0.3 gal = 19.7 gal.",
    "Liquids, part tank: 16 fl oz + 3.2 fl oz = 19.2 fl oz.",
    "Liquids, part tank: 19.2 fl oz ÷ 128 fl oz × 1 gal = 0.15 gal.",
    "Water, part tank: 10 gal − 0.15 gal = 9.85 gal.",
    "Liquids, whole job: 48 fl oz + 9.6 fl oz = 57.6 fl oz.",
    "Liquids, whole job: 57.6 fl oz ÷ 128 fl oz × 1 gal = 0.45 gal.",
    "Water, whole job: 30 gal − 0.45 gal = 29.55 gal.",
  ]);
});

test("an output by 1,000 sq ft on acres, with pounds and by the acre, meets on 1,000 sq ft", () => {
  const steps = stepsOf(tankMixWorksheet({ ...typed, tank: "187 gal", carrier: "1.37 gal per 1,000 sq ft", area: "3.3 acres", rate1: "1.3 fl oz per 1,000 sq ft", rate2: "1.7 lb per acre", kind2: "wettable powder" }));
  expect(steps.slice(0, 4)).toEqual([
    "Area per tank: 187 gal ÷ 1.37 gal × 1,000 sq ft = 136,496.35 sq ft.",
    "The same in acres: 136,496.35 sq ft ÷ 43,560 sq ft × 1 acre = 3.1335 acres.",
    "The area: 3.3 acres × 43,560 sq ft = 143,748 sq ft.",
    "Spray for the job: 143,748 sq ft ÷ 1,000 sq ft × 1.37 gal = 196.935 gal.",
  ]);
  expect(steps).toContain("Herbicide: 1.3 fl oz ÷ 1.37 gal = 0.94891 fl oz in a gallon of spray.");
  expect(steps).toContain("Surfactant, in ounces: 1.7 lb × 16 oz wt = 27.2 oz wt per acre.");
  expect(steps).toContain("Surfactant, over the same ground as the spray: 27.2 oz wt ÷ 43,560 sq ft × 1,000 sq ft = 0.62443 oz wt per 1,000 sq ft.");
});

test("less than a tank is one tank that no line calls full or part, and what is weighed takes no room", () => {
  const steps = stepsOf(tankMixWorksheet({ ...typed, area: "1/2 acre", rate1: "1 lb per acre", kind1: "wettable powder", name2: "", rate2: "", kind2: "" }));
  expect(steps.join(" ")).not.toMatch(/full tank|part tank/iu);
  expect(steps).toContain("Water, the tank: 10 gal, since nothing liquid goes in.");
});

test("a rate goes in over the ground that it was typed for", () => {
  expect(mixRateWords(rateOf("product-volume-per-area", "1.3", "gal per acre"), "1.3 gal/acre")).toBe("1.3 gal per acre");
  expect(mixRateWords(rateOf("product-mass-per-area", "2", "oz wt per 1,000 sq ft"), "2 oz wt/1,000")).toBe("2 oz wt per 1,000 sq ft");
  expect(mixRateWords(percentByVolume("0.25"), "0.25% v/v")).toBe("0.25% v/v");
  expect(mixRateWords(percentByVolume("1"), "1 gal per 100 gal")).toBe("1.28 fl oz per gal");
});
