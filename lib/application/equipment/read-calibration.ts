import { z } from "zod";
import { readCaughtLiquid, type TypedLiquid } from "#domain/equipment/caught-liquid";
import { type CalibrationWorking, sprayerWorking, spreaderWorking } from "#domain/equipment/calibration-working";
import { type SprayerMethod } from "#domain/equipment/equipment-kind";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { calibrateSprayer } from "#domain/equipment/sprayer-calibration";
import { rateFromCollected } from "#domain/equipment/spreader-calibration";
import { readSprayerTest, readSpreaderTest, type TypedSprayerTest, type TypedSpreaderTest } from "#domain/equipment/typed-test";
import { addDays, calendarDateIn } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept } from "#domain/foundation/outcome";
import { houseSettingsOf } from "#application/companies/house-settings";
import { idField } from "#application/field.schema";
import { type CalibrationOnFile, calibrationsOnFile, equipmentOnFile } from "#application/equipment/gear-on-file";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

interface Told {
  readonly working: CalibrationWorking;
  readonly findings: readonly Finding[];
}

/** The arithmetic once more, from the inputs as they were typed. They were read when they were written, so they read now. */
function tell({ setup, figures }: CalibrationOnFile): Told {
  if (setup.kind === "spreader") {
    const runs = readSpreaderTest(figures.inputs as TypedSpreaderTest);
    invariant(runs.ok, "a spreader's inputs on file can be read");
    const result = rateFromCollected(runs.value);
    invariant(result.ok, "a spreader's calibration on file can be computed");
    return { working: spreaderWorking(result.value, figures.inputs as TypedSpreaderTest), findings: [] };
  }
  const test = readSprayerTest(figures.inputs as TypedSprayerTest & { readonly method: SprayerMethod }, setup.pressurePsi);
  invariant(test.ok, "a sprayer's inputs on file can be read");
  const liquid = readCaughtLiquid(figures.inputs as TypedLiquid);
  invariant(liquid.ok, "what was caught can be read");
  const result = calibrateSprayer(test.value, liquid.value, USUAL_SPREAD_LIMIT);
  invariant(result.ok, "a sprayer's calibration on file can be computed");
  return { working: sprayerWorking(result.value), findings: result.value.findings };
}

/** One calibration with its arithmetic, what there is to say about the measuring, and until when it is or was good. */
export const readCalibration = useCase("equipment/read-calibration", z.object({ calibrationId: idField }), async (work, { calibrationId }) => {
  const { companyId } = work.company;
  const row = await work.tx.calibration.findUnique({ where: { companyId_calibrationId: { companyId, calibrationId } } });
  if (row === null) return notFound("calibration");
  const gear = await equipmentOnFile(work, row.equipmentId);
  const calibration = (await calibrationsOnFile(work, gear)).find(({ figures }) => figures.calibrationId === calibrationId);
  invariant(calibration !== undefined, "a calibration is among those of its gear");
  const lastGoodDay = addDays(calibration.doneOn, (await houseSettingsOf(work)).calibrationValidDays);
  const hasRunOut = lastGoodDay < calendarDateIn(work.company.timeZone, work.now.getTime());
  return accept({ calibration, lastGoodDay, hasRunOut, ...tell(calibration) });
});
