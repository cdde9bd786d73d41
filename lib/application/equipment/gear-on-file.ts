import { type CalibrationFact } from "#domain/equipment/calibration-standing";
import { type EquipmentKind, isSprayer } from "#domain/equipment/equipment-kind";
import { type LatestCalibration, latestByOperator } from "#domain/equipment/operator-standing";
import { type CalibratedBasis } from "#domain/equipment/rate-on-file";
import { type HouseSettings } from "#domain/company/house-settings";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { type NominalOnFile, storedNominal } from "#application/equipment/nominal-of-form";
import { calendarDayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";

// Trucks, gear and calibrations as the books have them, for every use case that asks.

export interface VehicleOnFile {
  readonly vehicleId: string;
  readonly version: number;
  readonly number: number;
  readonly name: string;
  readonly payload: Quantity<"mass"> | null;
  /** What rides along every day besides products and spray; null: not on file. */
  readonly staysAboard: Quantity<"mass"> | null;
  readonly isStoodDown: boolean;
}

export interface EquipmentOnFile {
  readonly equipmentId: string;
  readonly version: number;
  readonly name: string;
  readonly kind: EquipmentKind;
  readonly vehicleId: string | null;
  /** Volume of a sprayer's tank, mass in a spreader's hopper. */
  readonly capacity: Quantity<"volume"> | Quantity<"mass">;
  readonly holdUp: Quantity<"volume"> | null;
  /** Null for a spreader at which nobody looked, and for sprayers. */
  readonly hasDeflector: boolean | null;
  readonly swath: Quantity<"length"> | null;
  /** What stands in where it has no calibration, as it was typed. */
  readonly nominal: NominalOnFile;
  readonly isStoodDown: boolean;
}

/** What a calibration found, and how. */
export interface CalibrationFigures {
  readonly calibrationId: string;
  readonly rate: Rate<CalibratedBasis>;
  /** Spreaders only. */
  readonly setting: string | null;
  readonly method: string;
  /** As it was typed. */
  readonly inputs: unknown;
}

export type CalibrationOnFile = CalibrationFact<CalibrationFigures>;
export type LatestOnFile = LatestCalibration<CalibrationFigures>;

/** The trucks by number, those stood down too. */
export async function vehiclesOnFile(work: Work): Promise<readonly VehicleOnFile[]> {
  const rows = await work.tx.vehicle.findMany({ where: { companyId: work.company.companyId }, orderBy: { number: "asc" } });
  return rows.map(({ vehicleId, version, number, name, payload, staysAboard, stoodDownAt }) => ({
    vehicleId,
    version,
    number,
    name,
    payload: payload === null ? null : fromAmount("mass", payload),
    staysAboard: staysAboard === null ? null : fromAmount("mass", staysAboard),
    isStoodDown: stoodDownAt !== null,
  }));
}

/** The gear by name, that stood down too; or the one piece asked for. */
export async function equipmentOnFile(work: Work, equipmentId?: string): Promise<readonly EquipmentOnFile[]> {
  const which = equipmentId === undefined ? {} : { equipmentId };
  const rows = await work.tx.equipment.findMany({
    where: { companyId: work.company.companyId, ...which },
    orderBy: [{ name: "asc" }, { equipmentId: "asc" }],
  });
  return rows.map((row) => {
    const kind = row.kind as EquipmentKind;
    return {
      equipmentId: row.equipmentId,
      version: row.version,
      name: row.name,
      kind,
      vehicleId: row.vehicleId,
      capacity: isSprayer(kind) ? fromAmount("volume", row.capacity) : fromAmount("mass", row.capacity),
      holdUp: row.holdUp === null ? null : fromAmount("volume", row.holdUp),
      hasDeflector: row.hasDeflector,
      swath: row.swath === null ? null : fromAmount("length", row.swath),
      nominal: storedNominal(row.nominal),
      isStoodDown: row.stoodDownAt !== null,
    };
  });
}

/** The calibrations of the gear, in the order in which they were made; or those of the one piece asked for. */
export async function calibrationsOnFile(work: Work, gear: readonly EquipmentOnFile[]): Promise<readonly CalibrationOnFile[]> {
  const { companyId } = work.company;
  const nameOfGear = new Map(gear.map(({ equipmentId, name }) => [equipmentId, name]));
  const rows = await work.tx.calibration.findMany({
    where: { companyId, equipmentId: { in: [...nameOfGear.keys()] } },
    orderBy: [{ madeOn: "asc" }, { enteredAt: "asc" }, { calibrationId: "asc" }],
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ operatorId }) => operatorId) } } });
  const products = await work.tx.product.findMany({
    where: { companyId, productId: { in: rows.flatMap(({ productId }) => (productId === null ? [] : [productId])) } },
  });
  const nameOfPerson = new Map(people.map(({ personId, name }) => [personId, name]));
  const nameOfProduct = new Map(products.map(({ productId, name }) => [productId, name]));
  return rows.map((row) => ({
    doneOn: calendarDayOf(row.madeOn),
    equipment: { id: row.equipmentId, name: nameOfGear.get(row.equipmentId) ?? "" },
    operator: { id: row.operatorId, name: nameOfPerson.get(row.operatorId) ?? "" },
    setup: row.productId === null ? sprayerSetup(row) : { kind: "spreader", product: { id: row.productId, name: nameOfProduct.get(row.productId) ?? "" } },
    figures: {
      calibrationId: row.calibrationId,
      rate: rateFromAmounts(row.rateBasis as CalibratedBasis, row.rateAmount, row.ratePer),
      setting: row.setting,
      method: row.method,
      inputs: row.inputs,
    },
  }));
}

function sprayerSetup({ tip, pressurePsi }: { readonly tip: string | null; readonly pressurePsi: number | null }): CalibrationOnFile["setup"] {
  invariant(tip !== null && pressurePsi !== null, "a sprayer is calibrated with a tip at a pressure");
  return { kind: "sprayer", tip, pressurePsi };
}

/** Each operator's latest calibration of one piece of gear with its standing today, by the company's settings. */
export function latestOf(work: Work, equipmentId: string, calibrations: readonly CalibrationOnFile[], settings: HouseSettings): readonly LatestOnFile[] {
  const own = calibrations.filter(({ equipment }) => equipment.id === equipmentId);
  const today = calendarDateIn(work.company.timeZone, work.now.getTime());
  return latestByOperator(own, today, {
    validForDays: settings.calibrationValidDays,
    samePressureWithinPsi: settings.samePressureWithinPsi,
  });
}
