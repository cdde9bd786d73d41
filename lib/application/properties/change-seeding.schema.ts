import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { checkMethod, seedingFields } from "#application/properties/seeding-fields.schema";

export const changeSeedingSchema = z.object({ seedingId: idField, version: versionField, ...seedingFields }).superRefine(checkMethod);
