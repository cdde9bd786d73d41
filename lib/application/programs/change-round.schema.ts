import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { checkWindow, roundFields } from "#application/programs/round-fields.schema";
import { treatmentRows } from "#application/programs/treatment-fields.schema";

/** Treatments and the second look are sent while the round has no visits; afterwards they stand and are left out. */
export const changeRoundSchema = z
  .object({ roundId: idField, version: versionField, ...roundFields, secondLook: roundFields.secondLook.optional(), treatments: treatmentRows.optional() })
  .superRefine(checkWindow);
