import fc from "fast-check";
import { expect, test } from "vitest";
import { timeInOrder } from "#domain/routing/time-in-order";
import { valueOf } from "../../support/crew";
import { answerOf, dayOf, madeUpDay, orderOf, planeTravel, stopAt } from "../../support/route-days";

const travel = planeTravel([[0, 0], [60, 0], [120, 0]]);

test("each stop begins after the drive to it and the work before it, and the way home is counted", () => {
  const day = valueOf(timeInOrder(dayOf([stopAt(2, { serviceMinutes: 1 }), stopAt(1, { serviceMinutes: 2 })], { dayStartSeconds: 100 }), travel));
  expect(day.stops).toEqual([
    { stopId: "stop 2", driveSeconds: 120, driveMeters: 1200, startSeconds: 220, lateSeconds: 0 },
    { stopId: "stop 1", driveSeconds: 60, driveMeters: 600, startSeconds: 340, lateSeconds: 0 },
  ]);
  expect(day).toMatchObject({ driveMeters: 2400, returnSeconds: 520 });
});

test("a crew waits for a window, and begins late when the last is over", () => {
  const windows = [{ fromMinute: 10, toMinute: 20 }];
  expect(valueOf(timeInOrder(dayOf([stopAt(1, { windows })]), travel)).stops[0]).toMatchObject({ startSeconds: 600, lateSeconds: 0 });
  const late = valueOf(timeInOrder(dayOf([stopAt(1, { windows })], { dayStartSeconds: 1200 }), travel));
  expect(late.stops[0]).toMatchObject({ startSeconds: 1260, lateSeconds: 60 });
});

test("without stops nobody leaves; a question that can't be is refused", () => {
  expect(valueOf(timeInOrder(dayOf([], { dayStartSeconds: 50 }), travel))).toEqual({ stops: [], driveMeters: 0, returnSeconds: 50 });
  expect(timeInOrder(dayOf([stopAt(9)]), travel)).toMatchObject({ ok: false, refusal: { field: "placeIndex" } });
});

test("an order that the search found has the times that the search gave it", () => {
  fc.assert(
    fc.property(madeUpDay({ mostStops: 6, windows: true, pins: false, shortDays: false }), ({ question, travel: between }) => {
      const route = answerOf(question, between);
      const stops = orderOf(route).flatMap((id) => question.stops.filter(({ stopId }) => stopId === id));
      const timed = valueOf(timeInOrder({ ...question, stops }, between));
      expect(timed.stops.map(({ startSeconds }) => startSeconds)).toEqual(route.stops.map(({ startSeconds }) => startSeconds));
      expect(timed.stops.every(({ lateSeconds }) => lateSeconds === 0)).toBe(true);
      expect(timed).toMatchObject({ returnSeconds: route.returnSeconds, driveMeters: route.totals.driveMeters });
    }),
  );
});
