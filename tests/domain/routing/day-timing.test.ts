import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareOrders, defined, departureFrom, driveBetween, earliestStart, latestArrivals, layOutDay, servedWeight, timeOrder } from "#domain/routing/day-timing";
import { dayOf, madeUpDay, planeTravel, stopAt } from "../../support/route-days";

const travel = planeTravel([[0, 0], [60, 0], [120, 0]]);
const twoWindows = [{ fromMinute: 10, toMinute: 20 }, { fromMinute: 40, toMinute: 50 }];
const stops = [stopAt(1, { windows: twoWindows, serviceMinutes: 5, dueWeight: 3 }), stopAt(2, { serviceMinutes: 1 })];
const problem = layOutDay(dayOf(stops, { dayEndSeconds: 3600, longestOvertimeSeconds: 60 }), travel);

describe("windows", () => {
  test.each([[0, 600], [600, 600], [1200, 1200], [1201, 2400], [3000, 3000], [3001, Infinity]])("an arrival at %d s begins at %d s", (arrival, start) => {
    expect(earliestStart(problem, 0, arrival)).toBe(start);
  });

  test("without any, work begins on arrival; the departure comes after drive and service", () => {
    expect(earliestStart(problem, 1, 17)).toBe(17);
    expect(departureFrom(problem, 1, problem.startNode, 10)).toBe(10 + 120 + 60);
    expect(departureFrom(problem, 0, problem.startNode, 3000)).toBe(Infinity);
  });
});

test("an order is timed stop by stop, and can't be kept when a window or the day is over", () => {
  expect(timeOrder(problem, [0, 1])).toEqual({ order: [0, 1], departures: [900, 1020], returnSeconds: 1140, driveSeconds: 240 });
  expect(timeOrder(problem, [])).toEqual({ order: [], departures: [], returnSeconds: 0, driveSeconds: 0 });
  expect(timeOrder({ ...problem, dayStartSeconds: 3000 }, [0])).toBeUndefined();
  expect(timeOrder({ ...problem, latestReturnSeconds: 1139 }, [0, 1])).toBeUndefined();
  expect(driveBetween(problem, 0, problem.endNode)).toBe(60);
});

test("the latest arrivals are the last from which the rest can be kept", () => {
  fc.assert(
    fc.property(madeUpDay({ mostStops: 6, windows: true, pins: false, shortDays: true }), (day) => {
      const laidOut = layOutDay(day.question, day.travel);
      const order = day.question.stops.map((_, stop) => stop);
      const [latest = NaN] = latestArrivals(laidOut, order, laidOut.latestReturnSeconds);
      const startingAt = (arrival: number) =>
        timeOrder({ ...laidOut, dayStartSeconds: arrival - driveBetween(laidOut, laidOut.startNode, 0) }, order);
      if (latest > -Infinity) expect(startingAt(latest)).toBeDefined();
      expect(startingAt(latest > -Infinity ? latest + 1 : 0)).toBeUndefined();
    }),
  );
});

test("the goals in their order: weight, overtime, driving, return", () => {
  const timed = { order: [0], departures: [0], returnSeconds: 3600, driveSeconds: 50 };
  const less = (better: Partial<typeof timed>, worse: Partial<typeof timed>) => compareOrders(problem, { ...timed, ...better }, { ...timed, ...worse }) < 0;
  expect(servedWeight(problem, [0, 1])).toBe(4);
  expect(less({ order: [0, 1], returnSeconds: 3650 }, {})).toBe(true);
  expect(less({ driveSeconds: 90 }, { returnSeconds: 3601 })).toBe(true);
  expect(less({ driveSeconds: 49 }, { returnSeconds: 3500 })).toBe(true);
  expect(less({ returnSeconds: 3500 }, {})).toBe(true);
  expect(compareOrders(problem, timed, timed)).toBe(0);
});

test("a position beyond its list is a defect", () => {
  expect(defined(0)).toBe(0);
  expect(() => defined(undefined)).toThrow("a position lies within its list");
});
