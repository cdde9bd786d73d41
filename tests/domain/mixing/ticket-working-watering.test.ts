import fc from "fast-check";
import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { exactText, type IrrigationStation } from "#domain/mixing/irrigation-run";
import { wateringWorkings } from "#domain/mixing/ticket-working-watering";
import { aftercareQuestion, appliedOf, FEED, FRONT, hoursAfterEnd, IRON, labelOf, says } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";
import { faultsOf } from "../../support/read-working";

const workingsOf = (stations: readonly IrrigationStation[], label = FEED) => wateringWorkings(valueOf(aftercareTimeline(aftercareQuestion([appliedOf(label)], { stations }))));

test("minutes from the label's depth and the station's own rate", () => {
  expect(workingsOf([FRONT])).toEqual([
    {
      title: "Minutes of station Front",
      formula: "minutes = depth ÷ what the station puts down in an hour × 60, up to a whole minute",
      inputs: [
        { name: "Depth", figure: "¼ in", from: "the label of Evenfeed 18" },
        { name: "Station", figure: "¾ in an hour", from: "its own test with cans" },
      ],
      steps: ["¼ in ÷ ¾ in × 60 min = 20 min"],
      result: "Front: 20 min.",
      source: "the depth: the label; the station’s rate: its test with cans in little wind (NMSU Guide H-510, Kent and Leinauer)",
    },
  ]);
});

test("up to a whole minute, in runs that the soil can take", () => {
  const [working] = workingsOf([{ ...FRONT, depthPerHour: of("in", "0.7"), cycle: { longestRunMinutes: 12, soakMinutes: 30 } }]);
  expect(working?.steps).toEqual([
    "¼ in ÷ 0.7 in × 60 min = 21.4286 min",
    "Up to a whole minute: 22 min, which put down 0.25667 in.",
    "22 min ÷ 2 = 11 min a run, in whole minutes 11 and 11",
    "11 min + 11 min = 22 min",
    "22 min + 1 × 30 min = 52 min from the first drop to the last",
  ]);
  expect(working && faultsOf(working)).toEqual([]);
});

test("the depth is that of the label that asks for it, not of every label that asks for water", () => {
  const deep = labelOf("Preem 0-0-7", says("watering-in", { by: hoursAfterEnd(72), depth: { least: of("in", "0.5"), most: "none" }, rain: "counts" }));
  const timeline = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED), appliedOf(deep)])));
  const depthOf = (one: typeof timeline) => wateringWorkings(one)[0]?.inputs[0];
  expect(depthOf(timeline)).toEqual({ name: "Depth", figure: "½ in", from: "the label of Preem 0-0-7" });
  const alike = labelOf("Alike", says("watering-in", { by: hoursAfterEnd(72), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
  expect(depthOf(valueOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED), appliedOf(alike)]))))?.from).toBe("the label of Alike and Evenfeed 18");
  if (timeline.watering.kind !== "window") throw new Error("this watering has a window");
  const { leastDepthOf: _of, ...earlier } = timeline.watering;
  expect(depthOf({ ...timeline, watering: earlier })?.from).toBe("the label of Evenfeed 18 and Preem 0-0-7");
});

test("an earlier mix ticket, without what was added since and rounded down, is still told", () => {
  const capped = labelOf("Thirstless", says("watering-in", { by: hoursAfterEnd(24), depth: { least: of("in", "0.25"), most: of("in", "0.3") }, rain: "counts" }));
  const timeline = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(capped)], { stations: [{ ...FRONT, depthPerHour: of("in", "0.7") }] })));
  if (timeline.watering.kind !== "window") throw new Error("this watering has a window");
  const { parts: _parts, starts: _starts, dueAtEpochMilliseconds: _due, isOverdue: _overdue, hasHours: _hours, hoursInWords: _words, stayUnder: _under, ...earlier } = timeline.watering;
  const [run] = earlier.stations;
  if (run?.kind !== "run") throw new Error("this station has minutes");
  const down = { ...run, totalMinutes: 21, runsMinutes: [21], elapsedMinutes: 21, rounding: "down-to-stay-within-most", depthReached: exactText(exactly("in", "0.245").exactAmount) } as const;
  const mostDepth = exactText(exactly("in", "0.251").exactAmount);
  const stored = JSON.parse(JSON.stringify({ ...timeline, watering: { ...earlier, mostDepth, stations: [down] } })) as typeof timeline;
  const [working] = wateringWorkings(stored);
  expect(working?.steps.slice(1)).toEqual(["22 min ÷ 60 min × 0.7 in = 0.25667 in, which is more than the 0.251 in that are allowed", "So down to a whole minute: 21 min, which put down 0.245 in."]);
});

test("stations in each other's rests have their order told, run by run", () => {
  const workings = workingsOf([FRONT, { stationName: "Back", depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 10, soakMinutes: 30 } }]);
  expect(workings.map(({ title }) => title)).toEqual(["Minutes of station Front", "Minutes of station Back", "The order of the stations"]);
  expect(workings[2]).toMatchObject({
    inputs: [{ figure: "0 min" }, { name: "Station Front", figure: "20 min" }, { name: "Station Back", figure: "10, 10 and 10 min, 30 min of rest between" }],
    steps: ["0 min + 10 min = 10 min, Back", "10 min + 20 min = 30 min, Front", "None is rested before 40 min.", "40 min + 10 min = 50 min, Back", "None is rested before 80 min.", "80 min + 10 min = 90 min, Back"],
    result: "90 min from the first drop to the last, one station at a time.",
  });
  expect(workings.flatMap(faultsOf)).toEqual([]);
});

test("one without a test changes nothing in the order of the others; where stations of other lawns run in between there is none", () => {
  const back = { stationName: "Back", depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 10, soakMinutes: 30 } } as const;
  const workings = workingsOf([FRONT, { ...FRONT, stationName: "New", depthPerHour: "not-tested" }, back]);
  expect(workings[2]).toMatchObject({ title: "The order of the stations", result: "90 min from the first drop to the last, one station at a time." });
  const timeline = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED)], { stations: [FRONT, back] })));
  if (timeline.watering.kind !== "window") throw new Error("this watering has a window");
  const beside = { ...timeline, watering: { ...timeline.watering, isWithOthers: true } };
  expect(wateringWorkings(beside).map(({ title }) => title)).toEqual(["Minutes of station Front", "Minutes of station Back"]);
});

test("stations without rests need no order told", () => {
  expect(workingsOf([FRONT, { ...FRONT, stationName: "Back" }]).map(({ title }) => title)).toEqual(["Minutes of station Front", "Minutes of station Back"]);
});

test("no station without a test, and no watering that nobody asks for, has a working", () => {
  expect(workingsOf([{ ...FRONT, depthPerHour: "not-tested" }])).toEqual([]);
  expect(workingsOf([FRONT], IRON)).toEqual([]);
});

test("whatever the station puts down, a reader comes to its minutes", () => {
  fc.assert(
    fc.property(fc.bigInt(25n, 400n), fc.integer({ min: 2, max: 60 }), (hundredths, longestRunMinutes) => {
      const [working] = workingsOf([{ ...FRONT, depthPerHour: of("in", { numerator: hundredths, denominator: 100n }), cycle: { longestRunMinutes, soakMinutes: 20 } }]);
      expect(working === undefined ? ["none"] : faultsOf(working)).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
