import { expect, test } from "vitest";
import { type CalibrationOnFile, type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { type TicketFacts } from "#application/visits/ticket-facts";
import { gearFor, type PlannedApplication, plannedApplication } from "#application/visits/visit-gear";
import { type PlannedTreatment } from "#application/visits/visit-rows";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { of } from "#domain/quantities/quantity";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { day } from "../../support/domain-answers";
import { FEED, FEED_LABEL, IRON, IRON_LABEL } from "../../support/ticket";

const SPRAYER: EquipmentOnFile = {
  equipmentId: "gun", version: 1, name: "Gun", kind: "hose-and-gun", vehicleId: "truck", capacity: of("gal", 100n), holdUp: of("gal", 3n), hasDeflector: null, swath: null, isStoodDown: false,
};
const SPREADER: EquipmentOnFile = {
  equipmentId: "push", version: 1, name: "Push spreader", kind: "broadcast-spreader", vehicleId: "truck", capacity: of("lb", 50n), holdUp: null, hasDeflector: true, swath: null, isStoodDown: false,
};
const APPLICATION: PlannedApplication = { on: day("2026-04-14"), operatorId: "rowan", operatorName: "Rowan Ash", vehicleId: "truck" };
const feed: PlannedTreatment = { kind: "treatment", line: 1, productId: "feed", labelUse: "Lawns", rate: FEED.rate, rateText: FEED.rateText, reason: "feed", equipmentId: null, zoneIds: ["front"] };
const iron: PlannedTreatment = { ...feed, line: 2, productId: "iron", rate: IRON.rate, rateText: IRON.rateText };

const SPRAYED: CalibrationOnFile = {
  doneOn: day("2026-04-01"),
  equipment: { id: "gun", name: "Gun" },
  operator: { id: "rowan", name: "Rowan Ash" },
  setup: { kind: "sprayer", tip: { id: "gold", name: "Gold" }, pressurePsi: 40 },
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
    lawnsByProperty: new Map(), labels: new Map(), gear, calibrations, tools: [], onHand: new Map(), productOf: new Map(), personOf: new Map([["rowan", "Rowan Ash"]]), licenses: [], settings: DEFAULT_HOUSE_SETTINGS,
  };
}

const ironWith = (facts: TicketFacts, more: Partial<PlannedTreatment> = {}, application = APPLICATION) => gearFor(facts, { ...iron, ...more }, IRON_LABEL, application);
const feedWith = (facts: TicketFacts, application = APPLICATION) => gearFor(facts, feed, FEED_LABEL, application);

test("a liquid takes the truck's own sprayer and a granular product its spreader", () => {
  const facts = factsOf([{ ...SPRAYER, equipmentId: "of-another-truck", vehicleId: "other" }, { ...SPRAYER, equipmentId: "of-the-shop", vehicleId: null }, SPRAYER, SPREADER]);
  expect(ironWith(facts)?.gear.equipmentId).toBe("gun");
  expect(feedWith(facts)?.gear.equipmentId).toBe("push");
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

test("a sprayer that nobody calibrated gets the common figure, which is called that", () => {
  const found = ironWith(factsOf([{ ...SPRAYER, holdUp: null }]));
  expect(found?.gear).toMatchObject({ holdUp: "unknown", carrier: { rate: rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft"), basis: "nominal", words: "not calibrated; a common figure stands in" } });
  expect(found?.gear.pace).toEqual({ kind: "not-on-file" });
  expect(found?.calibrationFinding.level).toBe("take-care");
});

test("a spreader has the setting of its calibration with this very product, or none", () => {
  const found = feedWith(factsOf([SPREADER], [SPREAD]));
  expect(found?.gear).toMatchObject({ deflector: "yes", setting: { setting: "M", rate: SPREAD.figures.rate, words: "calibrated by Rowan Ash on Apr 1, 2026" } });
  const ofAnotherProduct: CalibrationOnFile = { ...SPREAD, setup: { kind: "spreader", product: { id: "seed", name: "Seed" } } };
  const without = feedWith(factsOf([{ ...SPREADER, hasDeflector: null }], [ofAnotherProduct]));
  expect(without?.gear).toMatchObject({ deflector: "unknown", setting: "not-calibrated" });
  expect(without?.calibrationFinding.level).toBe("take-care");
  expect(feedWith(factsOf([{ ...SPREADER, hasDeflector: false }]))?.gear).toMatchObject({ deflector: "no" });
});

test("the day, the truck and the person are the stop's; on no day they are today's and whoever looks", () => {
  const facts = factsOf([]);
  const stop = {
    routeDayId: "d", date: day("2026-04-20"), vehicleId: "truck", operatorId: "rowan", position: 1, arrivesAtMinute: null, driveMinutes: null, isPinned: false, startsAtMinute: 420, forecastHighF: null, forecastNextHighF: null,
  };
  expect(plannedApplication(facts, stop, day("2026-04-14"), "looker")).toEqual({ ...APPLICATION, on: "2026-04-20" });
  expect(plannedApplication(facts, null, day("2026-04-14"), "rowan")).toEqual({ ...APPLICATION, vehicleId: null });
});
