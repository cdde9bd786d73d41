import { z } from "zod";
import { idField } from "#application/field.schema";

/** More stops than any day has. */
const MOST_STOPS = 200;
const SENTENCE = "Give the place in the order as a number, 1 for the first.";

export const moveVisitSchema = z.object({
  visitId: idField,
  routeDayId: z.uuid("Choose a truck."),
  position: z
    .union([z.number(), z.string().trim().regex(/^\d{1,3}$/, SENTENCE).transform(Number)], SENTENCE)
    .pipe(z.number().int(SENTENCE).min(1, SENTENCE).max(MOST_STOPS, SENTENCE)),
});
