import { z } from "zod";
import { idField, requiredLine } from "#application/field.schema";
import { calibrationFields } from "#application/equipment/calibration-fields.schema";
import { optionalAmount, optionalMinutes, optionalSpeed, typedAmount, typedAmounts } from "#application/equipment/typed-field.schema";

export const calibrateSpreaderSchema = z.object({
  ...calibrationFields,
  productId: idField,
  setting: requiredLine("the setting, as it is written on the spreader", 40),
  area: typedAmount("the test area, such as 1,000 sq ft", "area"),
  collected: typedAmounts("what was collected, such as 3.1 lb", "mass"),
  swath: optionalAmount("the width of one pass, such as 10 ft", "length").optional(),
  speedMph: optionalSpeed("the speed in mph").optional(),
  minutesPerThousand: optionalMinutes("the minutes for 1,000 sq ft").optional(),
});
