import { expect, test } from "vitest";
import { loadsOnPaper, settingWords, stepsOnPaper } from "#domain/papers/loads-on-paper";
import { granularOf, ticketOf, withFeed, withIron, SPREADER } from "../../support/ticket";

test("a spread product is measured out lawn by lawn, with the marks of its tool", () => {
  // 2.5 lb per 1,000 sq ft on 2,000 sq ft, by quarter pounds.
  expect(loadsOnPaper(ticketOf(withFeed({})).mixes)).toEqual([
    { title: "Spread Harrowgate 32", size: "5 lb in all, one hopper · Spreader, setting 14", amounts: [{ product: "Front", amount: "5", unit: "lb", tool: "quarter-pound scale, 20 marks" }] },
  ]);
});

test("a spray says its tank, its water and each product in the order in which it goes in", () => {
  // 1.5 gal and 1.5 fl oz per 1,000 sq ft on 2,000 sq ft.
  const [load] = loadsOnPaper(ticketOf(withIron({})).mixes);
  expect(load).toMatchObject({ title: "Tank 1 of 1", amounts: [{ product: "Rustwater Iron", amount: "3", unit: "fl oz", tool: "half-ounce cup, 6 marks" }] });
  expect(load?.size).toMatch(/^3 gal of mix, 2\.98 gal of it water/u);
});

test("without a tool or a calibration it says so", () => {
  const mixes = ticketOf(withFeed({ tool: "none", gear: { ...SPREADER, setting: "not-calibrated" } })).mixes;
  expect(loadsOnPaper(mixes)[0]).toMatchObject({ size: expect.stringContaining("setting not on file") as string, amounts: [{ tool: "no tool on file, not rounded" }] });
  expect(stepsOnPaper(mixes)[0]?.words).toMatch(/^Find the setting first/u);
});

test("the order of work is the tank's own, then how each product is spread", () => {
  const steps = stepsOnPaper(ticketOf().mixes).map(({ words }) => words);
  expect(steps.some((words) => words.startsWith("Set it to 14, then spread Harrowgate 32 in two passes at half rate"))).toBe(true);
  expect(steps.some((words) => words.startsWith("Put in about half of this load's water"))).toBe(true);
  const mix = granularOf(withFeed({}));
  expect(mix === undefined ? "" : settingWords(mix)).toBe("setting 14");
});
