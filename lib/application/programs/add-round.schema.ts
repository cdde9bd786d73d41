import { z } from "zod";
import { idField } from "#application/field.schema";
import { checkWindow, roundFields } from "#application/programs/round-fields.schema";
import { treatmentRows } from "#application/programs/treatment-fields.schema";

export const addRoundSchema = z.object({ programId: idField, ...roundFields, treatments: treatmentRows }).superRefine(checkWindow);
