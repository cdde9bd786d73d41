import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { typedShare } from "#application/programs/treatment-fields.schema";
import { lawnTicks } from "#application/visits/task-fields.schema";

const BROKEN_FORM = "The form is not whole. Load the page again.";

const lineField = z
  .union([z.number(), z.string().regex(/^\d{1,3}$/u).transform(Number)], BROKEN_FORM)
  .pipe(z.number().int(BROKEN_FORM).min(1, BROKEN_FORM).max(999, BROKEN_FORM));

export const changeVisitTaskSchema = z.object({
  visitId: idField,
  /** The visit's version. */
  version: versionField,
  line: lineField,
  /** Empty for a look. */
  rate: z.string("Give a rate.").trim().max(60, "At most 60 characters."),
  /** Of spot work its share of the lawn; empty: all over the lawn, and for a look. */
  spotShare: typedShare,
  lawns: lawnTicks.refine((zoneIds) => zoneIds.length > 0, "Tick at least one lawn."),
  /** Empty where the truck decides. */
  equipmentId: z.union([z.literal("").transform(() => null), idField], "Choose equipment, or leave it to the truck."),
});
