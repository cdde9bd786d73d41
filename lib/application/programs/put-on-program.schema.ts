import { z } from "zod";
import { idField } from "#application/field.schema";

/** So many properties at once keep one transaction short. */
const MOST_AT_ONCE = 250;

const tick = z.union([z.literal("yes"), z.literal(""), z.literal(false)], "Tick it or leave it.");

export const putOnProgramSchema = z.object({
  programId: idField,
  /** A tick for each property, by its id. */
  properties: z
    .record(idField, tick)
    .default({})
    .transform((ticks, context) => {
      const chosen = Object.entries(ticks).flatMap(([propertyId, mark]) => (mark === "yes" ? [propertyId.toLowerCase()] : []));
      if (chosen.length === 0) context.addIssue({ code: "custom", message: "Tick at least one property." });
      if (chosen.length > MOST_AT_ONCE) context.addIssue({ code: "custom", message: `At most ${String(MOST_AT_ONCE)} at once. Narrow the list and do the rest next.` });
      return chosen;
    }),
});
