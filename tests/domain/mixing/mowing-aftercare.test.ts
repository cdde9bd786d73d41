import { describe, expect, test } from "vitest";
import { endAt, endOnState } from "#domain/mixing/aftercare-instants";
import { type AftercareStep, joinMayNots } from "#domain/mixing/aftercare-step";
import { mowedTooShortlyBefore, mowingDaysInTheWay, type MowingHabit } from "#domain/mixing/mowing-aftercare";
import { appliedOf, CHICAGO, earlierOf, END, HOUR, labelOf, onLabel, says, START } from "../../support/aftercare-builders";

const visit = { fromEpochMilliseconds: START, untilEpochMilliseconds: END };
const habit = (weekday: MowingHabit["weekday"], lastMowedAtEpochMilliseconds: number | "unknown" = "unknown") => ({ weekday, lastMowedAtEpochMilliseconds });
const [FRIDAY, SATURDAY, SUNDAY, MONDAY] = [5, 6, 0, 1];

describe("mowing days after the visit", () => {
  const steps = (hours: number | null): readonly AftercareStep[] => {
    const end = hours === null ? endOnState("watered in") : endAt(END + hours * HOUR);
    const reason = { productName: "Weedaway", kind: "mowing-after", labelWords: "words", ...onLabel } as const;
    return joinMayNots("mowing", [{ row: "mowing", startsAtEpochMilliseconds: START, end, movesWithWork: true, reason }], { epochMilliseconds: START, timeZone: CHICAGO });
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
  test("says what may not be mowed, when, until when, and by whose words", () => {
    expect(mowingDaysInTheWay(steps(48), habit(SUNDAY), visit, CHICAGO)).toEqual([
      {
        level: "take-care",
        rule: "mowing-day-in-the-way",
        source: "label",
        what: "The customer's mowing day falls where Weedaway must not be mowed.",
        figure: "Mowing days: Sunday, May 3, 2026. Not before Sunday, May 3, 2026, 4 pm.",
        toDo: "Ask the customer to mow that day only after Sunday, May 3, 2026, 4 pm.",
        citation: onLabel.source,
        about: ["Weedaway"],
      },
    ]);
    expect(mowingDaysInTheWay(steps(48), habit("unknown"), visit, CHICAGO)).toMatchObject([{ figure: "No mowing before Sunday, May 3, 2026, 4 pm.", about: ["Weedaway"] }]);
  });
  test("an open end names the next day of mowing after the visit, that of the visit's own day included", () => {
    const figure = (weekday: MowingHabit["weekday"]) => mowingDaysInTheWay(steps(null), habit(weekday), visit, CHICAGO)[0]?.figure;
    expect(figure(FRIDAY)).toContain("Mowing days: Friday, May 1, 2026.");
    expect(figure(SATURDAY)).toContain("Mowing days: Saturday, May 2, 2026.");
    expect(figure(4)).toContain("Mowing days: Thursday, May 7, 2026.");
  });
  test("a time without mowing that ends as the visit does is in nobody's way", () => {
    expect(toDo(FRIDAY, 0)).toEqual([]);
    expect(toDo(FRIDAY, -0.5)).toEqual([]);
    const late = steps(0.5).map((step) => ({ ...step, startsAtEpochMilliseconds: END + 20 * 24 * HOUR, endsAtEpochMilliseconds: END + 21 * 24 * HOUR }));
    expect(mowingDaysInTheWay(late, habit(SUNDAY), visit, CHICAGO)).toEqual([]);
  });
  test("only times without mowing count, whatever else may not be done then", () => {
    const others = steps(48).flatMap((step): readonly AftercareStep[] => [{ ...step, row: "watering" }, { ...step, kind: "must" }]);
    expect(mowingDaysInTheWay(others, habit(SUNDAY), visit, CHICAGO)).toEqual([]);
    expect(mowingDaysInTheWay(others, habit("unknown"), visit, CHICAGO)).toEqual([]);
  });
  test("of two mowing days only the last ends in the time, so another day is asked for", () => {
    expect(toDo(SUNDAY, 9 * 24)).toEqual(["Ask the customer to mow on another day."]);
  });
  test("four are named and none is counted", () => {
    const figure = mowingDaysInTheWay(steps(24 * 26), habit(MONDAY), visit, CHICAGO)[0]?.figure;
    expect(figure).toContain("Monday, May 4, 2026; Monday, May 11, 2026; Monday, May 18, 2026; Monday, May 25, 2026. Not before");
  });
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
    ["nobody knows, and no day is fixed", habit("none"), ["last-mowing-missing "]],
  ])("%s", (_name, one, expected) => expect(rules(one)).toEqual(expected));
  test("days of a label reach back to the midnight that begins the first of them", () => {
    const inDays = labelOf("Weedaway", says("mowing-before", { within: { anchor: "days", from: "application-start", days: 2 } }));
    const midnight = START - 63 * HOUR;
    expect(rules(habit("none", midnight), [appliedOf(inDays)])).toEqual(["mowed-too-shortly-before nobody"]);
    expect(rules(habit("none", midnight - 1), [appliedOf(inDays)])).toEqual([]);
  });
  test("the work itself is after the time before it", () => {
    expect(rules(habit("unknown", START))).toEqual([]);
    expect(rules(habit("unknown", START - 1))).toEqual(["mowed-too-shortly-before nobody"]);
  });
  test("says when it was mowed, or what nobody knows", () => {
    const found = (one: MowingHabit) => mowedTooShortlyBefore([appliedOf(weedaway)], one, CHICAGO);
    const figure = "Not mowed since Wednesday, Apr 29, 2026, 3 pm.";
    expect(found(habit("none", START - 24 * HOUR))).toEqual([
      {
        level: "hold",
        answerableBy: "nobody",
        rule: "mowed-too-shortly-before",
        source: "label",
        what: "The lawn was mowed Thursday, Apr 30, 2026, 3 pm, too shortly before Weedaway.",
        figure,
        toDo: "Move the visit.",
        citation: onLabel.source,
        about: ["Weedaway"],
      },
    ]);
    expect(found(habit("unknown"))).toMatchObject([{ what: "Neither the last mowing nor the customer's mowing day is on file, and Weedaway must not follow it too soon.", figure, citation: onLabel.source, about: ["Weedaway"] }]);
    expect(found(habit("none"))).toMatchObject([{ what: "The customer mows on no fixed day, and when last is not on file; Weedaway must not follow it too soon." }]);
    expect(found(habit(4))).toMatchObject([{ what: "The customer mows on Thursday, which may be too shortly before Weedaway." }]);
  });
  test("no time before the work has no mowing day in it", () => {
    const atOnce = labelOf("Weedaway", says("mowing-before", { within: { anchor: "application-start", durationMinutes: 0 } }));
    expect(rules(habit(FRIDAY), [appliedOf(atOnce)])).toEqual([]);
    expect(rules(habit("none"), [appliedOf(atOnce)])).toEqual([]);
  });
  test("is not asked of an earlier visit", () => expect(rules(habit("unknown"), [earlierOf(weedaway, START)])).toEqual([]));
});
