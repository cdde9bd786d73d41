import { expect, test } from "vitest";
import { layOutDay } from "#domain/routing/day-timing";
import { hasPinned, isSettled, mergePinned, orderWith } from "#domain/routing/pinned-order";
import { dayOf, planeTravel, stopAt } from "../../support/route-days";

// Stops 0 to 4; stop 0 is pinned to position 2 and stop 1 to position 4.
const travel = planeTravel([[0, 0]]);
const stops = [2, 4, undefined, undefined, undefined].map((pinnedPosition, index) => ({
  ...stopAt(0),
  stopId: `stop ${index}`,
  ...(pinnedPosition === undefined ? {} : { pinnedPosition }),
}));
const problem = layOutDay(dayOf(stops), travel);

test("pinned stops stand at their positions, the others keep their order around them", () => {
  expect(mergePinned(problem, [0, 1, 4, 3, 2])).toEqual([4, 0, 3, 1, 2]);
  expect(mergePinned(problem, [4, 2])).toEqual([4, 2]);
  expect(orderWith(problem, [4, 0, 3, 1], 2, 0)).toEqual([2, 0, 4, 1, 3]);
});

test("with too few others a pinned stop comes too early, and that is noticed", () => {
  expect(mergePinned(problem, [1, 0])).toEqual([0, 1]);
  expect(isSettled(problem, [0, 1])).toBe(false);
  expect(isSettled(problem, mergePinned(problem, [0, 1, 2, 3]))).toBe(true);
  expect([hasPinned(problem, [2, 1]), hasPinned(problem, [2, 3])]).toEqual([true, false]);
});
