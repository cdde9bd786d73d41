import { readCaughtLiquid } from "#domain/equipment/caught-liquid";
import { isSprayer, methodsFor } from "#domain/equipment/equipment-kind";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { rateOnFile } from "#domain/equipment/rate-on-file";
import { calibrateSprayer as calibrate } from "#domain/equipment/sprayer-calibration";
import { readPressure, readSprayerTest } from "#domain/equipment/typed-test";
import { accept } from "#domain/foundation/outcome";
import { formatRate } from "#domain/quantities/format-rate";
import { writeDeed } from "#application/audit-trail";
import { calibrateSprayerSchema } from "#application/equipment/calibrate-sprayer.schema";
import { calibrationParties } from "#application/equipment/calibration-of-operator";
import { badField, conflict } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/**
 * Writes what an operator measured with a sprayer: inputs as typed, and the carrier volume per area that follows, of the
 * spray that was caught or for which water stood.
 */
export const calibrateSprayer = useCase("equipment/calibrate-sprayer", calibrateSprayerSchema, async (work, form) => {
  const { companyId } = work.company;
  const { equipmentId, operatorId, madeOn, tip, pressurePsi, ...inputs } = form;
  const parties = await calibrationParties(work, form);
  if (!parties.ok) return parties;
  const { equipment, operator } = parties.value;
  if (!isSprayer(equipment.kind)) return conflict("This is a spreader. Calibrate it as one.");
  if (!methodsFor(equipment.kind).includes(inputs.method)) return badField("method", "This method does not suit this kind of sprayer.");
  const pressure = readPressure("pressurePsi", pressurePsi);
  if (!pressure.ok) return badField("pressurePsi", pressure.refusal.sentence);
  const test = readSprayerTest(inputs, pressure.value);
  if (!test.ok) return badField(test.refusal.field, test.refusal.sentence);
  const liquid = readCaughtLiquid(inputs);
  if (!liquid.ok) return badField(liquid.refusal.field, liquid.refusal.sentence);
  const measuredField = inputs.method === "small-area" ? "used" : "caught";
  const result = calibrate(test.value, liquid.value, USUAL_SPREAD_LIMIT);
  if (!result.ok) return badField(result.refusal.field === "course" ? "course" : measuredField, result.refusal.sentence);
  const rate = rateOnFile(measuredField, result.value.carrierRate);
  if (!rate.ok) return badField(rate.refusal.field, rate.refusal.sentence);
  const calibrationId = work.newId();
  await work.tx.calibration.create({
    data: {
      companyId,
      calibrationId,
      equipmentId,
      operatorId,
      tip,
      pressurePsi: pressure.value,
      method: inputs.method,
      inputs: { ...inputs },
      rateBasis: "carrier-volume-per-area",
      ...rate.value,
      madeOn: dayOf(madeOn),
      enteredAt: work.now,
    },
  });
  const rateInWords = formatRate(result.value.carrierRate, "us");
  await writeDeed(work, calibrationId, {
    deed: "sprayer-calibrated",
    details: { equipment: equipment.name, operator: operator.name, tip, pressurePsi, rate: rateInWords, madeOn },
  });
  return accept({ calibrationId });
});
