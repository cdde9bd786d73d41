import { describe, expect, test } from "vitest";
import { checkDayRoute } from "#domain/routing/check-day-route";
import { type DayRoute, type PlannedStop } from "#domain/routing/day-route";
import { answerOf, dayOf, planeTravel, stopAt } from "../../support/route-days";

const travel = planeTravel([[0, 0], [60, 0], [120, 0]]);
const question = dayOf([stopAt(1, { pinnedPosition: 1, windows: [{ fromMinute: 5, toMinute: 6 }] }), stopAt(2, { serviceMinutes: 2 })], { dayEndSeconds: 600 });
const right = answerOf(question, travel);

function changed(index: number, change: Partial<PlannedStop>): DayRoute {
  return { ...right, stops: right.stops.map((stop, at) => (at === index ? { ...stop, ...change } : stop)) };
}

test("a right answer has no complaints", () => {
  expect(right.stops.map(({ stopId }) => stopId)).toEqual(["stop 1", "stop 2"]);
  expect(checkDayRoute(question, travel, right)).toEqual([]);
});

describe("what is wrong is named", () => {
  test.each<[string, DayRoute, string]>([
    ["a lost stop", { ...right, stops: right.stops.slice(0, 1) }, "The stop stop 2 is in the answer 0 times."],
    ["a doubled stop", { ...right, stops: [...right.stops, ...right.stops.slice(1)] }, "The stop stop 2 is in the answer 2 times."],
    ["an unknown stop", changed(1, { stopId: "other" }), "The stop other is not in the question."],
    ["a moved pinned stop", { ...right, stops: right.stops.toReversed() }, "The pinned position of the stop stop 1 is given as 1 and is 2."],
    ["a wrong position", changed(1, { position: 3 }), "The position of the stop stop 2 is given as 3 and is 2."],
    ["a wrong drive", changed(1, { driveSeconds: 61 }), "The drive in seconds of the stop stop 2 is given as 61 and is 60."],
    ["a wrong way", changed(1, { driveMeters: 61 }), "The drive in meters of the stop stop 2 is given as 61 and is 600."],
    ["a wrong arrival", changed(0, { arrivalSeconds: 61 }), "The arrival of the stop stop 1 is given as 61 and is 60."],
    ["a broken window", changed(0, { startSeconds: 299 }), "Work at the stop stop 1 begins outside its windows."],
    ["a wait below zero", changed(1, { waitSeconds: -1 }), "Work at the stop stop 2 begins before the crew is there."],
    ["a wait in vain", changed(1, { waitSeconds: 1 }), "The crew waits at the stop stop 2 while it could work."],
    ["a wait past the opening", changed(0, { startSeconds: 301, waitSeconds: 241 }), "The crew waits at the stop stop 1 while it could work."],
    ["a wrong departure", changed(1, { departureSeconds: 481 }), "The departure of the stop stop 2 is given as 481 and is 480."],
    ["a wrong way home", { ...right, homeDriveSeconds: 1 }, "The way home in seconds is given as 1 and is 120."],
    ["a wrong return", { ...right, returnSeconds: 1 }, "The return is given as 1 and is 600."],
    ["a wrong sum", { ...right, totals: { ...right.totals, waitSeconds: 1 } }, "The sum waitSeconds is given as 1 and is 240."],
  ])("%s", (_name, route, complaint) => {
    expect(checkDayRoute(question, travel, route)).toContain(complaint);
  });

  test("a day that is too long", () => {
    expect(checkDayRoute({ ...question, dayEndSeconds: 599 }, travel, right)).toContain("The day runs over by 1 seconds.");
  });
});
