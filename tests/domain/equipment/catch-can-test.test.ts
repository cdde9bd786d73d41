import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CatchCanTest, christiansenUniformity, designedDepthPerHour, distributionUniformity, lowCans, measureStation } from "#domain/equipment/catch-can-test";
import { compareExact, exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { compareRational, multiplyRational, ONE, rational, toNumber } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { saying } from "../../support/said";

const depths = (...inches: string[]) => ({ kind: "depths", depths: inches.map((inch) => exactly("in", inch)) }) as const;
const calm: CatchCanTest = { station: "Station 3", runMinutes: 15, cans: depths("0.2", "0.3", "0.3", "0.4"), windMph: 3 };
const whole = (...values: number[]) => values.map((value) => rational(BigInt(value)));

describe("a station's rate", () => {
  test("is the average depth as a depth in an hour, with all that went in", () => {
    const rate = valueOf(measureStation(calm));
    expect(compareExact(rate.depthPerHour, exactly("in", "1.2"))).toBe(0);
    expect(compareRational(rate.lowerQuarterUniformity, rational(2n, 3n))).toBe(0);
    expect(compareRational(rate.christiansenUniformity, rational(5n, 6n))).toBe(0);
    expect(rate.test).toBe(calm);
    expect(rate.findings).toEqual([]);
  });

  test("from volumes in round cans is their depth on the mouth", () => {
    const volumes = Array.from({ length: 4 }, () => of("mL", 50n));
    const rate = valueOf(measureStation({ ...calm, cans: { kind: "volumes", mouthDiameter: of("cm", 10n), volumes } }));
    expect(toNumber(measureInUnit(rate.depthPerHour, "mm"))).toBeCloseTo((4 * 50_000) / (Math.PI * 50 ** 2), 9);
  });

  test("of a windy test is a matter for care, and of one without wind a note", () => {
    expect(valueOf(measureStation({ ...calm, windMph: 5 })).findings).toEqual([]);
    expect(valueOf(measureStation({ ...calm, windMph: 5.1 })).findings).toMatchObject([
      { level: "take-care", rule: "can-test-in-wind", figure: saying("5.1 mph"), citation: saying("H-510"), about: ["Station 3"] },
    ]);
    expect(valueOf(measureStation({ ...calm, windMph: "not-taken" })).findings).toMatchObject([{ level: "note", rule: "can-test-wind-not-taken" }]);
  });

  test.each<[string, CatchCanTest]>([
    ["cans", { ...calm, cans: depths("0.2", "0.3", "0.3") }],
    ["cans", { ...calm, cans: depths("0", "0", "0", "0") }],
    ["mouthDiameter", { ...calm, cans: { kind: "volumes", mouthDiameter: zero("length"), volumes: [] } }],
    ["runMinutes", { ...calm, runMinutes: 0.5 }],
    ["runMinutes", { ...calm, runMinutes: Number.NaN }],
    ["windMph", { ...calm, windMph: -1 }],
    ["windMph", { ...calm, windMph: 135 }],
    ["cans", { ...calm, cans: depths("0.2", "0.3", "0.3", "12.01") }],
    ["cans", { ...calm, cans: depths("0.009", "0.009", "0.009", "0.0099"), runMinutes: 2 }],
    ["cans", { ...calm, cans: depths("0.1", "0.1", "0.1", "0.1"), runMinutes: 121 }],
    ["cans", { ...calm, cans: depths("3.01", "3.01", "3.01", "3.01") }],
  ])("is refused: %s", (field, wrong) => {
    expect(refusalOf(measureStation(wrong)).field).toBe(field);
  });
});

test("the bounds of a test belong to it: a foot in a can or in an hour, a hundredth on the average, a twentieth in an hour", () => {
  const tried = (inches: readonly string[], runMinutes: number) => measureStation({ ...calm, cans: depths(...inches), runMinutes }).ok;
  expect(tried(["12", "0", "0", "0"], 15)).toBe(true);
  expect(tried(["3", "3", "3", "3"], 15)).toBe(true);
  expect(tried(["0.01", "0.01", "0.01", "0.01"], 12)).toBe(true);
  expect(tried(["0.1", "0.1", "0.1", "0.1"], 120)).toBe(true);
});

test("what no station can have given is refused in words", () => {
  const sentenceOf = (inches: readonly string[], runMinutes: number) => refusalOf(measureStation({ ...calm, cans: depths(...inches), runMinutes })).sentence;
  expect(sentenceOf(["108", "108", "108", "108"], 1)).toBe("A can with 108 in of water can't be meant; a can holds up to 12 in.");
  expect(sentenceOf(["0.0001", "0.0001", "0.0001", "0.0001"], 240)).toContain("less than 0.01 in on the average");
  expect(sentenceOf(["1", "1", "1", "1"], 1)).toContain("That would be 60 in in an hour");
});

test("a quarter of empty cans wants care, and says how many", () => {
  const dry = (...inches: string[]) => valueOf(measureStation({ ...calm, cans: depths(...inches) })).findings.map(({ rule, figure }) => [rule, figure]);
  expect(dry("0", "0.3", "0.3", "0.4")).toEqual([["can-test-dry-quarter", "The driest can was empty: the DU is 0%."]]);
  expect(dry("0", "0", "0.3", "0.4", "0.4", "0.4")).toEqual([["can-test-dry-quarter", "The 2 driest cans were empty: the DU is 0%."]]);
  expect(dry("0", "0.2", "0.3", "0.4", "0.4", "0.4")).toEqual([]);
});

describe("uniformity", () => {
  test("is one where all cans caught the same", () => {
    const same = whole(7, 7, 7, 7, 7);
    expect(compareRational(valueOf(distributionUniformity(same, "lower-quarter")), ONE)).toBe(0);
    expect(compareRational(valueOf(christiansenUniformity(same)), ONE)).toBe(0);
  });

  test.each([[4, 1], [5, 1], [6, 2], [9, 2], [10, 2], [14, 4], [15, 4], [16, 4]])("of %d cans takes the lowest %d", (count, low) => {
    const cans = Array.from({ length: count }, (_, index) => (index < low ? 0 : 1));
    expect(valueOf(distributionUniformity(whole(...cans), "lower-quarter")).numerator).toBe(0n);
    const oneMore = Array.from({ length: count }, (_, index) => (index < low - 1 ? 0 : 1));
    expect(valueOf(distributionUniformity(whole(...oneMore), "lower-quarter")).numerator).toBeGreaterThan(0n);
  });

  test("of the lower half is never under that of the lower quarter, none is over one, and no unit matters", () => {
    const catches = fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 4, maxLength: 30 }).filter((values) => values.some((value) => value > 0));
    fc.assert(
      fc.property(catches, fc.bigInt({ min: 1n, max: 99n }), (values, unit) => {
        const cans = whole(...values);
        const quarter = valueOf(distributionUniformity(cans, "lower-quarter"));
        const half = valueOf(distributionUniformity(cans, "lower-half"));
        const christiansen = valueOf(christiansenUniformity(cans));
        expect(compareRational(quarter, half)).toBeLessThanOrEqual(0);
        expect(compareRational(half, ONE)).toBeLessThanOrEqual(0);
        expect(compareRational(christiansen, ONE)).toBeLessThanOrEqual(0);
        const scaled = cans.map((value) => multiplyRational(value, rational(unit, 7n)));
        expect(valueOf(distributionUniformity(scaled, "lower-quarter"))).toEqual(quarter);
        expect(valueOf(christiansenUniformity(scaled))).toEqual(christiansen);
      }),
    );
  });

  test("is refused for three cans and for empty ones", () => {
    expect(refusalOf(distributionUniformity(whole(1, 2, 3), "lower-half")).field).toBe("cans");
    expect(refusalOf(christiansenUniformity(whole(0, 0, 0, 0))).found).toBe("all empty");
    expect(refusalOf(christiansenUniformity([])).field).toBe("cans");
    expect(refusalOf(christiansenUniformity(whole(1))).sentence).toBe("1 can is too few; set out at least 4 in the reach of the station.");
    expect(refusalOf(christiansenUniformity(whole(1, 2))).sentence).toBe("2 cans are too few; set out at least 4 in the reach of the station.");
  });
});

test("the designed depth is 96.25 gallons a minute over square feet, and more in triangles", () => {
  const designed = (spacing: "square" | "triangular") => valueOf(designedDepthPerHour(of("gal", 1n), of("sq ft", 1n), spacing));
  expect(compareExact(designed("square"), exactly("in", "96.25"))).toBe(0);
  expect(compareExact(designed("triangular"), exactly("in", rational(96_250n, 866n)))).toBe(0);
  expect(refusalOf(designedDepthPerHour(of("gal", 1n), zero("area"), "square")).field).toBe("area");
});

// R 4: round(n / 4) for n from 4 to 18, which spreval takes (R/CUDU.R).
test("the low quarter is rounded as R rounds, half a can to the even number", () => {
  const counts = Array.from({ length: 15 }, (_, index) => index + 4);
  expect(counts.map((cans) => lowCans(cans, "lower-quarter"))).toEqual([1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 4, 4, 4, 4, 4]);
  expect([4, 5, 6, 7].map((cans) => lowCans(cans, "lower-half"))).toEqual([2, 2, 3, 4]);
});
