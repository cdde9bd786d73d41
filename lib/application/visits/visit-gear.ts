import { type HouseSettings } from "#domain/company/house-settings";
import { type BagSetting, bagSettingFor, readBagSettings } from "#domain/equipment/bag-settings";
import { densityOfRate, readCaughtLiquid } from "#domain/equipment/caught-liquid";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { type CalibrationFact, type CalibrationStanding, type EquipmentSetup, type NominalFigures, setupInWords, standingOf } from "#domain/equipment/calibration-standing";
import { type NominalSprayer, nominalSprayer, withoutFigures } from "#domain/equipment/nominal-sprayer";
import { dropletsAt, readTipDroplets, type TipDroplets } from "#domain/equipment/tip-droplets";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { daysBetween, formatShortDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { type Outcome } from "#domain/foundation/outcome";
import { type Density } from "#domain/quantities/density";
import { type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { type LabelFacts } from "#domain/label/label-facts";
import { ratePerPass } from "#domain/equipment/spreader-calibration";
import { settingAmongTests, type TestedSetting } from "#domain/equipment/tested-settings";
import { type TypedSprayerTest, readSprayerTest } from "#domain/equipment/typed-test";
import { asNominal, type LawnPace, NO_PACE, paceOfSpreader, paceOfTest } from "#domain/mixing/time-on-lawn";
import { type SpreaderSetting, type TicketSprayer, type TicketSpreader } from "#domain/mixing/ticket-question";
import { type CalibrationFigures, type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { type TicketFacts } from "#application/visits/ticket-facts";
import { type PlannedTreatment, type StopOfVisit } from "#application/visits/visit-rows";

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
  /** Why the gear can't be had on that day: it is stood down, or it is on another truck. */
  readonly notAtHand: readonly Finding[];
}

type FiguredGear = Omit<GearOfTreatment, "notAtHand">;

/** A sprayer of which nobody knows what it puts out: the hold that says so. */
export interface GearWithoutFigures {
  readonly gear: "without-figures";
  readonly finding: Finding;
}

/**
 * The gear that a treatment is put down with: what the plan names, else the truck's own sprayer for a liquid and spreader
 * for a granular product. Undefined when neither is on file. A sprayer without a calibration takes its nominal figures;
 * without those too nothing can be mixed for it.
 */
export function gearFor(facts: TicketFacts, treatment: PlannedTreatment, label: LabelFacts, application: PlannedApplication): GearOfTreatment | GearWithoutFigures | undefined {
  const equipment = equipmentFor(facts, treatment, label, application.vehicleId);
  if (equipment === undefined) return undefined;
  const found = isSprayer(equipment.kind) ? sprayerOf(facts, equipment, application) : spreaderOf(facts, equipment, treatment, label, application);
  return found === undefined || found.gear === "without-figures" ? found : { ...found, notAtHand: notAtHand(equipment, application) };
}

/** Gear that the plan names is taken as it is named, wherever it is; gear that is chosen by the truck is at hand. */
function notAtHand({ name, isStoodDown, vehicleId }: EquipmentOnFile, application: PlannedApplication): readonly Finding[] {
  const words = { source: "house", about: [name] } as const;
  if (isStoodDown) return [hold("office", { ...words, rule: "gear-stood-down", what: `${name} is stood down.`, toDo: "Name other gear in the plan." })];
  if (vehicleId === null || application.vehicleId === null || vehicleId === application.vehicleId) return [];
  return [takeCare({ ...words, rule: "gear-on-another-truck", what: `${name} is the gear of another truck.`, toDo: "Have it brought along, name other gear in the plan, or put the visit on that truck." })];
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
  nominal: NominalFigures<CalibrationFigures> | "unknown",
): CalibrationStanding<CalibrationFigures> {
  const { on, operatorId, operatorName } = application;
  const use = { on, equipment: { id: equipment.equipmentId, name: equipment.name }, operator: { id: operatorId, name: operatorName }, setup };
  const { calibrationValidDays: validForDays, samePressureWithinPsi } = facts.settings;
  return standingOf(facts.calibrations, use, { validForDays, samePressureWithinPsi }, nominal);
}

function wordsOf({ calibration, figures }: CalibrationStanding<CalibrationFigures>): string {
  if (figures.basis === "nominal") return `not calibrated; nominal by ${figures.statedBy}`;
  return calibration === undefined ? "not calibrated" : `calibrated by ${calibration.operator.name} on ${formatShortDate(calibration.doneOn)}`;
}

/** Nominal figures in the shape of a calibration's, which has no id and nothing measured. */
function asFigures(rate: CalibrationFigures["rate"], setting: string | null): CalibrationFigures {
  return { calibrationId: "", rate, setting, method: "nominal", inputs: null };
}

/** The setup of a sprayer is the one it was last calibrated with, whoever did it; before that, the one of its nominal figures. */
function sprayerOf(facts: TicketFacts, equipment: EquipmentOnFile, application: PlannedApplication): FiguredGear | GearWithoutFigures | undefined {
  const { equipmentId, name, kind, capacity, holdUp, swath, nominal: typed } = equipment;
  if (!isSprayer(kind) || capacity.dimension !== "volume") return undefined;
  const last = facts.calibrations.findLast((one) => one.equipment.id === equipmentId && one.doneOn <= application.on);
  const nominal = nominalSprayer({ kind, typed, swath });
  if (last === undefined && !nominal.ok) return { gear: "without-figures", finding: withoutFigures(name, nominal.refusal.sentence) };
  const setup = last?.setup ?? setupOf(nominal);
  const found = standing(facts, equipment, setup, application, nominal.ok ? { figures: asFigures(nominal.value.rate, null), statedBy: nominal.value.statedBy } : "unknown");
  const { figures } = found;
  invariant(figures.basis !== "none", "a sprayer's setup is of its latest calibration or of its nominal figures");
  return {
    calibrationFinding: found.finding,
    gear: {
      equipmentId,
      name,
      pace: figures.basis === "calibration" ? paceOf(figures.figures, setup, equipment) : nominalPace(nominal, equipment),
      kind,
      capacity,
      holdUp: holdUp ?? "unknown",
      tip: tipOf(equipment, setup, facts.settings),
      carrier: {
        rate: rateFromAmounts("carrier-volume-per-area", figures.figures.rate.amount, figures.figures.rate.per),
        basis: figures.basis,
        words: wordsOf(found),
        ...densityOf(figures.figures),
      },
    },
  };
}

/** The density of the spray of which a calibration's rate is; what was caught was read when it was written. */
function densityOf({ inputs }: CalibrationFigures): { readonly density?: Density } {
  const liquid = readCaughtLiquid(inputs ?? {});
  const density = liquid.ok ? densityOfRate(liquid.value) : "water";
  return density === "water" ? {} : { density };
}

function setupOf(nominal: Outcome<NominalSprayer>): EquipmentSetup {
  invariant(nominal.ok, "a sprayer without a calibration has nominal figures here");
  const { tip, pressurePsi } = nominal.value;
  return { kind: "sprayer", tip, pressurePsi };
}

/** The lines were read when they were written, so they read now. */
function tipOf({ nominal: { tipDroplets } }: EquipmentOnFile, setup: EquipmentSetup, { samePressureWithinPsi }: HouseSettings): TipDroplets {
  invariant(setup.kind === "sprayer", "a sprayer is set up as one");
  const charted = readTipDroplets("tipDroplets", tipDroplets);
  return dropletsAt(charted.ok ? charted.value : [], setup.tip, setup.pressurePsi, samePressureWithinPsi);
}

function nominalPace(nominal: Outcome<NominalSprayer>, { swath }: EquipmentOnFile): LawnPace {
  return nominal.ok ? asNominal(paceOfTest(nominal.value.test, swath)) : NO_PACE;
}

/** The pace as it was typed with the calibration; its inputs were read when they were written, so they read now. */
function paceOf({ inputs }: CalibrationFigures, setup: EquipmentSetup, { swath }: EquipmentOnFile): LawnPace {
  if (setup.kind !== "sprayer") return NO_PACE;
  const test = readSprayerTest(inputs as TypedSprayerTest, setup.pressurePsi);
  return test.ok ? paceOfTest(test.value, swath) : NO_PACE;
}

function spreaderOf(
  facts: TicketFacts,
  equipment: EquipmentOnFile,
  treatment: PlannedTreatment,
  label: LabelFacts,
  application: PlannedApplication,
): FiguredGear | undefined {
  const { equipmentId, name, kind, capacity, hasDeflector } = equipment;
  if (isSprayer(kind) || capacity.dimension !== "mass") return undefined;
  const setup = { kind: "spreader", product: { id: treatment.productId, name: label.productName } } as const;
  const bag = bagSettingOf(equipment, facts.productOf.get(treatment.productId)?.name ?? label.productName);
  const nominal = bag === undefined ? "unknown" : { figures: asFigures(bag.rate, bag.setting), statedBy: "the bag" };
  const found = standing(facts, equipment, setup, application, nominal);
  const deflector = hasDeflector === null ? "unknown" : hasDeflector ? "yes" : "no";
  const pace = found.figures.basis === "calibration" ? paceOfSpreader(found.figures.figures.inputs ?? {}, equipment.swath) : NO_PACE;
  return { calibrationFinding: found.finding, gear: { equipmentId, name, pace, kind, capacity, deflector, setting: settingOf(facts, found, treatment, application) } };
}

/** The setting by all that was tested, else that of the one calibration or of the bag which stands for the use. */
function settingOf(facts: TicketFacts, found: CalibrationStanding<CalibrationFigures>, treatment: PlannedTreatment, application: PlannedApplication): TicketSpreader["setting"] {
  const { figures, calibration } = found;
  if (figures.basis === "none" || figures.figures.setting === null) return "not-calibrated";
  const own: SpreaderSetting = { setting: figures.figures.setting, rate: spreadRate(figures.figures.rate), words: wordsOf(found), basis: figures.basis };
  if (figures.basis === "nominal" || calibration === undefined || treatment.rate.basis !== "product-mass-per-area") return own;
  const passes = facts.settings.granularPasses === "one-with-overlap" ? "one-pass" : "two-passes-crosswise";
  const productName = setupInWords(calibration.setup);
  const among = settingAmongTests(testsLike(facts, calibration, application), productName, ratePerPass(treatment.rate, passes));
  switch (among.kind) {
    case "too-few":
      return own;
    case "between":
      return { setting: among.setting, rate: among.rate, words: `${among.words}, by ${calibration.operator.name}`, basis: "between-tests" };
    case "beyond":
      return { ...own, ...among.nearest, words: `tested by ${calibration.operator.name}`, doubt: { rule: "setting-beyond-tests", sentence: among.sentence } };
    case "contradictory":
      return { ...own, doubt: { rule: "setting-tests-disagree", sentence: among.sentence } };
  }
}

/** The tests of the same spreader, product and operator that are still good on the day, the latest last. */
function testsLike({ calibrations, settings }: TicketFacts, { equipment, operator, setup }: CalibrationFact<CalibrationFigures>, { on }: PlannedApplication): readonly TestedSetting[] {
  return calibrations.flatMap((one): readonly TestedSetting[] => {
    const { setting, rate } = one.figures;
    const isLike =
      one.equipment.id === equipment.id &&
      one.operator.id === operator.id &&
      one.setup.kind === "spreader" &&
      setup.kind === "spreader" &&
      one.setup.product.id === setup.product.id;
    const ageDays = daysBetween(one.doneOn, on);
    if (!isLike || setting === null || ageDays < 0 || ageDays > settings.calibrationValidDays) return [];
    return [{ setting, rate: spreadRate(rate) }];
  });
}

function spreadRate({ amount, per }: CalibrationFigures["rate"]): Rate<"product-mass-per-area"> {
  return rateFromAmounts("product-mass-per-area", amount, per);
}

/** The lines were read when they were written, so they read now. */
function bagSettingOf({ nominal: { bagSettings } }: EquipmentOnFile, productName: string): BagSetting | undefined {
  const settings = readBagSettings("bagSettings", bagSettings);
  return settings.ok ? bagSettingFor(settings.value, productName) : undefined;
}

/** The applicator of a visit's day, or whoever looks at a visit that is on no day yet. */
export function plannedApplication(facts: TicketFacts, stop: StopOfVisit | null, today: CalendarDate, lookerId: string): PlannedApplication {
  const operatorId = stop?.operatorId ?? lookerId;
  return { on: stop?.date ?? today, operatorId, operatorName: facts.personOf.get(operatorId) ?? "", vehicleId: stop?.vehicleId ?? null };
}
