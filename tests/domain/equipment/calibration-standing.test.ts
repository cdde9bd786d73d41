import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type CalibrationFact,
  type CalibrationSettings,
  type EquipmentSetup,
  type NominalFigures,
  type PlannedUse,
  standingOf,
} from "#domain/equipment/calibration-standing";
import { addDays } from "#domain/foundation/calendar-date";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { day } from "../../support/domain-answers";
import { saying } from "../../support/said";

const named = (name: string) => ({ id: name.toLowerCase().replaceAll(" ", "-"), name });
const [skid, dana, noor] = [named("Skid sprayer 2"), named("Dana Demo"), named("Noor Sample")];
const blueTip: EquipmentSetup = { kind: "sprayer", tip: "Blue tip", pressurePsi: 40 };
const settings: CalibrationSettings = { validForDays: 30, samePressureWithinPsi: 2 };
const nominal: NominalFigures<string> = { figures: "nominal", statedBy: "ISO 10625, size 03" };
const use: PlannedUse = { on: day("2026-04-20"), equipment: skid, operator: dana, setup: blueTip };

function done(on: string, other: Partial<CalibrationFact<string>> = {}): CalibrationFact<string> {
  return { doneOn: day(on), equipment: skid, operator: dana, setup: blueTip, figures: `of ${on}`, ...other };
}

const stand = (calibrations: readonly CalibrationFact<string>[], planned = use, known: NominalFigures<string> | "unknown" = nominal) =>
  standingOf(calibrations, planned, settings, known);

describe("a calibration", () => {
  test("that is current is used, with a note", () => {
    expect(stand([done("2026-04-01")])).toMatchObject({
      kind: "current",
      lastGoodDay: "2026-05-01",
      figures: { basis: "calibration", figures: "of 2026-04-01" },
      finding: {
        level: "note",
        rule: "calibration-current",
        what: "Skid sprayer 2 was calibrated by Dana Demo on Apr 1, 2026, with Blue tip at 40 psi.",
        figure: "That is 19 days before this use; it is good through May 1, 2026.",
        about: ["Skid sprayer 2", "Dana Demo"],
      },
    });
  });

  test("is good through its last day and run out on the next", () => {
    expect(stand([done("2026-04-01")], { ...use, on: day("2026-05-01") }).kind).toBe("current");
    expect(stand([done("2026-04-01")], { ...use, on: day("2026-05-02") })).toMatchObject({
      kind: "run-out",
      figures: { basis: "calibration", figures: "of 2026-04-01" },
      finding: { level: "take-care", rule: "calibration-run-out", figure: "It is of Apr 1, 2026, 31 days before this use, and was good through May 1, 2026 (30 days)." },
    });
  });

  test("of another operator is used with care", () => {
    expect(stand([done("2026-04-19", { operator: noor })])).toMatchObject({
      kind: "other-operator",
      figures: { basis: "calibration", figures: "of 2026-04-19" },
      finding: { level: "take-care", rule: "calibration-of-another-operator", what: saying("by Noor Sample, not by Dana Demo"), figure: saying("1 day before this use, and is good") },
    });
    expect(stand([done("2026-01-19", { operator: noor })]).finding.figure).toContain("and was good");
  });

  test.each<[string, EquipmentSetup]>([
    ["tip", { kind: "sprayer", tip: "Red tip", pressurePsi: 40 }],
    ["pressure", { kind: "sprayer", tip: "Blue tip", pressurePsi: 42.1 }],
    ["kind", { kind: "spreader", product: named("Demofeed") }],
  ])("of another %s gives way to the nominal figures", (_, setup) => {
    expect(stand([done("2026-04-19", { setup })])).toMatchObject({
      kind: "other-setup",
      figures: { basis: "nominal", figures: "nominal", statedBy: "ISO 10625, size 03" },
      finding: { level: "take-care", rule: "calibration-of-another-tip-or-pressure", what: "Skid sprayer 2 has no calibration with Blue tip at 40 psi." },
    });
  });

  test.each(["BLUE TIP", "blue tip", " Blue  tip ", "Bluetip"])("with the tip written %j is of the same one, so that nobody mixes at another's pace", (tip) => {
    const own = done("2026-04-01", { setup: { ...blueTip, tip } });
    const others = done("2026-04-02", { operator: noor });
    expect(stand([own, others])).toMatchObject({ kind: "current", figures: { figures: "of 2026-04-01" } });
  });

  test("at a pressure within the gauge's mark is the same", () => {
    const near: EquipmentSetup = { kind: "sprayer", tip: "Blue tip", pressurePsi: 42 };
    expect(stand([done("2026-04-19", { setup: near })]).kind).toBe("current");
  });

  test("of a spreader belongs to its product", () => {
    const [feed, lime] = [named("Demofeed"), named("Demolime")].map((product): EquipmentSetup => ({ kind: "spreader", product }));
    const spread = { ...use, setup: feed ?? blueTip };
    expect(stand([done("2026-04-19", { setup: spread.setup })], spread).kind).toBe("current");
    expect(stand([done("2026-04-19", { setup: lime ?? blueTip })], spread)).toMatchObject({ kind: "other-setup", finding: { rule: "calibration-of-another-product", figure: saying("with Demolime, by Dana Demo") } });
    expect(stand([done("2026-04-19")], spread).kind).toBe("other-setup");
  });

  test("of another machine or of a later day is none", () => {
    expect(stand([done("2026-04-21"), done("2026-04-19", { equipment: named("Skid sprayer 1") })])).toMatchObject({
      kind: "none",
      calibration: undefined,
      figures: { basis: "nominal" },
      finding: { level: "take-care", rule: "calibration-missing", figure: "There is none of Skid sprayer 2 on file up to Apr 20, 2026. Nominal figures stand in, by ISO 10625, size 03." },
    });
    expect(stand([done("2026-04-20")]).kind).toBe("current");
  });
});

test("without nominal figures it is a hold that the office answers, and there are no figures", () => {
  const standing = stand([], use, "unknown");
  expect(standing.figures).toEqual({ basis: "none" });
  expect(standing.finding).toMatchObject({ level: "hold", answerableBy: "office", rule: "calibration-missing" });
  expect(stand([done("2026-04-01")], use, "unknown").finding.level).toBe("note");
});

describe("among several", () => {
  const all = [
    done("2026-04-19", { operator: noor }),
    done("2026-04-18", { setup: { ...blueTip, pressurePsi: 60 } }),
    done("2026-02-01"),
    done("2026-04-02"),
    done("2026-04-01"),
  ];

  test("one's own current one comes first, the latest of them; then one's own old one, then another's, then another setup's", () => {
    expect(stand(all).figures).toMatchObject({ figures: "of 2026-04-02" });
    expect(stand(all.slice(0, 3))).toMatchObject({ kind: "run-out", figures: { figures: "of 2026-02-01" } });
    expect(stand(all.slice(0, 2)).kind).toBe("other-operator");
    expect(stand(all.slice(1, 2)).kind).toBe("other-setup");
  });

  test("the order on file decides nothing, and a day more of validity never makes it worse", () => {
    const order = ["current", "run-out", "other-operator", "other-setup", "none"];
    fc.assert(
      fc.property(fc.shuffledSubarray(all), fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 90 }), (some, later, validForDays) => {
        const planned = { ...use, on: addDays(use.on, later) };
        const shorter = standingOf(some, planned, { ...settings, validForDays }, nominal);
        expect(standingOf([...some].reverse(), planned, { ...settings, validForDays }, nominal)).toEqual(shorter);
        const longer = standingOf(some, planned, { ...settings, validForDays: validForDays + 1 }, nominal);
        expect(order.indexOf(longer.kind)).toBeLessThanOrEqual(order.indexOf(shorter.kind));
      }),
    );
  });
});

test("settings below zero throw", () => {
  expect(() => standingOf([], use, { ...settings, validForDays: -1 }, nominal)).toThrow(BrokenInvariant);
  expect(() => standingOf([], use, { ...settings, samePressureWithinPsi: -1 }, nominal)).toThrow(BrokenInvariant);
});
