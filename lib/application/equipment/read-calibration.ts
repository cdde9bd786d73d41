import { z } from "zod";
import { readCaughtLiquid, type TypedLiquid } from "#domain/equipment/caught-liquid";
import { type CalibrationWorking, sprayerWorking, spreaderWorking } from "#domain/equipment/calibration-working";
import { type SprayerMethod } from "#domain/equipment/equipment-kind";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { calibrateSprayer } from "#domain/equipment/sprayer-calibration";
import { rateFromCollected } from "#domain/equipment/spreader-calibration";
import { readSprayerTest, readSpreaderTest, type TypedSprayerTest, type TypedSpreaderTest } from "#domain/equipment/typed-test";
import { addDays, calendarDateIn } from "#domain/foundation/calendar-date";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { houseSettingsOf } from "#application/companies/house-settings";
import { idField } from "#application/field.schema";
import { type CalibrationOnFile, calibrationsOnFile, equipmentOnFile } from "#application/equipment/gear-on-file";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

interface Told {
  /** Null where what was measured would be refused today. */
  readonly working: CalibrationWorking | null;
  readonly findings: readonly Finding[];
}

/** The arithmetic once more, from the inputs as they were typed. Refused where readers have grown stricter since. */
function tell({ setup, figures }: CalibrationOnFile): Outcome<Told> {
  if (setup.kind === "spreader") {
    const runs = readSpreaderTest(figures.inputs as TypedSpreaderTest);
    if (!runs.ok) return runs;
    const result = rateFromCollected(runs.value);
    return result.ok ? accept({ working: spreaderWorking(result.value, figures.inputs as TypedSpreaderTest), findings: [] }) : result;
  }
  const test = readSprayerTest(figures.inputs as TypedSprayerTest & { readonly method: SprayerMethod }, setup.pressurePsi);
  if (!test.ok) return test;
  const liquid = readCaughtLiquid(figures.inputs as TypedLiquid);
  if (!liquid.ok) return liquid;
  const result = calibrateSprayer(test.value, liquid.value, USUAL_SPREAD_LIMIT);
  return result.ok ? accept({ working: sprayerWorking(result.value), findings: result.value.findings }) : result;
}

/** A calibration is never changed, so one that would be refused today is shown with what is wrong with it. */
function refusedToday({ equipment, operator }: CalibrationOnFile, sentence: string): Told {
  const finding = takeCare({
    rule: "calibration-refused-today",
    source: "house",
    what: "What was measured here would not be taken today, so its rate may be wrong.",
    figure: sentence,
    toDo: `Let ${operator.name} calibrate ${equipment.name} again before it is used.`,
    about: [equipment.name, operator.name],
  });
  return { working: null, findings: [finding] };
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
  const told = tell(calibration);
  return accept({ calibration, lastGoodDay, hasRunOut, ...(told.ok ? told.value : refusedToday(calibration, told.refusal.sentence)) });
});
