import { expect, test } from "vitest";
import { INDIANA } from "#domain/rules/packs/indiana";

const { facts } = INDIANA;

test("the pack is Indiana's and names its edition and agency", () => {
  expect(INDIANA).toMatchObject({ state: "IN", edition: expect.stringMatching(/^IN \d{4}-\d{2}$/u) as string, leadAgency: "Office of Indiana State Chemist" });
});

// 357 IAC 1-5-2, read.
test("357 IAC 1-5-2: at least 4 in by 5 in, letters of 3/8 in, nonmetallic, 6 to 18 in above the turf, down no sooner than the next day", () => {
  expect(facts["posting-sign"]).toMatchObject({
    standing: "read",
    value: {
      longSide: { value: "5", unit: "in" },
      shortSide: { value: "4", unit: "in" },
      size: "at-least",
      leastLetterHeight: { value: "0.375", unit: "in" },
      words: ["LAWN CARE APPLICATION", "KEEP OFF THE GRASS"],
      placement: expect.stringContaining("6 to 18 in") as string,
      support: "nonmetallic",
      upTrigger: "at-time-of-application",
      downDaysFollowing: 1,
    },
  });
});

// 355 IAC 4-4-1 (November 6, 2024); Ind. Code 15-16-5-59, read.
test("355 IAC 4-4-1: fourteen elements with start and stop times, kept for 2 years", () => {
  expect(facts["record-elements"]).toMatchObject({ value: expect.arrayContaining(["start time", "stop time", "principal pests", "EPA registration number"]) as string[] });
  expect(facts["record-elements"].onFile && facts["record-elements"].value).toHaveLength(14);
  expect(facts["record-years"]).toMatchObject({ value: 2 });
});

// Office of Indiana State Chemist, Lawn Posting and Notification Requirements.
test("the customer's statement has the seven things that the state's chemist names", () => {
  expect(facts["customer-statement"].onFile && facts["customer-statement"].value).toHaveLength(7);
});

test("no text was read on fertilizer, and the pack says so of every rule on it", () => {
  for (const rule of ["phosphorus", "distance-to-water", "frozen-or-saturated-ground", "hard-surfaces", "phosphate-per-application", "phosphate-per-year", "nitrogen-per-application", "nitrogen-per-year", "blackout-dates"] as const) {
    expect(facts[rule]).toMatchObject({ onFile: false, standing: "unverified", whereToLook: expect.stringMatching(/\S/u) as string });
  }
});
