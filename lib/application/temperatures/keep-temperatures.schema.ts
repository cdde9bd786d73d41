import { z } from "zod";
import { idField, requiredLine } from "#application/field.schema";

/** Every day of a year and a bit, written out with room to spare. */
const LONGEST_PASTE = 40_000;

export const keepTemperaturesSchema = z.object({
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  source: requiredLine("the name of the source", 80),
  figuresFrom: requiredLine("where its figures are from", 160),
  scale: z.enum(["fahrenheit", "celsius"], "Say on which scale the temperatures are."),
  /** As it was pasted; it is read against the days that are kept. */
  days: z.string("Give the days.").trim().min(1, "Give the days, one to a line: date, high, low.").max(LONGEST_PASTE, "This is longer than a year of days. Paste less at once."),
});

export type TemperaturesForm = z.output<typeof keepTemperaturesSchema>;
