import { expect, test } from "vitest";
import { type CalibrationFact, type EquipmentSetup } from "#domain/equipment/calibration-standing";
import { latestByOperator } from "#domain/equipment/operator-standing";
import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";
import { saying } from "../../support/said";

const today = "2026-04-14" as CalendarDate;
const settings = { validForDays: 365, samePressureWithinPsi: 2 };
const sprayer = { id: "e1", name: "Tank 1" };
const ray = { id: "p1", name: "Ray" };
const lou = { id: "p2", name: "Lou" };
const gold = { kind: "sprayer", tip: "Gold", pressurePsi: 40 } as const;
const blue = { kind: "sprayer", tip: "Blue", pressurePsi: 40 } as const;
const feed = { kind: "spreader", product: { id: "f", name: "Feed" } } as const;
const lime = { kind: "spreader", product: { id: "l", name: "Lime" } } as const;

function made(operator: typeof ray, daysAgo: number, setup: EquipmentSetup, figures = 0): CalibrationFact<number> {
  return { doneOn: addDays(today, -daysAgo), equipment: sprayer, operator, setup, figures };
}

test("of each operator the latest counts, the newest first", () => {
  const latest = latestByOperator([made(ray, 90, gold, 1), made(lou, 60, gold, 2), made(ray, 30, gold, 3)], today, settings);
  expect(latest.map(({ calibration }) => calibration.figures)).toEqual([3, 2]);
  expect(latest[0]?.standing).toEqual({ kind: "good", lastGoodDay: addDays(today, 335), daysLeft: 335 });
});

test("of two on one day the one entered later counts", () => {
  const latest = latestByOperator([made(ray, 5, gold, 1), made(ray, 5, gold, 2)], today, settings);
  expect(latest.map(({ calibration }) => calibration.figures)).toEqual([2]);
});

test("it is good through its last day and run out the day after, with a finding that says so", () => {
  const standingAfter = (days: number) => latestByOperator([made(ray, days, gold)], today, settings)[0]?.standing;
  expect(standingAfter(365)).toMatchObject({ kind: "good", daysLeft: 0 });
  expect(standingAfter(366)).toMatchObject({ kind: "run-out", daysAgo: 1, finding: { level: "take-care", rule: "calibration-run-out" } });
});

test("a tip that somebody changed since makes the others' calibrations those of another setup", () => {
  const [mine, yours] = latestByOperator([made(lou, 60, gold), made(ray, 5, blue)], today, settings);
  expect(mine?.standing.kind).toBe("good");
  expect(yours?.standing).toMatchObject({
    kind: "setup-changed",
    finding: { level: "take-care", figure: saying("Blue at 40 psi") },
  });
});

test("a tip written in other letters and spaces is nobody's change", () => {
  const latest = latestByOperator([made(lou, 60, { ...gold, tip: "Gun tip 04" }), made(ray, 5, { ...gold, tip: "gun  Tip 04" })], today, settings);
  expect(latest.map(({ standing }) => standing.kind)).toEqual(["good", "good"]);
});

test("a pressure read to the same mark is the same setup", () => {
  const near = latestByOperator([made(lou, 60, gold), made(ray, 5, { ...gold, pressurePsi: 42 })], today, settings);
  const far = latestByOperator([made(lou, 60, gold), made(ray, 5, { ...gold, pressurePsi: 42.1 })], today, settings);
  expect([near[1]?.standing.kind, far[1]?.standing.kind]).toEqual(["good", "setup-changed"]);
});

test("of a spreader the latest counts with each product, and no product changes another's", () => {
  const latest = latestByOperator([made(ray, 9, feed, 1), made(ray, 8, lime, 2), made(ray, 7, feed, 3)], today, settings);
  expect(latest.map(({ calibration, standing }) => [calibration.figures, standing.kind])).toEqual([[3, "good"], [2, "good"]]);
});

test("what is of a later day does not count yet", () => {
  expect(latestByOperator([made(ray, -1, gold)], today, settings)).toEqual([]);
});
