import { z } from "zod";
import { GRANULAR_PASSES, LINES_AT_THE_END, TANK_LOADS } from "#domain/company/house-settings";
import { readTankMark, readWholeSetting, type WholeSetting } from "#domain/company/typed-settings";
import { versionField } from "#application/field.schema";

const wholeField = (name: WholeSetting) =>
  z.string("Give a whole number.").transform((text, context) => {
    const read = readWholeSetting(name, text);
    if (read.ok) return read.value;
    context.addIssue({ code: "custom", message: read.refusal.sentence });
    return z.NEVER;
  });

/** Kept as it was typed, because it is read anew wherever it is used. */
const tankMarkField = z.string("Give the mark, for example 0.1 gal.").transform((text, context) => {
  const read = readTankMark(text);
  if (read.ok) return text.trim();
  context.addIssue({ code: "custom", message: read.refusal.sentence });
  return z.NEVER;
});

export const changeHouseSettingsSchema = z.object({
  version: versionField,
  calibrationValidDays: wholeField("calibrationValidDays"),
  samePressureWithinPsi: wholeField("samePressureWithinPsi"),
  granularPasses: z.enum(GRANULAR_PASSES, "Choose how granular product goes down."),
  tankLoads: z.enum(TANK_LOADS, "Choose how spray is shared out over tank loads."),
  heatCautionFromF: wholeField("heatCautionFromF"),
  heatCautionWarmFromF: wholeField("heatCautionWarmFromF"),
  minutesPerStop: wholeField("minutesPerStop"),
  minutesPerThousandSquareFeet: wholeField("minutesPerThousandSquareFeet"),
  tankMark: tankMarkField,
  lineAtTheEnd: z.enum(LINES_AT_THE_END, "Choose what becomes of the mix in pump and hose."),
});
