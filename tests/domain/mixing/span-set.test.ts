import fc from "fast-check";
import { expect, test } from "vitest";
import { intersectSpans, joinSpans, overlap } from "#domain/mixing/span-set";

const span = (fromEpochMilliseconds: number, untilEpochMilliseconds: number) => ({ fromEpochMilliseconds, untilEpochMilliseconds });
const anySpans = fc.array(fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 })).map(([from, until]) => span(from, until)), {
  maxLength: 6,
});
const holds = (spans: readonly { fromEpochMilliseconds: number; untilEpochMilliseconds: number }[], instant: number) =>
  spans.some(({ fromEpochMilliseconds, untilEpochMilliseconds }) => fromEpochMilliseconds <= instant && instant < untilEpochMilliseconds);

test("what overlaps or touches is one; what is empty is none", () => {
  expect(joinSpans([span(5, 8), span(1, 3), span(3, 4), span(6, 7), span(9, 9)])).toEqual([span(1, 4), span(5, 8)]);
});

test("joined spans hold the same instants, and the common part is held by both", () => {
  fc.assert(
    fc.property(anySpans, anySpans, fc.integer({ min: -1, max: 21 }), (left, right, instant) => {
      expect(holds(joinSpans(left), instant)).toBe(holds(left, instant));
      expect(holds(intersectSpans(left, right), instant)).toBe(holds(left, instant) && holds(right, instant));
    }),
  );
});

test("spans that share an edge do not overlap", () => {
  expect([overlap(span(1, 3), span(3, 4)), overlap(span(1, 3), span(2, 4)), overlap(span(2, 4), span(1, 3))]).toEqual([false, true, true]);
});
