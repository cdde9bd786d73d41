import { z } from "zod";
import { idField, isWritable, requiredLine } from "#application/field.schema";

export const answerHoldSchema = z.object({
  visitId: idField,
  /** The hold as the one who answers read it, on the day it was read for: what `textOfAnsweredHold` says of it. */
  hold: z.string("Choose the hold.").min(1, "Choose the hold.").max(20_000, "Choose the hold.").refine((text) => isWritable(text, "line"), "Choose the hold."),
  licenseId: idField,
  reason: requiredLine("why it does not apply here", 500),
});
