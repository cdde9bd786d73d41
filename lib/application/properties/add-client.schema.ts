import { z } from "zod";
import { addressFields, clientFields } from "#application/properties/property-fields.schema";

export const addClientSchema = z.object({ ...clientFields, ...addressFields });
