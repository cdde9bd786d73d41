import { z } from "zod";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { requiredClockTime } from "#application/clock-time.schema";
import { idField, optionalLine, requiredDate, requiredLine } from "#application/field.schema";

/** Where what is missing from a tank may be said to have gone. */
const MISSING_FROM_TANK_WENT = ["loss", "rinsate", "count-difference"] as const;
export type MissingFromTankWent = (typeof MISSING_FROM_TANK_WENT)[number];

/** What was found in the tank: a volume with its unit, and an empty tank is one. */
const volumeField = z.string("Give what was in the tank.").transform((text, context) => {
  const read = parseQuantity(text, { field: "volume", dimensions: ["volume"], unitWhenNone: "gal" });
  if (read.ok) return read.value.quantity;
  context.addIssue({ code: "custom", message: text.trim() === "" ? "Give what was in the tank; 0 where it was empty." : read.refusal.sentence });
  return z.NEVER;
});

const missingWentField = z
  .union([z.enum(MISSING_FROM_TANK_WENT), z.literal("")], "Say where what is missing went.")
  // An unpressed row is left out of the form, and the browser's own check has null for it.
  .nullish()
  .transform((went) => (went === undefined || went === "" ? null : went));

export const recordTankReadingSchema = z.object({
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  equipmentId: z.uuid("Choose the sprayer."),
  readOn: requiredDate("the day"),
  readAt: requiredClockTime("when it was measured"),
  readById: z.uuid("Choose who measured it."),
  how: requiredLine("with what it was measured", 200),
  volume: volumeField,
  /** Asked for only where less was found than the books have. */
  missingWent: missingWentField,
  /** What happened to it, in words. */
  note: optionalLine(200),
});

export type TankReadingForm = z.output<typeof recordTankReadingSchema>;
