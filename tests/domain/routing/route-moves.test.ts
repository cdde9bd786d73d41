import fc from "fast-check";
import { expect, test } from "vitest";
import { compareOrders, defined, layOutDay, timeOrder } from "#domain/routing/day-timing";
import { isSettled, mergePinned } from "#domain/routing/pinned-order";
import { improveOrder } from "#domain/routing/route-moves";
import { dayOf, madeUpDay, planeTravel, stopAt } from "../../support/route-days";

test("a crossing is undone, and a stop on the way is visited on the way", () => {
  const square = layOutDay(dayOf([stopAt(1), stopAt(2), stopAt(3)]), planeTravel([[0, 0], [100, 100], [100, 0], [0, 100]]));
  expect(improveOrder(square, defined(timeOrder(square, [0, 1, 2]))).driveSeconds).toBe(400);
  const line = layOutDay(dayOf([stopAt(1), stopAt(2), stopAt(3)], { endPlaceIndex: 3 }), planeTravel([[0, 0], [100, 0], [200, 0], [300, 0]]));
  expect(improveOrder(line, defined(timeOrder(line, [1, 0, 2]))).order).toEqual([0, 1, 2]);
});

test("more driving is taken for less overtime only", () => {
  const stops = [stopAt(1), stopAt(2, { windows: [{ fromMinute: 0, toMinute: 5 }] }), stopAt(3, { windows: [{ fromMinute: 20, toMinute: 30 }], serviceMinutes: 20 })];
  const travel = planeTravel([[0, 0], [100, 0], [120, 0], [0, 100]]);
  const long = layOutDay(dayOf(stops), travel);
  const start = defined(timeOrder(long, [1, 2, 0]));
  const short = layOutDay(dayOf(stops, { dayEndSeconds: 2550, longestOvertimeSeconds: 3600 }), travel);
  expect(start.returnSeconds).toBeGreaterThan(2550);
  expect(improveOrder(short, start).returnSeconds).toBeLessThanOrEqual(2550);
});

test("the stops stay the same, pinned ones don't move, the day gets no worse, and one more try changes nothing", () => {
  fc.assert(
    fc.property(madeUpDay({ mostStops: 12, windows: true, pins: true, shortDays: true }), (day) => {
      const problem = layOutDay({ ...day.question, longestOvertimeSeconds: 86_400 }, day.travel);
      const timed = timeOrder(problem, mergePinned(problem, day.question.stops.map((_, stop) => stop)));
      fc.pre(timed !== undefined);
      const improved = improveOrder(problem, timed);
      expect([...improved.order].sort()).toEqual([...timed.order].sort());
      expect(isSettled(problem, improved.order)).toBe(isSettled(problem, timed.order));
      expect(compareOrders(problem, improved, timed)).toBeLessThanOrEqual(0);
      expect(timeOrder(problem, improved.order)).toEqual(improved);
      expect(improveOrder(problem, improved)).toEqual(improved);
    }),
    { maxSkipsPerRun: 1000 },
  );
});
