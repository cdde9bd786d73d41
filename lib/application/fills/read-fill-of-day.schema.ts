import { z } from "zod";
import { idField } from "#application/field.schema";

/** Which fill of a truck's day: its letter in the day's tank plan, and the visits that it serves there, so that it is that very one. */
export const readFillOfDaySchema = z.object({
  routeDayId: idField,
  letter: z.string().regex(/^[A-Z]{1,2}$/u, "Choose a fill of the day's tank plan."),
  visitIds: z.array(idField).max(60, "One fill serves at most 60 visits."),
});
