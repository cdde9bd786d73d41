import { expect, test } from "vitest";
import { findingsOfRun, findingsOfStop } from "#domain/routing/route-findings";

test("a stop in time has nothing against it; one that is late is held by the minute, rounded up", () => {
  expect(findingsOfStop({ street: "4 Sorrel Lane", lateSeconds: 0 })).toEqual([]);
  expect(findingsOfStop({ street: "4 Sorrel Lane", lateSeconds: 61 })).toMatchObject([
    { level: "hold", answerableBy: "office", rule: "customers-hours-missed", figure: "Too late by 2 min.", about: ["4 Sorrel Lane"] },
  ]);
});

test("a truck back on the minute is in time; a second later wants care", () => {
  const run = { truck: "Truck 1", dayEndSeconds: 3600 };
  expect(findingsOfRun({ ...run, returnSeconds: 3600 })).toEqual([]);
  expect(findingsOfRun({ ...run, returnSeconds: 3601 })).toMatchObject([{ level: "take-care", figure: "Later by 1 min, by the house's estimate of drives." }]);
});
