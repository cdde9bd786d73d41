import { describe, expect, test } from "vitest";
import { NO_NOMINAL_SPRAYER, nominalSprayer, type TypedNominalSprayer, withoutFigures } from "#domain/equipment/nominal-sprayer";
import { type SprayerKind } from "#domain/equipment/equipment-kind";
import { of, type Quantity } from "#domain/quantities/quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { rateOf, ratioOfRates } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";

const GUN: TypedNominalSprayer = { ...NO_NOMINAL_SPRAYER, tip: "Blue", tipFlow: "1.5 gal", tipFlowPsi: "40", pressurePsi: "40", minutesPerThousand: "1" };
const BOOM: TypedNominalSprayer = { ...NO_NOMINAL_SPRAYER, tip: "Flat fan, red", tipSize: "04", pressurePsi: "40", nozzleSpacing: "20 in", speedMph: "3" };
const ask = (typed: Partial<TypedNominalSprayer>, kind: SprayerKind = "hose-and-gun", swath: Quantity<"length"> | null = null) => nominalSprayer({ kind, typed: { ...NO_NOMINAL_SPRAYER, ...typed }, swath });
const perThousand = (typed: Partial<TypedNominalSprayer>, kind?: SprayerKind, swath?: Quantity<"length">) =>
  toNumber(ratioOfRates(valueOf(ask(typed, kind, swath)).rate, rateOf("carrier-volume-per-area", "1", "gal per 1,000 sq ft")));

describe("a gun", () => {
  test("puts out its maker's flow over the minutes that 1,000 sq ft take", () => {
    expect(formatRate(valueOf(ask(GUN)).rate, "us")).toBe("1½ gal per 1,000 sq ft");
    expect(perThousand({ ...GUN, minutesPerThousand: "2 min" })).toBeCloseTo(3, 9);
    expect(valueOf(ask(GUN))).toMatchObject({ tip: "Blue", pressurePsi: 40, statedBy: "its maker (1.5 gal a minute at 40 psi), at 40 psi and 1 min for 1,000 sq ft" });
  });

  test("at four times the pressure gives twice as much", () => {
    expect(perThousand({ ...GUN, pressurePsi: "160" })).toBeCloseTo(3, 9);
  });

  test("by a speed needs the gear's swath", () => {
    const walked = { ...GUN, minutesPerThousand: "", speedMph: "2 mph" };
    // 2 mph is 176 ft a minute: 1,408 sq ft at 8 ft.
    expect(perThousand(walked, "hose-and-gun", of("ft", 8n))).toBeCloseTo(1.5 / 1.408, 9);
    expect(valueOf(ask(walked, "hose-and-gun", of("ft", 8n))).statedBy).toMatch(/at 40 psi and 2 mph$/u);
    expect(refusalOf(ask(walked))).toMatchObject({ kind: "missing-fact", sentence: "Missing for nominal figures: the swath." });
  });
});

describe("a boom", () => {
  test("puts out what the standard gives its tip, over its spacing at the speed", () => {
    // 1.6 L a minute at 3 bar, at 40 psi times the root of 40 / 43.511; 264 ft a minute times 20 in are 440 sq ft.
    const gallons = (1.6 / 3.785411784) * Math.sqrt(40 / (300_000 / 6_894.757_293_168));
    expect(perThousand(BOOM, "boom-sprayer")).toBeCloseTo(gallons / 0.44, 9);
    expect(valueOf(ask(BOOM, "boom-sprayer")).statedBy).toBe("ISO 10625, size 04, at 40 psi and 3 mph");
  });

  test("needs a spacing and a speed; minutes for an area say nothing of one nozzle", () => {
    const refusal = refusalOf(ask({ ...BOOM, nozzleSpacing: "", speedMph: "", minutesPerThousand: "1" }, "boom-sprayer", of("ft", 8n)));
    expect(refusal).toMatchObject({ kind: "missing-fact", sentence: "Missing for nominal figures: the spacing of the nozzles and the speed." });
  });
});

describe("refuses", () => {
  test("by name all that is missing", () => {
    expect(refusalOf(ask({})).sentence).toBe(
      "Missing for nominal figures: the tip, its size or its maker's flow, the pressure in use and the pace (the swath with a speed, or the minutes for 1,000 sq ft).",
    );
    expect(refusalOf(ask({ ...GUN, tipFlowPsi: "" })).sentence).toBe("Missing for nominal figures: the pressure of its maker's flow.");
  });

  test.each<readonly [string, Partial<TypedNominalSprayer>]>([
    ["tipFlow", { ...GUN, tipSize: "04" }],
    ["minutesPerThousand", { ...GUN, speedMph: "3" }],
    ["pressurePsi", { ...GUN, pressurePsi: "5000" }],
    ["tipFlow", { ...GUN, tipFlow: "1.5 lb" }],
    ["tipFlowPsi", { ...GUN, tipFlowPsi: "x" }],
    ["tipSize", { ...GUN, tipFlow: "", tipSize: "99" }],
    ["minutesPerThousand", { ...GUN, minutesPerThousand: "500" }],
    ["minutesPerThousand", { ...GUN, tipFlow: "900 gal" }],
  ])("%s", (field, typed) => {
    expect(refusalOf(ask(typed))).toMatchObject({ kind: "bad-input", field });
  });

  test.each(["0.1", "30", "fast"])("the speed %s", (speedMph) => {
    expect(refusalOf(ask({ ...BOOM, speedMph }, "boom-sprayer"))).toMatchObject({ kind: "bad-input", field: "speedMph" });
  });
});

test("a sprayer without any figures is held, with what is missing", () => {
  expect(withoutFigures("Gun", "Missing for nominal figures: the tip.")).toMatchObject({ level: "hold", answerableBy: "office", figure: "Missing for nominal figures: the tip.", about: ["Gun"] });
});
