import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type StatedTime } from "#domain/mixing/counted-from-work";
import { mayBeFirst, mayBeLast } from "#domain/mixing/deciding-times";
import { at, CHICAGO, END, HOUR, START } from "../../support/aftercare-builders";

/** Work on Friday, May 1, from 3 to 4 pm: it may end up to 16 hours sooner and 8 hours later that day. */
const WORK = { planned: { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, timeZone: CHICAGO };
const MIDNIGHT = at("2026-05-02T00:00-05:00");
type Anchor = NonNullable<StatedTime["counted"]>["from"];

const counted = (hours: number, from: Anchor = "application-end"): StatedTime => ({ atEpochMilliseconds: (from === "application-start" ? START : END) + hours * HOUR, counted: { words: `${String(hours)} h from ${from}`, from } });
const fixed = (atEpochMilliseconds: number): StatedTime => ({ atEpochMilliseconds, counted: null });

describe("of times that must all be over", () => {
  test("a time that moves and one that stands are both told where either may be the last that day", () => {
    expect(mayBeLast([fixed(MIDNIGHT), counted(12)], WORK)).toEqual([counted(12), fixed(MIDNIGHT)]);
    expect(mayBeLast([counted(4), fixed(MIDNIGHT)], WORK)).toEqual([fixed(MIDNIGHT), counted(4)]);
    // Four o'clock of the next day is 24 hours after the work, and nothing of this day comes up to it.
    expect(mayBeLast([counted(4), fixed(MIDNIGHT + 16 * HOUR)], WORK)).toEqual([fixed(MIDNIGHT + 16 * HOUR)]);
    expect(mayBeLast([counted(48), fixed(MIDNIGHT)], WORK)).toEqual([counted(48)]);
  });
  test("one that only comes as late, and never later, is not", () => {
    expect(mayBeLast([counted(0), fixed(MIDNIGHT)], WORK)).toEqual([fixed(MIDNIGHT)]);
    expect(mayBeLast([counted(24), fixed(MIDNIGHT)], WORK)).toEqual([counted(24)]);
    expect(mayBeLast([counted(23.9), fixed(MIDNIGHT)], WORK)).toEqual([counted(23.9), fixed(MIDNIGHT)]);
    expect(mayBeLast([counted(0, "application-start"), fixed(MIDNIGHT - 0.5 * HOUR)], WORK)).toEqual([fixed(MIDNIGHT - 0.5 * HOUR), counted(0, "application-start")]);
  });
  test("of what moves alike, and of what stands, the longest only; at one time what moves comes first", () => {
    expect(mayBeLast([counted(4), counted(12), fixed(MIDNIGHT), fixed(MIDNIGHT - HOUR)], WORK)).toEqual([counted(12), fixed(MIDNIGHT)]);
    expect(mayBeLast([fixed(MIDNIGHT), counted(8)], WORK)).toEqual([counted(8), fixed(MIDNIGHT)]);
  });
  test("as long after the start says nothing beside as long after the end; longer after it does, and a sign stands for itself", () => {
    expect(mayBeLast([counted(4, "application-start"), counted(4)], WORK)).toEqual([counted(4)]);
    expect(mayBeLast([counted(5, "application-start"), counted(4)], WORK)).toEqual([counted(5, "application-start"), counted(4)]);
    expect(mayBeLast([counted(2, "posting"), counted(4)], WORK)).toEqual([counted(4), counted(2, "posting")]);
  });
  test("one that is counted from the start is compared with one from the end over all that the work may take of its day", () => {
    expect(mayBeLast([counted(30, "application-start"), counted(4)], WORK)).toEqual([counted(30, "application-start")]);
    expect(mayBeLast([counted(28, "application-start"), counted(4)], WORK)).toEqual([counted(28, "application-start")]);
    expect(mayBeLast([counted(27.9, "application-start"), counted(4)], WORK)).toEqual([counted(27.9, "application-start"), counted(4)]);
  });
  test("none of none", () => expect(mayBeLast([], WORK)).toEqual([]));
});

describe("of times of which the first counts", () => {
  test("one that stands and one that moves are both told where either may be the first that day", () => {
    expect(mayBeFirst([fixed(END + 23.5 * HOUR), counted(24)], WORK)).toEqual([fixed(END + 23.5 * HOUR), counted(24)]);
    expect(mayBeFirst([fixed(END + 25 * HOUR), counted(24)], WORK)).toEqual([counted(24), fixed(END + 25 * HOUR)]);
    expect(mayBeFirst([fixed(END + 48 * HOUR), counted(24)], WORK)).toEqual([counted(24)]);
    expect(mayBeFirst([fixed(END + 8 * HOUR), counted(24)], WORK)).toEqual([fixed(END + 8 * HOUR)]);
  });
  test("as long after the end says nothing beside as long after the start; shorter after it does", () => {
    expect(mayBeFirst([counted(24, "application-start"), counted(24)], WORK)).toEqual([counted(24, "application-start")]);
    expect(mayBeFirst([counted(24, "application-start"), counted(22)], WORK)).toEqual([counted(22), counted(24, "application-start")]);
  });
  test("a date days after the start says nothing beside one of hours after the end that comes first however long the work takes", () => {
    expect(mayBeFirst([counted(14 * 24, "application-start"), counted(24)], WORK)).toEqual([counted(24)]);
    expect(mayBeFirst([counted(48, "application-start"), counted(24)], WORK)).toEqual([counted(24)]);
    expect(mayBeFirst([counted(47.9, "application-start"), counted(24)], WORK)).toEqual([counted(24), counted(47.9, "application-start")]);
  });
});

test("work that is planned over midnight may be done sooner on its first day, and no later", () => {
  const work = { planned: { fromEpochMilliseconds: MIDNIGHT - HOUR, untilEpochMilliseconds: MIDNIGHT + HOUR }, timeZone: CHICAGO };
  const time: StatedTime = { atEpochMilliseconds: MIDNIGHT + 5 * HOUR, counted: { words: "4 hours", from: "application-end" } };
  expect(mayBeLast([time, fixed(MIDNIGHT + 6 * HOUR)], work)).toEqual([fixed(MIDNIGHT + 6 * HOUR)]);
  expect(mayBeLast([time, fixed(MIDNIGHT + 4 * HOUR)], work)).toEqual([time, fixed(MIDNIGHT + 4 * HOUR)]);
});

/** Work of some length at some hour of that day, in whole quarters of an hour. */
const workDrawn = fc.record({ from: fc.integer({ min: 0, max: 95 }), quarters: fc.integer({ min: 0, max: 20 }) }).map(({ from, quarters }) => ({ starts: MIDNIGHT - 24 * HOUR + (from * HOUR) / 4, ends: Math.min(MIDNIGHT, MIDNIGHT - 24 * HOUR + ((from + quarters) * HOUR) / 4) }));
const timesDrawn = fc.array(fc.oneof(fc.record({ hours: fc.integer({ min: 0, max: 40 }), from: fc.constantFrom<Anchor>("application-start", "application-end") }).map(({ hours, from }) => counted(hours, from)), fc.integer({ min: -20, max: 100 }).map((halves) => halves / 2).map((hours) => fixed(END + hours * HOUR))), { minLength: 1, maxLength: 6 });

test.each([
  ["last", mayBeLast, Math.max],
  ["first", mayBeFirst, Math.min],
] as const)("at whatever hour of the day the work is done, the %s of all times is that of those that are told", (_which, told, decide) => {
  fc.assert(
    fc.property(timesDrawn, workDrawn, (times, { starts, ends }) => {
      const asDone = ({ atEpochMilliseconds: planned, counted: own }: StatedTime) => planned + (own === null ? 0 : own.from === "application-start" ? starts - START : ends - END);
      expect(decide(...told(times, WORK).map(asDone))).toBe(decide(...times.map(asDone)));
    }),
    { numRuns: 2_000 },
  );
});
