import { expect, test } from "vitest";
import { unreadFindings } from "#domain/mixing/unread-facts";
import { appliedOf, CHICAGO, earlierOf, labelOf, START } from "../../support/aftercare-builders";

const label = labelOf("Harrowgate 32", { "mowing-before": "unknown", "watering-in": "unknown", "mowing-after": "unknown" });
const whatOf = (...products: Parameters<typeof unreadFindings>[0]) => unreadFindings(products, CHICAGO).map(({ level, what }) => `${level}: ${what}`);

test("each product that nobody has read in full is a hold that says what is missing, in the order of their names", () => {
  expect(whatOf(appliedOf(label), appliedOf(labelOf("Alpha", { "seeding-after": "unknown" })), appliedOf(labelOf("Read")))).toEqual([
    expect.stringMatching(/^hold: For Alpha it has not been entered from its label /u),
    expect.stringMatching(/^hold: For Harrowgate 32 it has not been entered from its label .*; .*; .*\.$/u),
  ]);
});

test("of an earlier product what only mattered as it went down is asked no more, nor how to water in what was", () => {
  const factsOf = (change: Parameters<typeof earlierOf>[2]) => whatOf(earlierOf(label, START, change)).map((what) => what.split("; ").length);
  expect(factsOf({})).toEqual([2]);
  expect(factsOf({ wateredInAtEpochMilliseconds: START })).toEqual([1]);
});
