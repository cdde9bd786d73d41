import { isSprayer } from "#domain/equipment/equipment-kind";
import { type CalibrationStanding, type EquipmentSetup, standingOf } from "#domain/equipment/calibration-standing";
import { type Finding } from "#domain/foundation/finding";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { type Rate, rateFromAmounts, rateOf } from "#domain/quantities/rate";
import { type LabelFacts } from "#domain/label/label-facts";
import { type TypedSprayerTest, readSprayerTest } from "#domain/equipment/typed-test";
import { type LawnPace, paceOfTest } from "#domain/mixing/time-on-lawn";
import { type TicketSprayer, type TicketSpreader } from "#domain/mixing/ticket-question";
import { type CalibrationFigures, type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { type TicketFacts } from "#application/visits/ticket-facts";
import { type PlannedTreatment, type StopOfVisit } from "#application/visits/visit-rows";

/**
 * What a lawn gun is taken to put out where nobody has calibrated it, so that a plan can be made at all. Common practice;
 * the mix ticket says that it is not measured.
 */
const NOMINAL_CARRIER: Rate<"carrier-volume-per-area"> = rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft");

/** Who applies, when, and from which truck. */
export interface PlannedApplication {
  readonly on: CalendarDate;
  readonly operatorId: string;
  readonly operatorName: string;
  readonly vehicleId: string | null;
}

/** The gear of a treatment with its own calibration's standing. */
export interface GearOfTreatment {
  readonly gear: TicketSprayer | TicketSpreader;
  readonly calibrationFinding: Finding;
}

/**
 * The gear that a treatment is put down with: what the plan names, else the truck's own sprayer for a liquid and spreader
 * for a granular product. Undefined when neither is on file.
 */
export function gearFor(facts: TicketFacts, treatment: PlannedTreatment, label: LabelFacts, application: PlannedApplication): GearOfTreatment | undefined {
  const equipment = equipmentFor(facts, treatment, label, application.vehicleId);
  if (equipment === undefined) return undefined;
  return isSprayer(equipment.kind) ? sprayerOf(facts, equipment, application) : spreaderOf(facts, equipment, treatment, label, application);
}

function equipmentFor({ gear }: TicketFacts, { equipmentId }: PlannedTreatment, { form }: LabelFacts, vehicleId: string | null): EquipmentOnFile | undefined {
  if (equipmentId !== null) return gear.find((one) => one.equipmentId === equipmentId);
  const fits = gear.filter((one) => !one.isStoodDown && isSprayer(one.kind) === (form === "liquid"));
  return fits.find((one) => one.vehicleId === vehicleId) ?? (vehicleId === null ? fits[0] : fits.find((one) => one.vehicleId === null));
}

function standing(
  facts: TicketFacts,
  equipment: EquipmentOnFile,
  setup: EquipmentSetup,
  application: PlannedApplication,
  nominal: { readonly figures: CalibrationFigures; readonly statedBy: string },
): CalibrationStanding<CalibrationFigures> {
  const { on, operatorId, operatorName } = application;
  const use = { on, equipment: { id: equipment.equipmentId, name: equipment.name }, operator: { id: operatorId, name: operatorName }, setup };
  const { calibrationValidDays: validForDays, samePressureWithinPsi } = facts.settings;
  return standingOf(facts.calibrations, use, { validForDays, samePressureWithinPsi }, nominal);
}

function wordsOf({ calibration }: CalibrationStanding<CalibrationFigures>, nominalWords: string, isCalibrated: boolean): string {
  if (!isCalibrated || calibration === undefined) return nominalWords;
  return `calibrated by ${calibration.operator.name} on ${formatShortDate(calibration.doneOn)}`;
}

/** The setup of a sprayer is the one it was last calibrated with, whoever did it. */
function sprayerOf(facts: TicketFacts, equipment: EquipmentOnFile, application: PlannedApplication): GearOfTreatment | undefined {
  const { equipmentId, name, kind, capacity, holdUp } = equipment;
  if (!isSprayer(kind) || capacity.dimension !== "volume") return undefined;
  const last = facts.calibrations.findLast((one) => one.equipment.id === equipmentId && one.doneOn <= application.on);
  const setup = last?.setup ?? { kind: "sprayer", tip: { id: "", name: "no tip on file" }, pressurePsi: 0 };
  const nominal = { figures: { calibrationId: "", rate: NOMINAL_CARRIER, setting: null, method: "nominal", inputs: null }, statedBy: "common practice" };
  const found = standing(facts, equipment, setup, application, nominal);
  const figures = found.figures.basis === "none" ? nominal.figures : found.figures.figures;
  const isCalibrated = found.figures.basis === "calibration";
  return {
    calibrationFinding: found.finding,
    gear: {
      equipmentId,
      name,
      pace: isCalibrated ? paceOf(figures, setup, equipment) : { kind: "not-on-file" },
      kind,
      capacity,
      holdUp: holdUp ?? "unknown",
      carrier: {
        rate: rateFromAmounts("carrier-volume-per-area", figures.rate.amount, figures.rate.per),
        basis: isCalibrated ? "calibration" : "nominal",
        words: wordsOf(found, "not calibrated; a common figure stands in", isCalibrated),
      },
    },
  };
}

/** The pace as it was typed with the calibration; its inputs were read when they were written, so they read now. */
function paceOf({ inputs }: CalibrationFigures, setup: EquipmentSetup, { swath }: EquipmentOnFile): LawnPace {
  if (setup.kind !== "sprayer") return { kind: "not-on-file" };
  const test = readSprayerTest(inputs as TypedSprayerTest, setup.pressurePsi);
  return test.ok ? paceOfTest(test.value, swath) : { kind: "not-on-file" };
}

function spreaderOf(
  facts: TicketFacts,
  equipment: EquipmentOnFile,
  treatment: PlannedTreatment,
  label: LabelFacts,
  application: PlannedApplication,
): GearOfTreatment | undefined {
  const { equipmentId, name, kind, capacity, hasDeflector } = equipment;
  if (isSprayer(kind) || capacity.dimension !== "mass") return undefined;
  const setup = { kind: "spreader", product: { id: treatment.productId, name: label.productName } } as const;
  const planned = rateFromAmounts("product-mass-per-area", treatment.rate.amount, treatment.rate.per);
  const nominal = { figures: { calibrationId: "", rate: planned, setting: null, method: "nominal", inputs: null }, statedBy: "the plan's own rate" };
  const found = standing(facts, equipment, setup, application, nominal);
  const { figures } = found;
  const setting =
    figures.basis === "calibration" && figures.figures.setting !== null
      ? {
          setting: figures.figures.setting,
          rate: rateFromAmounts("product-mass-per-area", figures.figures.rate.amount, figures.figures.rate.per),
          words: wordsOf(found, "", true),
        }
      : ("not-calibrated" as const);
  return {
    calibrationFinding: found.finding,
    gear: { equipmentId, name, pace: { kind: "not-on-file" }, kind, capacity, deflector: hasDeflector === null ? "unknown" : hasDeflector ? "yes" : "no", setting },
  };
}

/** The applicator of a visit's day, or whoever looks at a visit that is on no day yet. */
export function plannedApplication(facts: TicketFacts, stop: StopOfVisit | null, today: CalendarDate, lookerId: string): PlannedApplication {
  const operatorId = stop?.operatorId ?? lookerId;
  return { on: stop?.date ?? today, operatorId, operatorName: facts.personOf.get(operatorId) ?? "", vehicleId: stop?.vehicleId ?? null };
}
