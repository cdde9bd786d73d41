import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ISO_PRESSURE_PSI, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { type FlowTest, measureFlow } from "#domain/equipment/sprayer-flow";
import { compareExact, exactly, multiplyExact } from "#domain/quantities/exact-quantity";
import { densityFromSpecificGravity } from "#domain/quantities/density";
import { of, zero } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { anyQuantity } from "../../support/quantity-arbitraries";
import { saying } from "../../support/said";
import { between } from "../../support/real-numbers";

const caught = (nozzle: string, fluidOunces: string, seconds = 60) => ({ nozzle, volume: exactly("fl oz", fluidOunces), seconds });
const nominal = { rated: ratedFlowOfSize("04"), pressurePsi: ISO_PRESSURE_PSI };
const flowOf = (flow: FlowTest) => valueOf(measureFlow(flow, USUAL_SPREAD_LIMIT));
const rulesOf = (flow: FlowTest) => flowOf(flow).findings.map(({ rule }) => rule);

describe("a catch", () => {
  test("overrides the nominal flow", () => {
    const flow = flowOf({ catches: [caught("wand", "30", 30)], nominal });
    expect(flow.basis).toBe("measured");
    expect(compareExact(flow.flowPerMinute, of("fl oz", 60n))).toBe(0);
  });

  test("is held against the nominal flow for wear", () => {
    expect(rulesOf({ catches: [caught("wand", "54")], nominal })).toEqual([]);
    expect(rulesOf({ catches: [caught("wand", "60")], nominal })).toEqual(["nozzle-worn"]);
    expect(rulesOf({ catches: [caught("wand", "60")] })).toEqual([]);
  });

  test("of a heavier spray counts as the water that the tip would have given, at the pressure of the catch", () => {
    const uan = densityFromSpecificGravity("1.44");
    const rules = (fluidOunces: string, pressurePsi = ISO_PRESSURE_PSI) =>
      valueOf(measureFlow({ catches: [caught("wand", fluidOunces)], nominal: { ...nominal, pressurePsi } }, USUAL_SPREAD_LIMIT, uan)).findings;
    // A new 04 gives 54.1 fl oz of water, and 45.1 of a spray of 1.44.
    expect(rules("45")).toEqual([]);
    expect(rules("50")[0]).toMatchObject({ rule: "nozzle-worn", figure: saying("60 fl oz a minute of water, as 50 fl oz of the spray come to, against 54.1 fl oz new") });
    expect(rules("40")[0]).toMatchObject({ rule: "nozzle-gives-too-little" });
    // Four times the pressure gives twice as much.
    expect(rules("90", 4 * ISO_PRESSURE_PSI)).toEqual([]);
    expect(rules("100", 4 * ISO_PRESSURE_PSI)[0]).toMatchObject({ rule: "nozzle-worn" });
  });

  test("of several nozzles is averaged by nozzle first, and each is held against the others", () => {
    const flow = flowOf({ catches: [caught("left", "50"), caught("left", "50"), caught("left", "50"), caught("right", "70")] });
    expect(compareExact(flow.flowPerMinute, of("fl oz", 60n))).toBe(0);
    expect(flow.findings.map(({ about }) => about)).toEqual([["left"], ["right"]]);
  });

  test("that was repeated for every nozzle tells the widest spread", () => {
    const repeated = [caught("left", "49"), caught("left", "51"), caught("right", "45"), caught("right", "55"), caught("right", "50")];
    expect(flowOf({ catches: repeated }).uncertainty).toEqual({ kind: "spread-of-repeats", part: rational(1n, 10n), repeats: 2 });
    expect(flowOf({ catches: [...repeated, caught("middle", "50")] }).uncertainty).toEqual({ kind: "not-given" });
  });

  test("in twice the time is half the flow, whatever was caught", () => {
    fc.assert(
      fc.property(anyQuantity("volume", 1n), between(1, 3600), (volume, seconds) => {
        const once = flowOf({ catches: [{ nozzle: "gun", volume, seconds }] });
        const slower = flowOf({ catches: [{ nozzle: "gun", volume, seconds: 2 * seconds }] });
        expect(compareExact(multiplyExact(slower.flowPerMinute, rational(2n)), once.flowPerMinute)).toBe(0);
      }),
    );
  });
});

test("with no catch the nominal flow stands in, and says so", () => {
  const flow = flowOf({ catches: [], nominal });
  expect(flow.basis).toBe("nominal");
  expect(compareExact(flow.flowPerMinute, exactly("L", "1.6"))).toBe(0);
  expect(flow.findings).toMatchObject([{ level: "take-care", rule: "calibration-nominal-flow", source: "house" }]);
});

describe("refused are", () => {
  const refused = (flow: FlowTest) => refusalOf(measureFlow(flow, USUAL_SPREAD_LIMIT));

  test("neither a catch nor a nominal flow", () => {
    expect(refused({ catches: [] })).toMatchObject({ kind: "missing-fact", field: "catches" });
  });
  test("a catch of nothing, and in no time", () => {
    expect(refused({ catches: [caught("wand", "0")] }).field).toBe("volume");
    expect(refused({ catches: [caught("wand", "50", 0)] }).field).toBe("seconds");
  });
  test("a pressure out of range, with a catch and without", () => {
    const wrong = { ...nominal, pressurePsi: 2000 };
    expect(refused({ catches: [caught("wand", "50")], nominal: wrong }).field).toBe("pressurePsi");
    expect(refused({ catches: [], nominal: wrong }).field).toBe("pressurePsi");
  });
  test("a nominal flow of nothing", () => {
    const empty = { rated: { flowPerMinute: zero("volume"), atPressurePsi: 40, statedBy: "the maker" }, pressurePsi: 40 };
    expect(refused({ catches: [], nominal: empty }).field).toBe("nominal");
    expect(refused({ catches: [caught("wand", "50")], nominal: empty }).field).toBe("newFlowPerMinute");
  });
});
