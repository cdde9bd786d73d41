import { describe, expect, test } from "vitest";
import { type AftercareStep, joinMayNots } from "#domain/mixing/aftercare-step";
import { mowedTooShortlyBefore, mowingDaysInTheWay, type MowingHabit } from "#domain/mixing/mowing-aftercare";
import { appliedOf, CHICAGO, earlierOf, END, HOUR, labelOf, onLabel, says, START } from "../../support/aftercare-builders";

const visit = { fromEpochMilliseconds: START, untilEpochMilliseconds: END };
const habit = (weekday: MowingHabit["weekday"], lastMowedAtEpochMilliseconds: number | "unknown" = "unknown") => ({ weekday, lastMowedAtEpochMilliseconds });
const [FRIDAY, SATURDAY, SUNDAY, MONDAY] = [5, 6, 0, 1];

describe("mowing days after the visit", () => {
  const steps = (hours: number | null): readonly AftercareStep[] => {
    const end = { atEpochMilliseconds: hours === null ? null : END + hours * HOUR, isEstimate: false, waitsFor: [] };
    const reason = { productName: "Weedaway", kind: "mowing-after", labelWords: "words", ...onLabel } as const;
    return joinMayNots("mowing", [{ row: "mowing", startsAtEpochMilliseconds: START, end, reason }], { epochMilliseconds: START, timeZone: CHICAGO });
  };
  const toDo = (weekday: MowingHabit["weekday"], hours: number | null) =>
    mowingDaysInTheWay(steps(hours), habit(weekday), visit, CHICAGO).map((finding) => finding.toDo);

  test.each([
    ["the rest of the visit's own day", FRIDAY, 2, ["Ask the customer to mow that day only after Friday, May 1, 2026, 6 pm."]],
    ["a day that is wholly closed", SATURDAY, 48, ["Ask the customer to mow on another day."]],
    ["a day at whose last midnight it ends", SATURDAY, 32, ["Ask the customer to mow on another day."]],
    ["a day on which it ends", SUNDAY, 48, ["Ask the customer to mow that day only after Sunday, May 3, 2026, 4 pm."]],
    ["a day after it", MONDAY, 48, []],
    ["no mowing day", "none", 48, []],
    ["an open end: the next mowing day", MONDAY, null, ["Ask the customer to mow on another day."]],
  ] as const)("%s", (_name, weekday, hours, expected) => expect(toDo(weekday, hours)).toEqual(expected));

  test("a mowing day that ends at midnight before is free", () => expect(toDo(SUNDAY, 32)).toEqual([]));
  test("many are counted after four", () => {
    expect(mowingDaysInTheWay(steps(24 * 50), habit(MONDAY), visit, CHICAGO)[0]?.figure).toContain("Monday, May 25, 2026; and 3 more.");
  });
  test("a day that nobody knows wants care where anything is closed, and only there", () => {
    expect(mowingDaysInTheWay(steps(48), habit("unknown"), visit, CHICAGO)).toMatchObject([{ level: "take-care", rule: "mowing-day-missing" }]);
    expect(mowingDaysInTheWay([], habit("unknown"), visit, CHICAGO)).toEqual([]);
  });
});

describe("mowing before the visit", () => {
  // Not mowed two to three days before a broadleaf herbicide: Iowa State Extension, broadleaf herbicides on lawns.
  const weedaway = labelOf("Weedaway", says("mowing-before", { within: { anchor: "application-start", durationMinutes: 48 * 60 } }));
  const rules = (one: MowingHabit, products = [appliedOf(weedaway)]) =>
    mowedTooShortlyBefore(products, one, CHICAGO).map((finding) => `${finding.rule} ${finding.level === "hold" ? finding.answerableBy : ""}`);
  test.each([
    ["mowed within it", habit("none", START - 47 * HOUR), ["mowed-too-shortly-before nobody"]],
    ["mowed at its beginning", habit("none", START - 48 * HOUR), ["mowed-too-shortly-before nobody"]],
    ["mowed before it, whatever the mowing day", habit("unknown", START - 49 * HOUR), []],
    ["nobody knows, and the mowing day is not in it", habit(MONDAY), []],
    ["nobody knows, and the mowing day is in it", habit(4), ["last-mowing-missing "]],
    ["nobody knows anything", habit("unknown"), ["last-mowing-missing "]],
    ["nobody knows, and there is no mowing day", habit("none"), []],
  ])("%s", (_name, one, expected) => expect(rules(one)).toEqual(expected));
  test("days of a label reach back to the midnight that begins the first of them", () => {
    const inDays = labelOf("Weedaway", says("mowing-before", { within: { anchor: "days", from: "application-start", days: 2 } }));
    const midnight = START - 63 * HOUR;
    expect(rules(habit("none", midnight), [appliedOf(inDays)])).toEqual(["mowed-too-shortly-before nobody"]);
    expect(rules(habit("none", midnight - 1), [appliedOf(inDays)])).toEqual([]);
  });
  test("is not asked of an earlier visit", () => expect(rules(habit("unknown"), [earlierOf(weedaway, START)])).toEqual([]));
});
