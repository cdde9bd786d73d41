import { z } from "zod";
import { VISIT_STANDINGS } from "#domain/scheduling/visit-standing";
import { idField, requiredDate } from "#application/field.schema";

/** What is left out does not narrow the list. */
export const listVisitsSchema = z.object({
  standing: z.enum(VISIT_STANDINGS, "Choose where they stand.").optional(),
  /** Planned visits whose window holds this day, on a day or not. */
  openOn: requiredDate("a day").optional(),
  propertyId: idField.optional(),
  roundId: idField.optional(),
});
