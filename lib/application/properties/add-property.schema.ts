import { z } from "zod";
import { idField } from "#application/field.schema";
import { addressFields } from "#application/properties/property-fields.schema";

export const addPropertySchema = z.object({ clientId: idField, ...addressFields });
