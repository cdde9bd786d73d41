import { z } from "zod";
import { idField } from "#application/field.schema";
import { checkMethod, seedingFields } from "#application/properties/seeding-fields.schema";

export const addSeedingSchema = z.object({ zoneId: idField, ...seedingFields }).superRefine(checkMethod);
