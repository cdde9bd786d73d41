import { z } from "zod";
import { nozzleSizes } from "#domain/equipment/nozzle";
import { CAUGHT_LIQUIDS } from "#domain/equipment/caught-liquid";
import { lineAsTyped, requiredLine } from "#application/field.schema";
import { calibrationFields } from "#application/equipment/calibration-fields.schema";
import { typedAmount, typedAmounts, typedPressure, typedSeconds, typedSecondsList } from "#application/equipment/typed-field.schema";

const setup = {
  ...calibrationFields,
  tip: requiredLine("the tip, as it is written on it", 80),
  pressurePsi: typedPressure("the pressure in psi"),
  liquid: z.enum(CAUGHT_LIQUIDS, "Say what was caught.").optional(),
  sprayDensity: lineAsTyped("Give the density of the spray, or leave it empty.", 60).optional(),
};

const flow = {
  caught: typedAmounts("what was caught, such as 64 fl oz", "volume"),
  caughtSeconds: typedSeconds("for how many seconds it was caught"),
};

const course = {
  tipSize: z.union([z.literal(""), z.enum(Object.keys(nozzleSizes))], "Choose the size of the tip, or leave it open."),
  course: typedAmount("the length of the course, such as 100 ft", "length"),
  courseSeconds: typedSecondsList("the seconds that the course took"),
};

export const calibrateSprayerSchema = z.discriminatedUnion(
  "method",
  [
    z.object({
      method: z.literal("timed-area"),
      ...setup,
      ...flow,
      area: typedAmount("the measured area, such as 1,000 sq ft", "area"),
      areaSeconds: typedSecondsList("the seconds that the area took"),
    }),
    z.object({ method: z.literal("timed-course"), ...setup, ...flow, swath: typedAmount("the width of the swath, such as 4 ft", "length"), ...course }),
    z.object({
      method: z.literal("boom"),
      ...setup,
      ...flow,
      nozzleSpacing: typedAmount("the spacing of the nozzles, such as 20 in", "length"),
      ...course,
    }),
    z.object({
      method: z.literal("small-area"),
      ...setup,
      area: typedAmount("the measured area, such as 1,000 sq ft", "area"),
      used: typedAmounts("what the area took, such as 2 gal", "volume"),
    }),
  ],
  "Choose how it was measured.",
);
