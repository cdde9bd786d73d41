import { expect, test } from "vitest";
import { type CalibrationOnFile, type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { NO_NOMINAL_FIGURES } from "#application/equipment/nominal-of-form";
import { type TicketFacts } from "#application/visits/ticket-facts";
import { gearFor, type GearOfTreatment, type PlannedApplication, plannedApplication } from "#application/visits/visit-gear";
import { type PlannedTreatment } from "#application/visits/visit-rows";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { densityFromSpecificGravity } from "#domain/quantities/density";
import { of } from "#domain/quantities/quantity";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { type TicketSprayer, type TicketSpreader } from "#domain/mixing/ticket-question";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { day } from "../../support/domain-answers";
import { GUN_NOMINAL } from "../../support/gear";
import { saying } from "../../support/said";
import { FEED, FEED_LABEL, IRON, IRON_LABEL } from "../../support/ticket";

const SPRAYER: EquipmentOnFile = {
  equipmentId: "gun", version: 1, name: "Gun", kind: "hose-and-gun", vehicleId: "truck", capacity: of("gal", 100n), holdUp: of("gal", 3n), hasDeflector: null, swath: null, isStoodDown: false,
  nominal: { ...NO_NOMINAL_FIGURES, ...GUN_NOMINAL },
};
const SPREADER: EquipmentOnFile = {
  equipmentId: "push", version: 1, name: "Push spreader", kind: "broadcast-spreader", vehicleId: "truck", capacity: of("lb", 50n), holdUp: null, hasDeflector: true, swath: null, isStoodDown: false, nominal: NO_NOMINAL_FIGURES,
};
const APPLICATION: PlannedApplication = { on: day("2026-04-14"), operatorId: "rowan", operatorName: "Rowan Ash", vehicleId: "truck" };
const feed: PlannedTreatment = { kind: "treatment", line: 1, productId: "feed", labelUse: "Lawns", rate: FEED.rate, rateText: FEED.rateText, reason: "feed", equipmentId: null, zoneIds: ["front"] };
const iron: PlannedTreatment = { ...feed, line: 2, productId: "iron", rate: IRON.rate, rateText: IRON.rateText };

const SPRAYED: CalibrationOnFile = {
  doneOn: day("2026-04-01"),
  equipment: { id: "gun", name: "Gun" },
  operator: { id: "rowan", name: "Rowan Ash" },
  setup: { kind: "sprayer", tip: "Gold", pressurePsi: 40 },
  figures: {
    calibrationId: "c1", rate: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft"), setting: null, method: "timed-area",
    inputs: { method: "timed-area", caught: "64 fl oz", caughtSeconds: "15", area: "1000 sq ft", areaSeconds: "60\n60" },
  },
};
const SPREAD: CalibrationOnFile = {
  doneOn: day("2026-04-01"),
  equipment: { id: "push", name: "Push spreader" },
  operator: { id: "rowan", name: "Rowan Ash" },
  setup: { kind: "spreader", product: { id: "feed", name: "Harrowgate 32" } },
  figures: { calibrationId: "c2", rate: rateOf("product-mass-per-area", "1.25", "lb per 1,000 sq ft"), setting: "M", method: "pan", inputs: {} },
};

function factsOf(gear: readonly EquipmentOnFile[], calibrations: readonly CalibrationOnFile[] = []): TicketFacts {
  return {
    lawnsByProperty: new Map(), labels: new Map(), gear, calibrations, tools: [], onHand: new Map(), mixedFor: new Map(), leftOver: [], productOf: new Map(), personOf: new Map([["rowan", "Rowan Ash"]]), licenses: [], settings: DEFAULT_HOUSE_SETTINGS,
  };
}

function withFigures(found: ReturnType<typeof gearFor>): GearOfTreatment | undefined {
  if (found?.gear === "without-figures") throw new Error(found.finding.what);
  return found;
}
const ironWith = (facts: TicketFacts, more: Partial<PlannedTreatment> = {}, application = APPLICATION) => withFigures(gearFor(facts, { ...iron, ...more }, IRON_LABEL, application));
const feedWith = (facts: TicketFacts, application = APPLICATION) => withFigures(gearFor(facts, feed, FEED_LABEL, application));

test("a liquid takes the truck's own sprayer and a granular product its spreader", () => {
  const facts = factsOf([{ ...SPRAYER, equipmentId: "of-another-truck", vehicleId: "other" }, { ...SPRAYER, equipmentId: "of-the-shop", vehicleId: null }, SPRAYER, SPREADER]);
  expect(ironWith(facts)?.gear.equipmentId).toBe("gun");
  expect(feedWith(facts)?.gear.equipmentId).toBe("push");
});

test("gear that the plan names and that is stood down or on another truck is said; chosen by the truck it is at hand", () => {
  const saidOf = (more: Partial<EquipmentOnFile>, application = APPLICATION) => ironWith(factsOf([{ ...SPRAYER, ...more }]), { equipmentId: "gun" }, application)?.notAtHand.map(({ level, rule, what }) => `${level} ${rule}: ${what}`);
  expect(saidOf({ isStoodDown: true })).toEqual(["hold gear-stood-down: Gun is stood down."]);
  expect(saidOf({ vehicleId: "other" })).toEqual(["take-care gear-on-another-truck: Gun is the gear of another truck."]);
  expect([saidOf({}), saidOf({ vehicleId: null }), saidOf({ vehicleId: "other" }, { ...APPLICATION, vehicleId: null })]).toEqual([[], [], []]);
  expect(ironWith(factsOf([SPRAYER]))?.notAtHand).toEqual([]);
});

test("gear of the shop stands in for a truck without its own, that of another truck and what is stood down never", () => {
  const others = [{ ...SPRAYER, isStoodDown: true }, { ...SPRAYER, equipmentId: "of-another-truck", vehicleId: "other" }];
  expect(ironWith(factsOf(others))).toBeUndefined();
  expect(ironWith(factsOf([...others, { ...SPRAYER, equipmentId: "of-the-shop", vehicleId: null }]))?.gear.equipmentId).toBe("of-the-shop");
  expect(ironWith(factsOf([SPREADER]))).toBeUndefined();
});

test("on no truck yet, the first that fits is taken; what the plan names goes before all", () => {
  const facts = factsOf([SPREADER, { ...SPRAYER, equipmentId: "of-another-truck", vehicleId: "other" }, SPRAYER]);
  expect(ironWith(facts, {}, { ...APPLICATION, vehicleId: null })?.gear.equipmentId).toBe("of-another-truck");
  expect(ironWith(facts, { equipmentId: "of-another-truck" })?.gear.equipmentId).toBe("of-another-truck");
  expect(ironWith(facts, { equipmentId: "not-on-file" })).toBeUndefined();
});

test("a sprayer puts out what it was calibrated to, whoever calibrated last before the day", () => {
  const later: CalibrationOnFile = { ...SPRAYED, doneOn: day("2026-04-15"), figures: { ...SPRAYED.figures, rate: rateOf("carrier-volume-per-area", "9", "gal per 1,000 sq ft") } };
  const found = ironWith(factsOf([SPRAYER], [SPRAYED, later]));
  expect(found?.gear).toMatchObject({ kind: "hose-and-gun", holdUp: of("gal", 3n), carrier: { rate: SPRAYED.figures.rate, basis: "calibration", words: "calibrated by Rowan Ash on Apr 1, 2026" } });
  const pace = found?.gear.pace;
  expect(pace?.kind === "timed-ground" && toNumber(measureInUnit(pace.groundPerMinute, "sq ft"))).toBe(1000);
  expect(found?.calibrationFinding.level).toBe("note");
});

test("a sprayer that nobody calibrated puts out what its tip and pace make, with a warning; its pace is one that nobody timed", () => {
  const found = ironWith(factsOf([{ ...SPRAYER, holdUp: null }]));
  const words = "not calibrated; nominal by its maker (1.5 gal a minute at 40 psi), at 40 psi and 1 min for 1,000 sq ft";
  expect(found?.gear).toMatchObject({ holdUp: "unknown", carrier: { basis: "nominal", words } });
  const { carrier, pace } = found?.gear as TicketSprayer;
  expect(compareRates(carrier.rate, rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft"))).toBe(0);
  expect(pace).toMatchObject({ kind: "timed-ground", basis: "nominal" });
  expect(found?.calibrationFinding).toMatchObject({ level: "take-care", rule: "calibration-missing", figure: saying("by its maker") });
});

test("a calibration goes before nominal figures, even one that ran out", () => {
  const found = ironWith(factsOf([SPRAYER], [{ ...SPRAYED, doneOn: day("2024-04-01") }]));
  expect(found?.gear).toMatchObject({ carrier: { rate: SPRAYED.figures.rate, basis: "calibration" } });
});

test("a sprayer without a calibration and without nominal figures mixes nothing: what is missing is named, never filled in", () => {
  const nominal = { ...NO_NOMINAL_FIGURES, ...GUN_NOMINAL, minutesPerThousand: "", pressurePsi: "" };
  expect(gearFor(factsOf([{ ...SPRAYER, nominal }]), iron, IRON_LABEL, APPLICATION)).toMatchObject({
    gear: "without-figures",
    finding: { level: "hold", answerableBy: "office", rule: "sprayer-without-figures", figure: saying("the pressure in use and the pace") },
  });
});

test("a calibration for a heavier spray says of which density its rate is", () => {
  const heavier = { ...SPRAYED, figures: { ...SPRAYED.figures, inputs: { ...(SPRAYED.figures.inputs as object), liquid: "water-for-heavier", sprayDensity: "specific gravity 1.2" } } };
  expect(ironWith(factsOf([SPRAYER], [heavier]))?.gear).toMatchObject({ carrier: { density: densityFromSpecificGravity("1.2") } });
  expect((ironWith(factsOf([SPRAYER], [SPRAYED]))?.gear as TicketSprayer).carrier.density).toBeUndefined();
});

test("the tip is the one of the calibration or of the nominal figures, with the class that its chart has at that pressure", () => {
  const tipDroplets = "Gold; 41 psi; very coarse\nBlue, 1.5 gal; 60 psi; fine";
  const sprayer = { ...SPRAYER, nominal: { ...SPRAYER.nominal, tipDroplets } };
  expect(ironWith(factsOf([sprayer], [SPRAYED]))?.gear).toMatchObject({ tip: { tip: "Gold", pressurePsi: 40, dropletClass: "VC" } });
  expect(ironWith(factsOf([sprayer]))?.gear).toMatchObject({ tip: { tip: "Blue, 1.5 gal", pressurePsi: 40, dropletClass: "unknown" } });
});

test("another operator's later calibration with the tip in other letters takes nobody's own pace away", () => {
  const others: CalibrationOnFile = {
    ...SPRAYED, doneOn: day("2026-04-02"), operator: { id: "wren", name: "Wren Holt" }, setup: { kind: "sprayer", tip: "gold ", pressurePsi: 40 },
    figures: { ...SPRAYED.figures, calibrationId: "c9", rate: rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft") },
  };
  expect(ironWith(factsOf([SPRAYER], [SPRAYED, others]))?.gear).toMatchObject({ carrier: { rate: SPRAYED.figures.rate, words: "calibrated by Rowan Ash on Apr 1, 2026" } });
});

test("a spreader has the setting of its calibration with this very product, or none", () => {
  const found = feedWith(factsOf([SPREADER], [SPREAD]));
  expect(found?.gear).toMatchObject({ deflector: "yes", setting: { setting: "M", rate: SPREAD.figures.rate, words: "calibrated by Rowan Ash on Apr 1, 2026" } });
  const ofAnotherProduct: CalibrationOnFile = { ...SPREAD, setup: { kind: "spreader", product: { id: "seed", name: "Seed" } } };
  const without = feedWith(factsOf([{ ...SPREADER, hasDeflector: null }], [ofAnotherProduct]));
  expect(without?.gear).toMatchObject({ deflector: "unknown", setting: "not-calibrated" });
  expect(without?.calibrationFinding.level).toBe("hold");
  expect(feedWith(factsOf([{ ...SPREADER, hasDeflector: false }]))?.gear).toMatchObject({ deflector: "no" });
});

test("a spreader that nobody calibrated with the product takes the bag's setting, with a warning", () => {
  const bagSettings = "Seed; K; 4 lb per 1,000 sq ft\nharrowgate 32; N; 3 lb per 1,000 sq ft";
  const found = feedWith(factsOf([{ ...SPREADER, nominal: { ...NO_NOMINAL_FIGURES, bagSettings } }]));
  expect(found?.gear).toMatchObject({ setting: { setting: "N", rate: rateOf("product-mass-per-area", "3", "lb per 1,000 sq ft"), words: "not calibrated; nominal by the bag", basis: "nominal" } });
  expect(found?.calibrationFinding).toMatchObject({ level: "take-care", rule: "calibration-missing" });
  const calibrated = feedWith(factsOf([{ ...SPREADER, nominal: { ...NO_NOMINAL_FIGURES, bagSettings } }], [SPREAD]));
  expect(calibrated?.gear).toMatchObject({ setting: { setting: "M", basis: "calibration" } });
});

test("several tested settings of one operator find the one for a pass at the planned rate, never beyond them", () => {
  const tested = (setting: string, pounds: string, more: Partial<CalibrationOnFile> = {}): CalibrationOnFile => ({
    ...SPREAD, ...more, figures: { ...SPREAD.figures, setting, rate: rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft") },
  });
  const settingWith = (...tests: readonly CalibrationOnFile[]) => (feedWith(factsOf([SPREADER], tests))?.gear as TicketSpreader).setting;
  // 2.5 lb are planned, 1.25 lb in each of two passes.
  expect(settingWith(tested("8", "1.5"), tested("6", "1"))).toMatchObject({ setting: "7", rate: rateOf("product-mass-per-area", "1.25", "lb per 1,000 sq ft"), words: saying("by Rowan Ash"), basis: "between-tests" });
  expect(settingWith(tested("8", "1.2"), tested("6", "1"))).toMatchObject({ setting: "8", basis: "calibration", doubt: { rule: "setting-beyond-tests", sentence: saying("Harrowgate 32 was tested from") } });
  expect(settingWith(tested("8", "1"), tested("6", "1.2"))).toMatchObject({ setting: "6", doubt: { rule: "setting-tests-disagree" } });
  // Tests of another operator, of another product, of a day that has not come and of long ago find nothing.
  const others = [{ operator: { id: "ida", name: "Ida" } }, { setup: { kind: "spreader", product: { id: "seed", name: "Seed" } } }, { doneOn: day("2026-04-15") }, { doneOn: day("2024-04-01") }] as const;
  for (const other of others) expect(settingWith(tested("8", "1.5", other), tested("6", "1"))).toMatchObject({ setting: "6", basis: "calibration" });
});

test("a spreader's pace is the one of its calibration, over its swath", () => {
  const paced = { ...SPREAD, figures: { ...SPREAD.figures, inputs: { area: "1000 sq ft", collected: "1.25 lb", swath: "", speedMph: "3" } } };
  const paceWith = (swath: EquipmentOnFile["swath"]) => feedWith(factsOf([{ ...SPREADER, swath }], [paced]))?.gear.pace;
  expect(paceWith(of("ft", 10n))).toMatchObject({ kind: "swath-and-speed", swath: of("ft", 10n) });
  expect(paceWith(null)).toEqual({ kind: "not-on-file" });
});

test("the day, the truck and the person are the stop's; on no day they are today's and whoever looks", () => {
  const facts = factsOf([]);
  const stop = {
    routeDayId: "d", date: day("2026-04-20"), vehicleId: "truck", operatorId: "rowan", position: 1, arrivesAtMinute: null, driveMinutes: null, isPinned: false, startsAtMinute: 420, forecastHighF: null, forecastFollowingHighsF: [null, null, null],
  };
  expect(plannedApplication(facts, stop, day("2026-04-14"), "looker")).toEqual({ ...APPLICATION, on: "2026-04-20" });
  expect(plannedApplication(facts, null, day("2026-04-14"), "rowan")).toEqual({ ...APPLICATION, vehicleId: null });
});
