import { z } from "zod";
import { idField } from "#application/field.schema";

export const readPlannedFillSchema = z.object({
  visitIds: z.array(idField, "Choose the visits.").max(60, "One fill serves at most 60 visits."),
});
