import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measureStation, type StationRate } from "#domain/equipment/catch-can-test";
import { planWatering, type SoilIntake, type WateringWish } from "#domain/equipment/irrigation-station";
import { compareExact, exactly, multiplyExact } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { rational, toNumber } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { saying } from "../../support/said";

/** A station that gives so much in an hour, from cans with these tenths of it. */
function station(inchesPerHour: string, parts: readonly bigint[] = [10n, 10n, 10n, 10n]): StationRate {
  const depths = parts.map((part) => multiplyExact(exactly("in", inchesPerHour), rational(part, 10n)));
  return valueOf(measureStation({ station: "Station 3", runMinutes: 60, cans: { kind: "depths", depths }, windMph: 0 }));
}

const sand: SoilIntake = { depthPerHour: of("in", 2n), standsAfterMinutes: "not-watched" };
const loam: SoilIntake = { depthPerHour: exactly("in", "0.4"), standsAfterMinutes: 8 };
const quarterInch: WateringWish = { depth: exactly("in", "0.25"), aim: "average", intake: sand };
const plan = (rate: StationRate, wish: WateringWish) => valueOf(planWatering("Station 3", rate, wish));
const refused = (rate: StationRate | "not-tested", wish: WateringWish) => refusalOf(planWatering("Station 3", rate, wish));

describe("minutes", () => {
  test("come from the station's own rate, whole and upwards, with what they give", () => {
    const found = plan(station("1.2"), quarterInch);
    expect(found).toMatchObject({ station: "Station 3", cycles: 1, runMinutes: 13, soakMinutes: 0, elapsedMinutes: 13, exactMinutes: rational(25n, 2n) });
    expect(compareExact(found.givesDepth, exactly("in", "0.26"))).toBe(0);
  });

  test("go downwards where the depth would pass a limit", () => {
    const found = plan(station("1.2"), { ...quarterInch, neverAbove: exactly("in", "0.25") });
    expect(found.runMinutes).toBe(12);
    expect(compareExact(found.givesDepth, exactly("in", "0.24"))).toBe(0);
    expect(plan(station("1.2"), { ...quarterInch, neverAbove: exactly("in", "0.26") }).runMinutes).toBe(13);
  });

  test("are longer where the driest quarter is to get the depth", () => {
    const uneven = station("1", [5n, 10n, 10n, 15n]);
    expect(plan(uneven, quarterInch).runMinutes).toBe(15);
    expect(plan(uneven, { ...quarterInch, aim: "driest-quarter" }).runMinutes).toBe(30);
  });
});

describe("cycle and soak", () => {
  test("where the soil takes less than the station gives", () => {
    const found = plan(station("1.2"), { ...quarterInch, intake: loam });
    // 12.5 minutes in two cycles of 7; each leaves 7 x (1.2 - 0.4) / 0.4 minutes of the soil's intake standing.
    expect(found).toMatchObject({ cycles: 2, runMinutes: 7, soakMinutes: 14, elapsedMinutes: 28 });
  });

  test("is not needed where one run ends before water stands, or the soil takes it all", () => {
    expect(plan(station("1.2"), { ...quarterInch, intake: { ...loam, standsAfterMinutes: 13 } })).toMatchObject({ cycles: 1, soakMinutes: 0 });
    expect(plan(station("0.4"), { ...quarterInch, intake: { ...loam, standsAfterMinutes: "not-watched" } })).toMatchObject({ cycles: 1 });
  });

  test("never runs on into standing water, soaks all of it in, and gives the depth, for any station", () => {
    const hundredths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((value) => (value / 100).toFixed(2));
    fc.assert(
      fc.property(hundredths(20, 300), hundredths(5, 100), hundredths(5, 100), fc.integer({ min: 1, max: 60 }), (rate, depth, intake, stands) => {
        const wish = { depth: exactly("in", depth), aim: "average", intake: { depthPerHour: exactly("in", intake), standsAfterMinutes: stands } } as const;
        const found = plan(station(rate), wish);
        const isFaster = Number(rate) > Number(intake);
        expect(isFaster ? found.runMinutes : 0).toBeLessThanOrEqual(stands);
        expect(compareExact(found.givesDepth, wish.depth)).toBeGreaterThanOrEqual(0);
        expect(found.runMinutes * found.cycles - toNumber(found.exactMinutes)).toBeLessThan(found.cycles + 1e-9);
        const takenIn = Number(intake) * (found.runMinutes + found.soakMinutes);
        expect(found.cycles > 1 ? takenIn : Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(Number(rate) * found.runMinutes - 1e-9);
      }),
    );
  });
});

describe("refused are", () => {
  test("a station that was not tested, with how to test it and no minutes", () => {
    const refusal = refused("not-tested", quarterInch);
    expect(refusal).toMatchObject({ kind: "missing-fact", field: "rate", sentence: saying("Set out cans") });
    expect(refusal.sentence).not.toMatch(/\d+ min/u);
  });

  test("a soil whose intake is not known, and one that was not watched", () => {
    expect(refused(station("1.2"), { ...quarterInch, intake: "unknown" })).toMatchObject({ kind: "missing-fact", field: "intake" });
    expect(refused(station("1.2"), { ...quarterInch, intake: { ...loam, standsAfterMinutes: "not-watched" } })).toMatchObject({
      kind: "missing-fact",
      field: "standsAfterMinutes",
      sentence: saying("gives 1.2 in each hour and the soil takes 0.4 in"),
    });
  });

  test.each<[string, WateringWish]>([
    ["intake", { ...quarterInch, intake: { ...loam, depthPerHour: zero("length") } }],
    ["standsAfterMinutes", { ...quarterInch, intake: { ...loam, standsAfterMinutes: 0 } }],
    ["standsAfterMinutes", { ...quarterInch, intake: { ...loam, standsAfterMinutes: 7.5 } }],
    ["depth", { ...quarterInch, depth: zero("length") }],
    ["depth", { ...quarterInch, neverAbove: exactly("in", "0.2") }],
    ["depth", { ...quarterInch, depth: exactly("in", "0.01"), neverAbove: exactly("in", "0.01") }],
  ])("%s", (field, wish) => {
    expect(refused(station("1.2"), wish)).toMatchObject({ kind: "bad-input", field });
  });

  test("a driest quarter that gets nothing, or only by giving the lawn more than is allowed", () => {
    expect(refused(station("1", [0n, 10n, 15n, 15n]), { ...quarterInch, aim: "driest-quarter" })).toMatchObject({ field: "aim", found: "driest quarter" });
    const capped = { ...quarterInch, aim: "driest-quarter", neverAbove: exactly("in", "0.3") } as const;
    expect(refused(station("1", [5n, 10n, 10n, 15n]), capped)).toMatchObject({ field: "aim", sentence: saying("DU 50%") });
  });
});
