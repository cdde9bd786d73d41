import { DEFAULT_HOUSE_SETTINGS, type GranularPasses, type HouseSettings, type LineAtTheEnd, type TankLoads } from "#domain/company/house-settings";
import { readTankMark } from "#domain/company/typed-settings";
import { invariant } from "#domain/foundation/invariant";
import { type Work } from "#application/use-case";

/** A company's settings as its row has them. */
export interface SettingsOnFile {
  /** 1 where nobody has changed any: what is not on file is the default. */
  readonly version: number;
  readonly settings: HouseSettings;
  /** The mark as it was typed; the default's words where nobody has. */
  readonly tankMarkText: string;
}

/** What stands in the form's field for the default mark. */
export const DEFAULT_TANK_MARK_TEXT = "0.1 gal";

/** The settings of the open company, by which everything is computed that label and law leave open. One query. */
export async function settingsOnFile({ tx, company: { companyId } }: Pick<Work, "tx" | "company">): Promise<SettingsOnFile> {
  const row = await tx.houseSettings.findUnique({ where: { companyId } });
  if (row === null) return { version: 1, settings: DEFAULT_HOUSE_SETTINGS, tankMarkText: DEFAULT_TANK_MARK_TEXT };
  const { version, calibrationValidDays, samePressureWithinPsi, heatCautionFromF, heatCautionWarmFromF, minutesPerStop, minutesPerThousandSquareFeet, tankMark } = row;
  const mark = readTankMark(tankMark);
  invariant(mark.ok, "a mark on file can be read");
  return {
    version,
    tankMarkText: tankMark,
    settings: {
      ...{ calibrationValidDays, samePressureWithinPsi, heatCautionFromF, heatCautionWarmFromF, minutesPerStop, minutesPerThousandSquareFeet, tankMark: mark.value },
      granularPasses: row.granularPasses as GranularPasses,
      tankLoads: row.tankLoads as TankLoads,
      lineAtTheEnd: row.lineAtTheEnd as LineAtTheEnd,
    },
  };
}

/** The settings alone. */
export async function houseSettingsOf(work: Pick<Work, "tx" | "company">): Promise<HouseSettings> {
  return (await settingsOnFile(work)).settings;
}
