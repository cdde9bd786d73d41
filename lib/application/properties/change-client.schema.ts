import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { CLIENT_STANDINGS } from "#domain/properties/client-standing";
import { clientFields } from "#application/properties/property-fields.schema";

export const changeClientSchema = z.object({
  clientId: idField,
  version: versionField,
  ...clientFields,
  standing: z.enum(CLIENT_STANDINGS, "Choose how this customer stands."),
});
