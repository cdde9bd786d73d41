import { expect, test } from "vitest";
import { refuseRouteDay } from "#domain/routing/day-route";
import { dayOf, planeTravel, stopAt } from "../../support/route-days";

const travel = planeTravel([[0, 0], [10, 0], [20, 0]]);
const stops = [stopAt(1, { windows: [{ fromMinute: 0, toMinute: 1440 }], pinnedPosition: 2 }), stopAt(2)];

test("a sound question is not refused", () => {
  expect(refuseRouteDay(dayOf(stops), travel)).toBeUndefined();
});

test.each([
  ["startPlaceIndex", dayOf(stops, { startPlaceIndex: 3 })],
  ["endPlaceIndex", dayOf(stops, { endPlaceIndex: -1 })],
  ["dayStartSeconds", dayOf(stops, { dayStartSeconds: NaN })],
  ["dayEndSeconds", dayOf(stops, { dayStartSeconds: 100, dayEndSeconds: 99 })],
  ["longestOvertimeSeconds", dayOf(stops, { longestOvertimeSeconds: -1 })],
  ["placeIndex", dayOf([stopAt(3)])],
  ["serviceMinutes", dayOf([stopAt(1, { serviceMinutes: 1.5 })])],
  ["dueWeight", dayOf([stopAt(1, { dueWeight: 0 })])],
  ["fromMinute", dayOf([stopAt(1, { windows: [{ fromMinute: -1, toMinute: 5 }] })])],
  ["toMinute", dayOf([stopAt(1, { windows: [{ fromMinute: 6, toMinute: 5 }] })])],
  ["stopId", dayOf([stopAt(1), stopAt(1)])],
  ["pinnedPosition", dayOf([stopAt(1, { pinnedPosition: 2 })])],
  ["pinnedPosition", dayOf([stopAt(1, { pinnedPosition: 1 }), stopAt(2, { pinnedPosition: 1 })])],
])("refused for its %s", (field, question) => {
  expect(refuseRouteDay(question, travel)).toMatchObject({ kind: "bad-input", field });
});
