import { expect, test } from "vitest";
import { bagSettingFor, readBagSettings } from "#domain/equipment/bag-settings";
import { rateOf } from "#domain/quantities/rate";
import { refusalOf, valueOf } from "../../support/domain-answers";

const read = (text: string) => readBagSettings("bagSettings", text);
const TWO = "Meadow 24-0-6; M; 3 lb per 1,000 sq ft\n\n Starter ;5 1/2; 2.75 lb/1,000 sq ft";

test("reads a product, a setting and a rate from each line; nothing from none", () => {
  expect(valueOf(read(TWO))).toEqual([
    { product: "Meadow 24-0-6", setting: "M", rate: rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft") },
    { product: "Starter", setting: "5 1/2", rate: rateOf("product-mass-per-area", "2.75", "lb per 1,000 sq ft") },
  ]);
  expect(valueOf(read("  \n"))).toEqual([]);
});

test("finds a product's line by its name, whatever the case, and none where there is none", () => {
  expect(bagSettingFor(valueOf(read(TWO)), "STARTER")?.setting).toBe("5 1/2");
  expect(bagSettingFor(valueOf(read(TWO)), "meadow  24-0-6")?.setting).toBe("M");
  expect(bagSettingFor(valueOf(read(TWO)), "Meadow")).toBeUndefined();
});

test.each([
  "Meadow; M",
  "Meadow; M; 3 lb per 1,000 sq ft; more",
  "; M; 3 lb per 1,000 sq ft",
  "Meadow; M; 3 gal per 1,000 sq ft",
  "Meadow; M; 0 lb per 1,000 sq ft",
  "Meadow; M; 3 lb per 1,000 sq ft\nmeadow; N; 4 lb per 1,000 sq ft",
  "Meadow; a setting as long as a whole sentence; 3 lb per 1,000 sq ft",
  Array.from({ length: 101 }, (_, line) => `P${String(line)}; M; 3 lb per 1,000 sq ft`).join("\n"),
])("refuses what is no such line: %.60s", (text) => {
  expect(refusalOf(read(text))).toMatchObject({ kind: "bad-input", field: "bagSettings" });
});
