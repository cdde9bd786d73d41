import fc from "fast-check";
import { expect, test } from "vitest";
import { appendInOrder, insertCheapest, insertGroups } from "#domain/routing/cheapest-insertion";
import { type DayProblem, defined, layOutDay, timeOrder } from "#domain/routing/day-timing";
import { isSettled, orderWith } from "#domain/routing/pinned-order";
import { dayOf, madeUpDay, planeTravel, stopAt } from "../../support/route-days";

const travel = planeTravel([[0, 0], [100, 0], [200, 0], [100, 500]]);
const problem = layOutDay(dayOf([stopAt(1), stopAt(2), stopAt(3)]), travel);
const empty = (of: DayProblem) => defined(timeOrder(of, []));

test("the stop that costs least goes in at its best place", () => {
  const first = insertCheapest(problem, empty(problem), [0, 1, 2]);
  expect(first?.order).toEqual([0]);
  expect(insertCheapest(problem, defined(first), [1, 2])?.order).toEqual([1, 0]);
  expect(insertGroups(problem, empty(problem), [[2], [0, 1]]).order).toHaveLength(3);
  expect(insertCheapest(problem, empty(problem), [])).toBeUndefined();
});

test("nothing goes in where nothing fits, and a standing order is taken as far as it goes", () => {
  const short = { ...problem, latestReturnSeconds: 400, dayEndSeconds: 400 };
  expect(insertCheapest(short, empty(short), [2])).toBeUndefined();
  expect(appendInOrder(short, empty(short), [1, 2, 0]).order).toEqual([1, 0]);
  expect(appendInOrder(problem, empty(problem), [1, 2, 0]).order).toEqual([1, 2, 0]);
});

test("no other place of any stop costs less, pinned stops or not", () => {
  fc.assert(
    fc.property(madeUpDay({ mostStops: 6, windows: true, pins: true, shortDays: true }), (day) => {
      const laidOut = layOutDay(day.question, day.travel);
      const stops = day.question.stops.map((_, stop) => stop);
      const begun = insertGroups(laidOut, empty(laidOut), [stops.filter((stop) => stop % 2 === 0)]);
      const rest = stops.filter((stop) => !begun.order.includes(stop));
      const found = insertCheapest(laidOut, begun, rest);
      const tried = rest
        .flatMap((stop) => [...begun.order, -1].map((_, position) => timeOrder(laidOut, orderWith(laidOut, begun.order, stop, position))))
        .filter((timed) => timed !== undefined && (isSettled(laidOut, timed.order) || !isSettled(laidOut, begun.order)));
      expect(found === undefined).toBe(tried.length === 0);
      const inTime = tried.filter((timed) => defined(timed).returnSeconds <= laidOut.dayEndSeconds);
      const least = Math.min(...(inTime.length > 0 ? inTime : tried).map((timed) => defined(timed).driveSeconds));
      if (found !== undefined) expect(found.driveSeconds).toBe(least);
    }),
  );
});
