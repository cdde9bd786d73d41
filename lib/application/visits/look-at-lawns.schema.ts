import { z } from "zod";
import { BLOOM_SEEN } from "#domain/properties/lawn-look";
import { requiredClockTime } from "#application/clock-time.schema";
import { idField, optionalLine, requiredDate } from "#application/field.schema";

export const lookAtLawnsSchema = z.object({
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  visitId: idField,
  seenOn: requiredDate("the day of the look"),
  seenAt: requiredClockTime("when it was seen"),
  seenById: z.uuid("Choose who saw it."),
  /** By lawn id: whether anything on it blooms. */
  lawns: z.record(idField, z.enum(BLOOM_SEEN, "Say whether anything blooms there, or that nobody looked.")),
  /** By lawn id: one sentence, or nothing. */
  said: z.record(idField, optionalLine(200)).default({}),
});

export type LookAtLawnsForm = z.output<typeof lookAtLawnsSchema>;
