import { describe, expect, test } from "vitest";
import { depthPerHour, evennessOf, evennessWords, isEmptyCan, readStationTest } from "#domain/equipment/station-test";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";

const typed = (depths: string, minutes: string, wind = "") => ({ depths, minutes, wind });

test("the average of the cans over the minutes is the rate: 0.24 in in 20 minutes are 0.72 in an hour", () => {
  const test = valueOf(readStationTest(typed("0.2, 0.24 in; 0.28, 0.24", "20", "3")));
  expect(test).toEqual({ cans: [of("in", "0.2"), of("in", "0.24"), of("in", "0.28"), of("in", "0.24")], averageDepth: of("in", "0.24"), minutes: 20, windMph: 3 });
  expect(formatQuantityIn(depthPerHour(test), "in", 2)).toBe("0.72 in");
});

test("an empty can counts, other units of length are read, and a wind that nobody looked at is said", () => {
  const test = valueOf(readStationTest(typed("0, 6 mm\n12 mm, 0.0 in", "15")));
  expect(test).toEqual({ cans: [zero("length"), of("mm", 6n), of("mm", 12n), zero("length")], averageDepth: of("mm", "4.5"), minutes: 15, windMph: "not-taken" });
});

test("a unit after the last can is that of all, and one beside cans without is asked about", () => {
  const inMillimeters = valueOf(readStationTest(typed("2, 3, 0, 3 mm", "60")));
  expect(inMillimeters.cans).toEqual([of("mm", 2n), of("mm", 3n), zero("length"), of("mm", 3n)]);
  expect(formatQuantityIn(depthPerHour(inMillimeters), "mm", 2)).toBe("2 mm");
  expect(refusalOf(readStationTest(typed("2 mm, 3, 2, 3", "60")))).toMatchObject({ field: "depths", sentence: expect.stringMatching(/a unit after each/u) as string });
});

test("minutes and wind may have their unit behind them, and another one is refused by the one wanted", () => {
  for (const [minutes, wind] of [["20 min", "3 mph"], ["20 Mins.", "3 MPH"], ["20m", "3mph"]] as const) {
    expect(valueOf(readStationTest(typed("0.2, 0.24, 0.28, 0.24", minutes, wind)))).toMatchObject({ minutes: 20, windMph: 3 });
  }
  expect(refusalOf(readStationTest(typed("0.2, 0.24, 0.28, 0.24", "1 h", "3")))).toMatchObject({ field: "minutes", sentence: '"1 h" is in h; here it takes minutes.' });
  expect(refusalOf(readStationTest(typed("0.2, 0.24, 0.28, 0.24", "20", "5 km/h")))).toMatchObject({ field: "wind", sentence: '"5 km/h" is in km/h; here it takes mph.' });
});

test("cans without a space behind their commas are parted too", () => {
  expect(valueOf(readStationTest(typed("0.2,0.24,0.28,0.24", "20"))).cans).toHaveLength(4);
});

describe("refused", () => {
  test.each([
    ["0.2, 0.3, 0.2", "20", "", "depths"], ["", "20", "", "depths"], ["0, 0, 0, 0", "20", "", "depths"], ["0.2, some, 0.3, 0.2", "20", "", "depths"],
    ["9 ft, 9 ft, 9 ft, 9 ft", "1", "", "depths"], ["0.0001, 0.0001, 0.0001, 0.0001", "240", "", "depths"],
    ["0.2, 0.3, 0.2, 0.2", "", "", "minutes"], ["0.2, 0.3, 0.2, 0.2", "0", "", "minutes"], ["0.2, 0.3, 0.2, 0.2", "241", "", "minutes"], ["0.2, 0.3, 0.2, 0.2", "7.5", "", "minutes"],
    ["0.2, 0.3, 0.2, 0.2", "20", "135", "wind"], ["0.2, 0.3, 0.2, 0.2", "20", "calm", "wind"],
  ])("%j in %j minutes in a wind of %j: at %s", (depths, minutes, wind, field) => {
    expect(refusalOf(readStationTest({ depths, minutes, wind })).field).toBe(field);
  });
});

test("the evenness of a test on file is its DU and CU, with what is to be said of it", () => {
  const calm = valueOf(readStationTest(typed("0.2, 0.3, 0.3, 0.4", "15", "3")));
  expect(evennessOf("station 1 Front", calm)).toEqual({ uniformity: { lowerQuarterUniformity: rational(2n, 3n), christiansenUniformity: rational(5n, 6n) }, findings: [] });
  expect(evennessWords(evennessOf("station 1 Front", calm))).toBe("DU 67%, CU 83%");
  const windy = evennessOf("station 1 Front", { ...calm, windMph: 9 });
  expect(windy.findings).toMatchObject([{ level: "take-care", rule: "can-test-in-wind", about: ["station 1 Front"] }]);
});

test("a test without its cans, or with cans that would not be taken today, has no evenness and wants care", () => {
  const test = valueOf(readStationTest(typed("0.2, 0.3, 0.3, 0.4", "15", "3")));
  for (const one of [{ ...test, cans: [] }, { ...test, cans: [of("ft", 9n), of("ft", 9n), of("ft", 9n), of("ft", 9n)] }]) {
    const evenness = evennessOf("station 1 Front", one);
    expect(evenness.uniformity).toBeNull();
    expect(evenness.findings).toMatchObject([{ level: "take-care", rule: "can-test-without-cans", what: "How evenly station 1 Front waters is not known." }]);
    expect(evennessWords(evenness)).toBe("Not known");
  }
});

test("an empty can is nothing in any unit of a depth", () => {
  expect(["0", "0.0", "00", "0 in", "0mm", "0.00 cm"].map(isEmptyCan)).not.toContain(false);
  expect(["", "0.01", "0 ft", "10", "-0"].map(isEmptyCan)).not.toContain(true);
});
