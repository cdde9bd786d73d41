import { z } from "zod";
import { idField, versionField } from "#application/field.schema";

export const orderDaySchema = z.object({
  routeDayId: idField,
  version: versionField,
  /** What happens when some visits find no place: nothing but to say so, or they come off the day. */
  withoutPlace: z.enum(["tell", "take-off"]).default("tell"),
});
