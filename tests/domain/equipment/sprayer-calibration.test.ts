import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rectangleArea } from "#domain/equipment/measured-space";
import { ISO_PRESSURE_PSI, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { measurePace, minutesFromSeconds } from "#domain/equipment/pace";
import { calibrateSprayer, type CaughtLiquid, densityAfterWater, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { densityFromSpecificGravity } from "#domain/quantities/density";
import { compareExact, exactly, multiplyExact } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { compareRates, rateOf, rateFrom, scaleRate } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { anyQuantity } from "../../support/quantity-arbitraries";
import { between } from "../../support/real-numbers";

const asCaught: CaughtLiquid = { kind: "the-spray-itself" };
const calibrate = (sprayer: SprayerTest, liquid: CaughtLiquid = asCaught) => calibrateSprayer(sprayer, liquid, USUAL_SPREAD_LIMIT);
const pace = { kind: "timed-course", course: of("ft", 176n), seconds: [40] } as const;
const nozzles = ["1", "2", "3"].map((nozzle) => ({ nozzle, volume: of("fl oz", 60n), seconds: 60 }));
const boom: SprayerTest = { method: "boom", nozzleSpacing: of("in", 20n), pace, catches: nozzles };
const backpack: SprayerTest = { method: "backpack", swath: of("ft", 4n), pace, catches: [{ nozzle: "wand", volume: of("fl oz", 64n), seconds: 60 }] };
const thousand = of("sq ft", 1000n);
const gunCatch = { nozzle: "gun", volume: of("gal", 1n), seconds: 30 };
const gun = (...seconds: number[]): SprayerTest => ({ method: "gun", coverings: seconds.map((each) => ({ area: thousand, seconds: each })), catches: [gunCatch] });
const smallArea: SprayerTest = { method: "small-area", runs: [{ area: thousand, volume: of("gal", 2n) }, { area: of("sq ft", 500n), volume: of("qt", 4n) }] };
const perThousand = (gallons: string) => rateOf("carrier-volume-per-area", gallons, "gal per 1,000 sq ft");

describe("the carrier rate", () => {
  test("of a boom: 60 fl oz a minute over 20 in at 264 ft a minute, on 440 sq ft", () => {
    const { carrierRate, basis, test: inputs, areaPerMinute } = valueOf(calibrate(boom));
    expect(areaPerMinute === undefined ? undefined : compareExact(areaPerMinute, of("sq ft", 440n))).toBe(0);
    expect(carrierRate).toEqual(rateFrom("carrier-volume-per-area", of("fl oz", 60n), of("sq ft", 440n)));
    expect([basis, inputs.method]).toEqual(["measured", "boom"]);
    expect(inputs).toBe(boom);
  });

  test("of a backpack: half a gallon a minute on 1,056 sq ft", () => {
    expect(valueOf(calibrate(backpack)).carrierRate).toEqual(rateFrom("carrier-volume-per-area", exactly("gal", "0.5"), of("sq ft", 1056n)));
  });

  test("of a gun: 2 gal a minute and a minute for 1,000 sq ft, with the spread of its runs", () => {
    const calibration = valueOf(calibrate(gun(54, 60, 66)));
    expect(calibration.carrierRate).toEqual(perThousand("2"));
    expect(calibration.uncertainty).toEqual({ kind: "not-given" });
    const repeated = valueOf(calibrate({ ...gun(54, 60, 66), catches: [gunCatch, gunCatch] } as SprayerTest));
    expect(repeated.uncertainty).toEqual({ kind: "spread-of-repeats", part: rational(1n, 10n), repeats: 2 });
  });

  test("of a small area: the average of its runs", () => {
    const calibration = valueOf(calibrate(smallArea));
    expect(calibration.carrierRate).toEqual(perThousand("2"));
    expect([calibration.flowPerMinute, calibration.areaPerMinute]).toEqual([undefined, undefined]);
    expect(calibration.uncertainty).toEqual({ kind: "spread-of-repeats", part: rational(0n), repeats: 2 });
  });

  test("is twice as high at half the speed or half the width, for any boom", () => {
    fc.assert(
      fc.property(anyQuantity("volume", 1n), anyQuantity("length", 1n), between(0.4, 20), (volume, width, milesPerHour) => {
        const at = (mph: number, spacing = exactly("ft", 0n)) =>
          valueOf(calibrate({ method: "boom", nozzleSpacing: spacing.exactAmount.numerator === 0n ? width : spacing, pace: { kind: "speed", milesPerHour: mph }, catches: [{ nozzle: "1", volume, seconds: 60 }] })).carrierRate;
        const doubled = scaleRate(at(milesPerHour), rational(2n));
        expect(compareRates(at(milesPerHour, multiplyExact(width, rational(1n, 2n))), doubled)).toBe(0);
        expect(compareRates(at(milesPerHour / 2), doubled)).toBe(0);
      }),
    );
  });

  test("by the small area is the boom's when it is caught over the same ground", () => {
    fc.assert(
      fc.property(anyQuantity("volume", 1n), between(0.2, 20), anyQuantity("length", 1n), between(1, 600), (volume, milesPerHour, width, seconds) => {
        const course = multiplyExact(valueOf(measurePace({ kind: "speed", milesPerHour })).distancePerMinute, minutesFromSeconds(seconds));
        const byFlow = calibrate({ method: "backpack", swath: width, pace: { kind: "timed-course", course, seconds: [seconds] }, catches: [{ nozzle: "wand", volume, seconds }] });
        const byArea = calibrate({ method: "small-area", runs: [{ area: rectangleArea(course, width), volume }] });
        expect(valueOf(byFlow).carrierRate).toEqual(valueOf(byArea).carrierRate);
      }),
    );
  });
});

test("water that was caught for a denser spray is corrected, and both rates are kept", () => {
  const calibration = valueOf(calibrate(smallArea, { kind: "water-for-a-spray", sprayDensity: densityFromSpecificGravity("1.44") }));
  expect(calibration.caughtRate).toEqual(perThousand("2"));
  expect(calibration.densityFactor).toEqual(rational(6n, 5n));
  expect(calibration.carrierRate).toEqual(scaleRate(perThousand("2"), rational(5n, 6n)));
});

test("a nominal flow is one of water: a heavier spray comes slower, and one that was caught itself is as it was caught", () => {
  const density = densityFromSpecificGravity("1.44");
  const nominal = { rated: ratedFlowOfSize("04"), pressurePsi: ISO_PRESSURE_PSI };
  const [water, heavier] = [valueOf(calibrate({ ...boom, catches: [], nominal })), valueOf(calibrate({ ...boom, catches: [], nominal }, { kind: "the-spray-itself", density }))];
  expect(compareRates(heavier.carrierRate, scaleRate(water.carrierRate, rational(5n, 6n)))).toBe(0);
  expect(valueOf(calibrate(boom, { kind: "the-spray-itself", density })).carrierRate).toEqual(valueOf(calibrate(boom)).carrierRate);
});

test("water becomes the spray by its density; what is of the spray already stays", () => {
  const density = densityFromSpecificGravity("1.44");
  expect(densityAfterWater({ kind: "water-for-a-spray", sprayDensity: density }, "measured")).toEqual(density);
  expect(densityAfterWater({ kind: "the-spray-itself", density }, "nominal")).toEqual(density);
  expect(densityAfterWater({ kind: "the-spray-itself", density }, "measured")).toBeUndefined();
  expect(densityAfterWater({ kind: "the-spray-itself" }, "nominal")).toBeUndefined();
});

describe("findings", () => {
  const rules = (sprayer: SprayerTest) => valueOf(calibrate(sprayer)).findings.map(({ level, rule }) => `${level} ${rule}`);

  test("none for a boom whose nozzles agree", () => {
    expect(rules(boom)).toEqual([]);
  });
  test("a nominal flow stands in where nothing was caught", () => {
    const nominal = { rated: ratedFlowOfSize("04"), pressurePsi: ISO_PRESSURE_PSI };
    const sprayer: SprayerTest = { ...boom, catches: [], nominal };
    expect(rules(sprayer)).toEqual(["take-care calibration-nominal-flow"]);
    expect(valueOf(calibrate(sprayer)).basis).toBe("nominal");
    expect(valueOf(calibrate({ ...boom, nominal })).basis).toBe("measured");
  });
  test("a gun that was timed twice, and a small area that was sprayed once", () => {
    expect(rules(gun(60, 60))).toEqual(["take-care calibration-of-few-gun-runs"]);
    expect(rules({ method: "small-area", runs: [{ area: thousand, volume: of("gal", 2n) }] })).toEqual(["note calibration-of-one-run"]);
  });
});

describe("refused are", () => {
  test.each<[string, SprayerTest]>([
    ["nozzleSpacing", { ...boom, nozzleSpacing: zero("length") }],
    ["swath", { ...backpack, swath: zero("length") }],
    ["milesPerHour", { ...boom, pace: { kind: "speed", milesPerHour: 40 } }],
    ["catches", { ...boom, catches: [] }],
    ["coverings", gun()],
    ["seconds", gun(0.1)],
    ["area", { method: "gun", coverings: [{ area: zero("area"), seconds: 60 }], catches: [gunCatch] }],
    ["runs", { method: "small-area", runs: [] }],
    ["area", { method: "small-area", runs: [{ area: zero("area"), volume: of("gal", 2n) }] }],
    ["volume", { method: "small-area", runs: [{ area: thousand, volume: zero("volume") }] }],
  ])("%s", (field, sprayer) => {
    expect(refusalOf(calibrate(sprayer)).field).toBe(field);
  });
});
