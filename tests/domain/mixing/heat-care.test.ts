import { describe, expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { careInHeat, careWithoutForecast } from "#domain/mixing/heat-care";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { gradeOf } from "#domain/turf/nutrients";
import { type EnteredHigh } from "#domain/weather/forecast-high";
import { feeding, slow, withAnalysis } from "../../support/feeds";
import { IRON, LAWN, QUESTION } from "../../support/ticket";

const COOL = "take-care heat-on-cool-season-turf";
const WARM = "take-care heat-on-warm-season-turf";
const NOT_JUDGED = "note coming-heat-not-judged";
const on = "2026-05-01" as CalendarDate;

function found(treatment: TicketTreatment, highs: readonly [number, ...EnteredHigh[]], grasses: TicketQuestion["lawns"][number]["grasses"] = ["tall fescue"]) {
  const [forecastHighF, ...followingHighsF] = highs;
  return careInHeat({ ...QUESTION, on, lawns: [{ ...LAWN, grasses }], treatments: [treatment] }, { date: on, forecastHighF, followingHighsF });
}
const rules = (...asked: Parameters<typeof found>) => found(...asked).map(({ level, rule }) => `${level} ${rule}`);
/** The lowest high from which on a treatment wants care. */
const fromF = (treatment: TicketTreatment, grasses: TicketQuestion["lawns"][number]["grasses"] = ["tall fescue"]) =>
  Array.from({ length: 60 }, (_, index) => 60 + index).find((high) => rules(treatment, [high, 50, 50, 50], grasses).length > 0);

// Common practice: cool-season turf gets feed and iron in the 70s F and waits in the 80s.
describe("the high from which on feed and iron want care", () => {
  test.each([
    // 0.7 lb is the most soluble nitrogen at a time in Maryland and Florida; 0.2 lb the least feeding of NC State.
    ["0.7", 75],
    ["0.9", 75],
    ["0.69", 80],
    ["0.4", 80],
    ["0.21", 80],
    ["0.2", 85],
    ["0.1", 85],
  ] as const)("%s lb of quick nitrogen per 1,000 sq ft on cool-season turf: %s °F", (pounds, expected) => expect(fromF(feeding(pounds))).toBe(expected));

  test("only the quick part of the nitrogen counts, and what no label states the release of is quick", () => {
    expect(fromF(feeding("0.9", slow("50")))).toBe(80);
    expect(fromF(feeding("0.9", slow("80")))).toBe(85);
    expect(fromF(feeding("0.9", { kind: "not-stated" }))).toBe(75);
    // Purdue AY-22: slow-release nitrogen rarely burns even above 85 °F.
    expect(fromF(feeding("0.9", slow("100")))).toBeUndefined();
  });

  test("warm-season turf waits by its own setting, a mixture with a cool-season grass and a grass that nobody entered by the other", () => {
    expect(fromF(feeding("0.4"), ["zoysiagrass"])).toBe(90);
    expect(fromF(feeding("0.8"), ["zoysiagrass"])).toBe(85);
    expect(fromF(feeding("0.1"), ["zoysiagrass"])).toBe(95);
    expect(rules(feeding("0.4"), [90, 50, 50, 50], ["zoysiagrass"])).toEqual([WARM]);
    expect(fromF(feeding("0.4"), ["zoysiagrass", "tall fescue"])).toBe(80);
    expect(fromF(feeding("0.4"), [])).toBe(80);
  });

  test("iron waits as usual, however little nitrogen comes with it, and with a full rate of it earlier", () => {
    expect(fromF(IRON)).toBe(80);
    expect(fromF(feeding("0.1", slow("0"), gradeOf("10", "0", "0", "5")))).toBe(80);
    expect(fromF(feeding("0.8", slow("0"), gradeOf("10", "0", "0", "5")))).toBe(75);
    expect(fromF(withAnalysis({ grade: gradeOf("0", "0", "0", "10"), release: { kind: "not-stated" } }))).toBe(80);
  });

  test("what can't be counted is taken for a full rate, and what has no nutrients is not asked", () => {
    expect(fromF(withAnalysis("unknown"))).toBe(75);
    expect(fromF({ ...IRON, label: { ...IRON.label, density: "unknown" } })).toBe(75);
    expect(fromF(withAnalysis("none"))).toBeUndefined();
    expect(fromF(withAnalysis({ grade: gradeOf("0", "0", "20"), release: { kind: "not-stated" } }))).toBeUndefined();
  });
});

describe("the days after", () => {
  test("their heat counts, and the finding names the first hot day", () => {
    expect(found(feeding("0.4"), [70, 72, 81, 90])).toMatchObject([
      { rule: "heat-on-cool-season-turf", source: "common-practice", figure: "The forecast high of May 3, 2026 is 81 °F. The company's settings ask for care from 80 °F on." },
    ]);
    expect(found(feeding("0.8"), [76, 50, 50, 50])).toMatchObject([
      { figure: "The forecast high of May 1, 2026 is 76 °F. The company's settings ask for care from 80 °F on, 5 °F earlier for 0.8 lb per 1,000 sq ft of quick nitrogen: from 75 °F." },
    ]);
    expect(found(feeding("0.1"), [86, 50, 50, 50])[0]?.figure).toContain("5 °F later for 0.1 lb per 1,000 sq ft of quick nitrogen: from 85 °F.");
  });

  test("that nobody entered are noted where the entered ones are cool", () => {
    expect(rules(feeding("0.4"), [70, 72, 74, 75])).toEqual([]);
    expect(rules(feeding("0.4"), [70, 72, "not-entered", 75])).toEqual([NOT_JUDGED]);
    expect(found(feeding("0.4"), [70, 72, "not-entered", 75])[0]?.figure).toMatch(/^The first one that is missing is May 3, 2026\./u);
    expect(rules(feeding("0.4"), [70, "not-entered", "not-entered", 80])).toEqual([COOL]);
    expect(rules(withAnalysis("none"), [70, "not-entered"])).toEqual([]);
  });
});

test("two kinds of turf in one visit are said each for itself, and a lawn that a treatment does not go on is not asked", () => {
  const lawns = [{ ...LAWN, grasses: ["tall fescue" as const] }, { ...LAWN, zoneId: "back", letter: "B", name: "Back", grasses: ["zoysiagrass" as const] }];
  const said = (zoneIds: readonly string[]) =>
    careInHeat({ ...QUESTION, on, lawns, treatments: [{ ...feeding("0.4"), zoneIds }] }, { date: on, forecastHighF: 95, followingHighsF: [50, 50, 50] }).map(({ rule }) => rule);
  expect(said(["front", "back"])).toEqual(["heat-on-cool-season-turf", "heat-on-warm-season-turf"]);
  expect(said(["back"])).toEqual(["heat-on-warm-season-turf"]);
});

test("without a forecast it says from which high on to wait", () => {
  const said = (treatment: TicketTreatment) => careWithoutForecast({ ...QUESTION, treatments: [treatment] }).map(({ rule, toDo }) => [rule, toDo]);
  expect(said(feeding("0.8"))).toEqual([["heat-not-judged", "Look at the forecast: from 75 °F on, wait."]]);
  expect(said(feeding("0.4"))).toEqual([["heat-not-judged", "Look at the forecast: from 80 °F on, wait."]]);
  expect(said(withAnalysis("none"))).toEqual([]);
});
