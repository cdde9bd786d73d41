// Builders: trucks, gear and calibrations as the use cases themselves make them, and the forms filled in.
import { asGuest } from "#adapters/postgres/company-work";
import { addEquipment } from "#application/equipment/add-equipment";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { addVehicle } from "#application/equipment/add-vehicle";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { NO_NOMINAL_SPRAYER, type TypedNominalSprayer } from "#domain/equipment/nominal-sprayer";
import { type TestCompany, valueOf } from "./crew";
import { type TestHouse } from "./house";

let trucks = 0;

/** The truck form, filled in; each number is used once. */
export function vehicleForm() {
  trucks += 1;
  return { number: String(trucks), name: "White flatbed", payload: "1,850 lb", staysAboard: "0 lb" };
}

export async function aVehicle(house: TestHouse, company: TestCompany): Promise<string> {
  return valueOf(await addVehicle(house, company.owner.key, vehicleForm())).vehicleId;
}

/** The form of a hose-and-gun sprayer whose hold-up follows from its hose. */
export function sprayerForm(vehicleId = "") {
  return {
    kind: "hose-and-gun", name: "100 gal tank", vehicleId, swath: "8 ft", capacity: "100 gal",
    holdUp: "", hoseLength: "300 ft", hoseDiameter: "1/2 in", pumpHolds: "0.4 gal", ...NO_NOMINAL_SPRAYER, tipDroplets: "",
  } as const;
}

/** What is typed of a gun whose tip gives 1.5 gal a minute, held at that pressure for a minute over 1,000 sq ft. */
export const GUN_NOMINAL: TypedNominalSprayer = { ...NO_NOMINAL_SPRAYER, tip: "Blue, 1.5 gal", tipFlow: "1.5 gal", tipFlowPsi: "40", pressurePsi: "40", minutesPerThousand: "1" };

/** The form of a broadcast spreader. */
export function spreaderForm(vehicleId = "") {
  return { kind: "broadcast-spreader", name: "Push spreader", vehicleId, swath: "10 ft", capacity: "50 lb", deflector: "yes", bagSettings: "" } as const;
}

export async function aSprayer(house: TestHouse, company: TestCompany): Promise<string> {
  return valueOf(await addEquipment(house, company.owner.key, sprayerForm())).equipmentId;
}

export async function aSpreader(house: TestHouse, company: TestCompany): Promise<string> {
  return valueOf(await addEquipment(house, company.owner.key, spreaderForm())).equipmentId;
}

export const MEASURING_TOOL_FORM = { name: "Half-ounce cup", mark: "0.5 fl oz" } as const;

export async function aMeasuringTool(house: TestHouse, company: TestCompany): Promise<string> {
  return valueOf(await addMeasuringTool(house, company.owner.key, MEASURING_TOOL_FORM)).measuringToolId;
}

let products = 0;

/** A product, written straight into the books; each name is used once. */
export async function aProduct(house: TestHouse, company: TestCompany, form: "granular" | "liquid" = "granular"): Promise<string> {
  const name = `Meadowlark ${String((products += 1))}`;
  const { companyId } = company;
  const productId = house.newId();
  const countedBy = form === "granular" ? "mass" : "volume";
  await asGuest(house.client, companyId, (tx) => tx.product.create({ data: { companyId, productId, name: `${name} ${productId.slice(-4)}`, form, countedBy, createdAt: house.now() } }));
  return productId;
}

/** The calibration of a gun over a timed area: 2 gal a minute for a minute over 1,000 sq ft. */
export function sprayerCalibrationForm(equipmentId: string, operatorId: string) {
  return {
    method: "timed-area", equipmentId, operatorId, madeOn: "2026-04-14", tip: "Gold 4 gpm", pressurePsi: "40",
    caught: "1 gal\n1 gal", caughtSeconds: "30", area: "1,000 sq ft", areaSeconds: "58\n60\n62",
  } as const;
}

/** The calibration of a spreader: 3 lb over 1,000 sq ft on the average. */
export function spreaderCalibrationForm(equipmentId: string, operatorId: string, productId: string) {
  return { equipmentId, operatorId, productId, madeOn: "2026-04-14", setting: "M", area: "1,000 sq ft", collected: "2.9 lb\n3.1 lb" } as const;
}

export async function aCalibration(house: TestHouse, company: TestCompany, equipmentId: string): Promise<string> {
  const form = sprayerCalibrationForm(equipmentId, company.owner.personId);
  return valueOf(await calibrateSprayer(house, company.owner.key, form)).calibrationId;
}
