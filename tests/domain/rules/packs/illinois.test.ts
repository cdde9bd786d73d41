import { expect, test } from "vitest";
import { ILLINOIS } from "#domain/rules/packs/illinois";

const { facts } = ILLINOIS;

test("the pack is Illinois's and names its edition and agency", () => {
  expect(ILLINOIS).toMatchObject({ state: "IL", edition: expect.stringMatching(/^IL \d{4}-\d{2}$/u) as string, leadAgency: "Illinois Department of Agriculture" });
});

// 415 ILCS 65/5a, https://www.ilga.gov/legislation/ilcs/documents/041500650K5a.htm, read.
test("415 ILCS 65/5a: soil test within 36 months, two growing seasons, 3 ft and 15 ft, frozen or saturated, hard surfaces", () => {
  expect(facts.phosphorus).toMatchObject({ value: { testWithinMonths: 36, newLawnGrowingSeasons: 2 } });
  expect(facts["distance-to-water"]).toMatchObject({ value: { withDeflector: { value: "3", unit: "ft" }, otherwise: { value: "15", unit: "ft" } } });
  expect(facts["frozen-or-saturated-ground"]).toMatchObject({ value: "forbidden" });
  expect(facts["hard-surfaces"]).toMatchObject({ value: "clean-up-at-once" });
  for (const rule of ["phosphorus", "distance-to-water", "frozen-or-saturated-ground", "hard-surfaces"] as const) {
    expect(facts[rule]).toMatchObject({ onFile: true, standing: "read", citation: expect.stringContaining("415 ILCS 65/5a") as string });
  }
});

// 415 ILCS 65/3(a), read.
test("415 ILCS 65/3(a): a white sign of 4 in by 5 in, letters of 3/8 in, up right after, down the day after", () => {
  expect(facts["posting-sign"]).toMatchObject({
    citation: "415 ILCS 65/3(a)",
    value: {
      longSide: { value: "5", unit: "in" },
      shortSide: { value: "4", unit: "in" },
      leastLetterHeight: { value: "0.375", unit: "in" },
      words: ["LAWN CARE APPLICATION", "STAY OFF GRASS UNTIL DRY", "FOR MORE INFORMATION CONTACT:", "{name}", "{phone}"],
      upTrigger: "immediately-following",
      downDaysFollowing: 1,
    },
  });
});

test("no text was read on caps of nitrogen and phosphate, dates without fertilizer and records, and the pack says so", () => {
  for (const rule of ["phosphate-per-application", "phosphate-per-year", "nitrogen-per-application", "nitrogen-per-year", "blackout-dates", "record-elements", "record-years", "customer-statement"] as const) {
    expect(facts[rule]).toMatchObject({ onFile: false, standing: "unverified" });
  }
});
