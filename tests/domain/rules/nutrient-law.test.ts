import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type LawnSeeding, type SeedingKind, type SeedingStanding } from "#domain/properties/lawn-seeding";
import { gradeOf } from "#domain/turf/nutrients";
import { checkNutrientLaw, isFertilizer, type LawnUnderLaw, monthsBefore, type NutrientLawQuestion } from "#domain/rules/nutrient-law";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { INDIANA } from "#domain/rules/packs/indiana";

const day = (text: string) => text as CalendarDate;
const LAWN: LawnUnderLaw = { name: "Front", soilTests: [], seedings: [] };
const seeded = ({ date, kind, standing = "done" }: { date: CalendarDate; kind: SeedingKind; standing?: SeedingStanding }): LawnSeeding =>
  kind === "sod" ? { date, kind, standing } : { date, kind, method: "unknown", standing };
const STARTER = { name: "Starter", grade: gradeOf("18", "24", "6"), lawns: [LAWN] };
const FEED = { name: "Feed", grade: gradeOf("32", "0", "0"), lawns: [LAWN] };
const QUESTION: NutrientLawQuestion = { state: "IL", pack: ILLINOIS, on: day("2026-04-14"), products: [FEED], frozenOrSaturated: "no" };

const rulesOf = (question: Partial<NutrientLawQuestion>) => checkNutrientLaw({ ...QUESTION, ...question }).map(({ level, rule }) => `${level} ${rule}`);
const holdsOnPhosphorus = (lawn: Partial<LawnUnderLaw>) =>
  rulesOf({ products: [{ ...STARTER, lawns: [{ ...LAWN, ...lawn }] }] }).includes("hold phosphorus-without-need");
const tested = (sampledOn: string, phosphorus: "deficient" | "sufficient" | "not-tested") => ({
  soilTests: [{ sampledOn: day(sampledOn), phosphorus }],
});

// 415 ILCS 65/5a.
test("Illinois: phosphate needs a test of the last 36 months that shows a deficiency", () => {
  expect(holdsOnPhosphorus({})).toBe(true);
  expect(holdsOnPhosphorus(tested("2023-04-14", "deficient"))).toBe(false);
  expect(holdsOnPhosphorus(tested("2023-04-13", "deficient"))).toBe(true);
  expect(holdsOnPhosphorus(tested("2026-04-15", "deficient"))).toBe(true);
  expect(holdsOnPhosphorus(tested("2025-09-01", "sufficient"))).toBe(true);
  expect(holdsOnPhosphorus(tested("2025-09-01", "not-tested"))).toBe(true);
});

test("Illinois: the latest test that looked at phosphorus decides", () => {
  const soilTests = [tested("2024-05-01", "deficient"), tested("2025-05-01", "sufficient"), tested("2026-03-01", "not-tested")].flatMap((one) => one.soilTests);
  expect(holdsOnPhosphorus({ soilTests })).toBe(true);
});

test("Illinois: of two tests of one day the one that shows no need decides, in either order", () => {
  const tests = [tested("2025-05-01", "deficient"), tested("2025-05-01", "sufficient")].flatMap((one) => one.soilTests);
  expect(holdsOnPhosphorus({ soilTests: tests })).toBe(true);
  expect(holdsOnPhosphorus({ soilTests: tests.toReversed() })).toBe(true);
});

test("Illinois: phosphate asks for a test of the lawns on which it goes down, and of no other", () => {
  const back = { ...LAWN, name: "Back" };
  const front = { ...LAWN, ...tested("2025-05-01", "deficient") };
  expect(rulesOf({ products: [{ ...STARTER, lawns: [front] }, { ...FEED, lawns: [front, back] }] })).not.toContain("hold phosphorus-without-need");
  const said = checkNutrientLaw({ ...QUESTION, products: [{ ...STARTER, lawns: [front, back] }] });
  expect(said.filter(({ rule }) => rule === "phosphorus-without-need").map(({ about }) => about)).toEqual([["Starter", "Back"]]);
});

test("a product that goes down twice is named once", () => {
  const said = checkNutrientLaw({ ...QUESTION, products: [FEED, FEED] });
  expect(said.find(({ rule }) => rule === "hard-surfaces")?.about).toEqual(["Feed"]);
});

test("a product whose analysis nobody has read is taken for a fertilizer", () => {
  expect(isFertilizer({ name: "Feed", grade: "unknown" })).toBe(true);
  expect(isFertilizer({ name: "Weed control", grade: "none" })).toBe(false);
});

test("Illinois: a new lawn needs no test in its first two growing seasons, and no product without phosphate does", () => {
  for (const kind of ["new-lawn", "sod"] as const) {
    const made = (date: string) => ({ seedings: [seeded({ date: day(date), kind })] });
    expect(holdsOnPhosphorus(made("2025-09-10"))).toBe(false);
    expect(holdsOnPhosphorus(made("2024-09-10"))).toBe(true);
    expect(holdsOnPhosphorus(made("2026-05-01"))).toBe(true);
  }
  expect(rulesOf({})).not.toContain("hold phosphorus-without-need");
});

test("Illinois: overseeding makes no old lawn new, done or planned, and takes nothing from a new lawn", () => {
  const over = seeded({ date: day("2026-04-01"), kind: "overseeding" });
  expect(holdsOnPhosphorus({ seedings: [over] })).toBe(true);
  expect(holdsOnPhosphorus({ seedings: [{ ...over, standing: "planned" }] })).toBe(true);
  const old = seeded({ date: day("2019-09-10"), kind: "new-lawn" });
  expect(holdsOnPhosphorus({ seedings: [over, old] })).toBe(true);
  expect(holdsOnPhosphorus({ seedings: [over, seeded({ date: day("2025-09-10"), kind: "new-lawn" })] })).toBe(false);
});

test("Illinois: a new lawn that is only planned lifts no hold, and the hold says what does", () => {
  const toDoOf = (seedings: readonly LawnSeeding[]) => {
    const found = checkNutrientLaw({ ...QUESTION, products: [{ ...STARTER, lawns: [{ ...LAWN, seedings }] }] }).find(({ rule }) => rule === "phosphorus-without-need");
    return found?.level === "hold" ? found.toDo : undefined;
  };
  const planned = seeded({ date: day("2026-04-10"), kind: "sod", standing: "planned" });
  expect(toDoOf([planned])).toBe("Take a product without phosphate, or test the soil first. Front is planned as a new lawn for Apr 10, 2026: that counts once it is entered as done.");
  expect(toDoOf([{ ...planned, date: day("2026-04-15") }])).toBe("Take a product without phosphate, or test the soil first.");
  expect(toDoOf([])).toBe("Take a product without phosphate, or test the soil first.");
});

test("an analysis that nobody has read is a hold, and a product that is no fertilizer is asked nothing", () => {
  expect(rulesOf({ products: [{ ...FEED, grade: "unknown" }] })).toContain("hold analysis-not-read");
  expect(rulesOf({ products: [{ ...FEED, grade: "none" }] })).toEqual([]);
});

test("frozen or saturated ground holds; ground that nobody has looked at yet is a note", () => {
  expect(rulesOf({ frozenOrSaturated: "yes" })).toContain("hold frozen-or-saturated-ground");
  expect(rulesOf({ frozenOrSaturated: "not-looked-at" })).toContain("note look-at-the-ground");
  expect(rulesOf({})).toContain("note hard-surfaces");
});

test("what nobody read says so: in Indiana all of nutrient law, in a state without a pack too", () => {
  const said = checkNutrientLaw({ ...QUESTION, state: "IN", pack: INDIANA, products: [STARTER] });
  expect(said).toMatchObject([{ level: "take-care", rule: "nutrient-law-not-on-file", what: "Indiana: not on file, look it up." }]);
  expect(said[0]?.figure).toContain("phosphorus");
  expect(rulesOf({ state: "OH", pack: undefined })).toEqual(["take-care nutrient-law-not-on-file"]);
  expect(rulesOf({})).toContain("take-care nutrient-law-not-on-file");
});

test("months are counted on the calendar", () => {
  expect(monthsBefore(day("2026-04-14"), 36)).toBe("2023-04-14");
  expect(monthsBefore(day("2026-03-31"), 1)).toBe("2026-02-28");
  expect(monthsBefore(day("2024-03-31"), 1)).toBe("2024-02-29");
  expect(monthsBefore(day("2026-01-15"), 13)).toBe("2024-12-15");
});

test("on the law's days without fertilizer nothing goes down, also where they end in the next year", () => {
  const value = [{ from: "12-01", until: "03-01" }, { from: "07-04", until: "07-10" }];
  const pack = { ...ILLINOIS, facts: { ...ILLINOIS.facts, "blackout-dates": { onFile: true, value, citation: "an invented rule", standing: "read" } as const } };
  const isHeld = (on: string) => rulesOf({ pack, on: day(on) }).includes("hold blackout-dates");
  const dates = ["2026-11-30", "2026-12-01", "2026-12-31", "2026-01-01", "2026-03-01", "2026-03-02", "2026-07-03", "2026-07-04", "2026-07-10", "2026-07-11"];
  expect(dates.filter(isHeld)).toEqual(["2026-12-01", "2026-12-31", "2026-01-01", "2026-03-01", "2026-07-04", "2026-07-10"]);
  expect(rulesOf({ on: day("2026-12-25") })).not.toContain("hold blackout-dates");
});
