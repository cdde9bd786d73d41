import { z } from "zod";
import { idField, requiredLine } from "#application/field.schema";

export const answerHoldSchema = z.object({
  visitId: idField,
  rule: z.string("Choose the hold.").regex(/^[a-z][a-z-]{2,60}$/, "Choose the hold."),
  licenseId: idField,
  reason: requiredLine("why it does not apply here", 500),
});
