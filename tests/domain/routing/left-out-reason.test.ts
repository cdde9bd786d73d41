import { describe, expect, test } from "vitest";
import { type RouteStop } from "#domain/routing/day-route";
import { clockTime } from "#domain/routing/left-out-reason";
import { answerOf, dayOf, planeTravel, stopAt } from "../../support/route-days";

test("a clock's time, parts of a minute rounded up", () => {
  expect([0, 59, 60, 28_800, 58_501].map(clockTime)).toEqual(["00:00", "00:01", "00:01", "08:00", "16:16"]);
});

const travel = planeTravel([[0, 0], [3600, 0], [0, 600]]);
const eight = 8 * 3600;
const from = (hour: number, untilHour: number) => [{ fromMinute: hour * 60, toMinute: untilHour * 60 }];
const reasonOf = (stops: readonly RouteStop[], more = {}) => answerOf(dayOf(stops, { dayStartSeconds: eight, dayEndSeconds: 16 * 3600, ...more }), travel).leftOut;

describe("reasons, as sentences", () => {
  test.each([
    ["window-passed-on-arrival", [stopAt(1, { windows: from(7, 8) })], {}, "Even as the first stop it is reached at 09:00 only; work there must begin between 07:00 and 08:00."],
    ["window-too-late-for-day", [stopAt(1, { windows: from(15, 18), serviceMinutes: 30 })], {}, "Even as the only stop, with the way there and back, it takes until 16:30, since work there must begin between 15:00 and 18:00; the day ends at 16:00."],
    ["day-too-short", [stopAt(1, { serviceMinutes: 420 })], { longestOvertimeSeconds: 1800 }, "Even as the only stop, with the way there and back, it takes until 17:00; the day ends at 16:00, with overtime at 16:30."],
    ["pinned-position-out-of-reach", [stopAt(1, { pinnedPosition: 2, serviceMinutes: 60 }), stopAt(2, { serviceMinutes: 500 })], {}, "It is pinned to position 2, which can't be kept: 0 stops fit into the day without it."],
    ["day-is-over", [stopAt(1, { serviceMinutes: 300 }), stopAt(2, { serviceMinutes: 100 })], {}, "With it the day, in this order, would last until 16:51 at least; the day ends at 16:00."],
    ["windows-of-day", [stopAt(1, { windows: from(9, 10), serviceMinutes: 120 }), stopAt(2, { windows: from(9, 10), serviceMinutes: 60 })], {}, "At no place in this order is it reached in time without breaking another stop's window. Work there must begin between 09:00 and 10:00."],
  ])("%s", (reason, stops, more, sentence) => {
    const found = reasonOf(stops, more).find((leftOut) => leftOut.reason === reason);
    expect(found?.sentence).toBe(sentence);
  });
});
