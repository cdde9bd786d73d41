import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type TimedRun } from "#domain/mixing/irrigation-run";
import { firstWholeMinute, fitsInto, inParts, interleaved, inTurn, type LawnsLoad, placedTogether, type StationStart } from "#domain/mixing/station-schedule";

function runOf(stationName: string, runsMinutes: readonly number[], soakMinutes = 0): TimedRun {
  const totalMinutes = runsMinutes.reduce((total, minutes) => total + minutes, 0);
  const elapsedMinutes = totalMinutes + soakMinutes * (runsMinutes.length - 1);
  return { kind: "run", stationName, totalMinutes, runsMinutes, soakMinutes, elapsedMinutes, rounding: "unchanged", depthReached: "1", sentence: "" };
}
const clock = (starts: readonly StationStart[]) => starts.map(({ stationName, startsAfterMinutes, runMinutes }) => `${stationName} ${startsAfterMinutes}+${runMinutes}`);
const MINUTE = 60_000;
const stretch = (fromMinute: number, minutes: number) => ({ fromEpochMilliseconds: fromMinute * MINUTE, untilEpochMilliseconds: (fromMinute + minutes) * MINUTE });

describe("one station at a time, in the rests of another", () => {
  test("two stations of 30 min in runs of 6 with 30 min of rest take 156 min, not 300", () => {
    const { starts, elapsedMinutes } = interleaved([runOf("A", [6, 6, 6, 6, 6], 30), runOf("B", [6, 6, 6, 6, 6], 30)]);
    expect(elapsedMinutes).toBe(156);
    expect(clock(starts)).toEqual(["A 0+6", "B 6+6", "A 36+6", "B 42+6", "A 72+6", "B 78+6", "A 108+6", "B 114+6", "A 144+6", "B 150+6"]);
  });
  test("the one that still needs the longest begins, wherever it is listed", () => {
    expect(clock(interleaved([runOf("A", [60]), runOf("B", [6, 6], 60)]).starts)).toEqual(["B 0+6", "A 6+60", "B 66+6"]);
  });
  test("without rests one after another, as listed where they are equal", () => {
    const schedule = interleaved([runOf("A", [20]), runOf("B", [20]), runOf("C", [20])]);
    expect([clock(schedule.starts), schedule.elapsedMinutes]).toEqual([["A 0+20", "B 20+20", "C 40+20"], 60]);
  });
  test("none is nothing", () => expect(interleaved([])).toEqual({ starts: [], elapsedMinutes: 0 }));
});

const fewRuns = fc
  .array(fc.tuple(fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 3 }), fc.integer({ min: 0, max: 12 })), { minLength: 1, maxLength: 3 })
  .map((all) => all.map(([minutes, soak], index) => runOf(`S${index}`, minutes, soak)));

/** The least time of all orders in which the next runs can be taken, each as soon as its rest allows. */
function leastElapsed(runs: readonly TimedRun[], done = runs.map(() => 0), restedAfter = runs.map(() => 0), now = 0): number {
  const ends = runs.flatMap((run, index) => {
    const runMinutes = run.runsMinutes[done[index] ?? 0];
    if (runMinutes === undefined) return [];
    const until = Math.max(now, restedAfter[index] ?? 0) + runMinutes;
    return [leastElapsed(runs, done.map((count, at) => (at === index ? count + 1 : count)), restedAfter.map((rested, at) => (at === index ? until + run.soakMinutes : rested)), until)];
  });
  return ends.length === 0 ? now : Math.min(...ends);
}

describe("whatever the stations", () => {
  test("minute by minute one runs at most, each run stands once in order, and no rest is cut", () => {
    fc.assert(
      fc.property(fewRuns, (runs) => {
        const { starts, elapsedMinutes } = interleaved(runs);
        const running = Array.from({ length: elapsedMinutes }, (_, minute) => starts.filter(({ startsAfterMinutes: from, runMinutes }) => from <= minute && minute < from + runMinutes).length);
        expect(Math.max(...running)).toBe(1);
        for (const { stationName, runsMinutes, soakMinutes } of runs) {
          const own = starts.filter((start) => start.stationName === stationName);
          expect(own.map(({ runMinutes }) => runMinutes)).toEqual(runsMinutes);
          own.slice(1).forEach((start, index) => {
            const before = own[index];
            expect(start.startsAfterMinutes - (before?.startsAfterMinutes ?? 0) - (before?.runMinutes ?? 0)).toBeGreaterThanOrEqual(soakMinutes);
          });
        }
      }),
    );
  });
  test("never longer than one after another, nor than twice the least of all orders; never shorter than that", () => {
    fc.assert(
      fc.property(fewRuns, (runs) => {
        const { elapsedMinutes } = interleaved(runs);
        const least = leastElapsed(runs);
        expect(elapsedMinutes).toBeGreaterThanOrEqual(least);
        expect(elapsedMinutes).toBeLessThanOrEqual(2 * least);
        expect(elapsedMinutes).toBeLessThanOrEqual(runs.reduce((total, run) => total + run.elapsedMinutes, 0));
      }),
    );
  });
});

test("a stretch counts from its first whole minute", () => {
  const span = { fromEpochMilliseconds: MINUTE + 1, untilEpochMilliseconds: 4 * MINUTE };
  expect(firstWholeMinute(span)).toBe(2 * MINUTE);
  expect([fitsInto(2, span), fitsInto(3, span)]).toEqual([true, false]);
});

describe("whole stations on several days", () => {
  const six = ["A", "B", "C", "D", "E", "F"].map((name) => runOf(name, [60]));
  test("each stretch takes what fits, in the order of the list", () => {
    const parts = inParts(six, [stretch(0, 200), stretch(1440, 30), stretch(2880, 300)]);
    expect(parts?.map((part) => [part.fromEpochMilliseconds / MINUTE, clock(part.starts)])).toEqual([
      [0, ["A 0+60", "B 60+60", "C 120+60"]],
      [2880, ["D 0+60", "E 60+60", "F 120+60"]],
    ]);
  });
  test("where that leaves one over, the longest first", () => {
    const runs = [runOf("A", [20]), runOf("B", [20]), runOf("C", [60])];
    expect(inParts(runs, [stretch(0, 60), stretch(1440, 40)])?.map(({ starts }) => clock(starts))).toEqual([["C 0+60"], ["A 0+20", "B 20+20"]]);
  });
  test("none where one fits nowhere", () => expect(inParts([...six, runOf("G", [301])], [stretch(0, 300), stretch(1440, 300)])).toBeUndefined());
  test("every station stands once, within its stretch", () => {
    fc.assert(
      fc.property(fewRuns, fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 4 }), (runs, lengths) => {
        const windows = lengths.map((minutes, index) => stretch(index * 1440, minutes));
        const parts = inParts(runs, windows);
        if (parts === undefined) return;
        for (const { fromEpochMilliseconds: from, untilEpochMilliseconds: until, starts } of parts) {
          expect(windows).toContainEqual({ fromEpochMilliseconds: from, untilEpochMilliseconds: until });
          for (const { startsAfterMinutes, runMinutes } of starts) expect(from + (startsAfterMinutes + runMinutes) * MINUTE).toBeLessThanOrEqual(until);
        }
        for (const { stationName, runsMinutes } of runs) {
          const own = parts.map(({ starts }) => starts.filter((start) => start.stationName === stationName).map(({ runMinutes }) => runMinutes)).filter(({ length }) => length > 0);
          expect(own).toEqual([runsMinutes]);
        }
      }),
    );
  });
});

describe("stations that have a time of their own in a stretch", () => {
  const turn = (name: string, minutes: number, earliestMinute: number, latestMinute: number) => ({ run: runOf(name, [minutes]), earliestMinute, latestMinute });
  test("the one with the least time to spare begins, and none before its earliest minute", () => {
    const schedule = inTurn([turn("A", 60, 0, 300), turn("B", 20, 0, 40), turn("C", 30, 100, 300)]);
    expect([clock(schedule?.starts ?? []), schedule?.elapsedMinutes]).toEqual([["B 0+20", "A 20+60", "C 100+30"], 130]);
  });
  test("one that is done at its latest minute is in time, and a minute later it is not", () => {
    expect(inTurn([turn("A", 20, 0, 20), turn("B", 20, 0, 40)])?.elapsedMinutes).toBe(40);
    expect(inTurn([turn("A", 20, 0, 20), turn("B", 20, 0, 39)])).toBeUndefined();
  });
});

describe("the stations of several lawns", () => {
  const load = (runs: readonly TimedRun[], fromMinute: number, minutes: number): LawnsLoad => ({ runs, span: stretch(fromMinute, minutes) });
  const told = (loads: readonly LawnsLoad[], stretches: readonly ReturnType<typeof stretch>[]) =>
    placedTogether(loads, stretches)?.map(({ windows, parts, starts, isWithOthers }) => [
      windows.map(({ fromEpochMilliseconds: from, untilEpochMilliseconds: until }) => `${from / MINUTE} to ${until / MINUTE}`).join(", "),
      [...clock(starts), ...parts.flatMap((part) => clock(part.starts).map((one) => `${part.fromEpochMilliseconds / MINUTE}: ${one}`))].join(", "),
      isWithOthers,
    ]);
  test("share a stretch that is long enough for all, and later ones that would be", () => {
    const two = [load([runOf("A", [30]), runOf("B", [30])], 0, 6000), load([runOf("C", [60])], 0, 6000)];
    expect(told(two, [stretch(0, 120), stretch(1440, 100), stretch(2880, 120)])).toEqual([
      ["0 to 120, 2880 to 3000", "A 60+30, B 90+30", true],
      ["0 to 120, 2880 to 3000", "C 0+60", true],
    ]);
  });
  test("take a stretch each where none is, those that are due first before the others", () => {
    const two = [load([runOf("A", [60])], 0, 6000), load([runOf("B", [60])], 0, 1000)];
    expect(told(two, [stretch(0, 60), stretch(1440, 60)])).toEqual([["1440 to 1500", "A 0+60", false], ["0 to 60", "B 0+60", false]]);
  });
  test("keep to their own time in a stretch that they share, told from its first minute", () => {
    const two = [load([runOf("A", [60])], 90, 6000), load([runOf("B", [30])], 0, 100)];
    expect(told(two, [stretch(0, 240)])).toEqual([["90 to 240", "A 0+60", true], ["0 to 100", "B 0+30", true]]);
  });
  test("are cut into whole stations only where the lawns find no stretch each", () => {
    const two = [load([runOf("A", [40]), runOf("B", [40])], 0, 6000), load([runOf("C", [20])], 0, 6000)];
    expect(told(two, [stretch(0, 60), stretch(1440, 60)])).toEqual([["", "0: A 0+40, 1440: B 0+40", true], ["0 to 60", "C 40+20", true]]);
  });
  test("that do not fit are not placed", () => {
    expect(told([load([runOf("A", [40])], 0, 6000), load([runOf("B", [40])], 0, 1000)], [stretch(0, 60)])).toBeUndefined();
  });
});
