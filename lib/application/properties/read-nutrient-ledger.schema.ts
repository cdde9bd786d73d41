import { z } from "zod";
import { idField } from "#application/field.schema";

/** Which property; and the visit that stands out from what is planned, where one is looked at. */
export const readNutrientLedgerSchema = z.object({ propertyId: idField, visitId: idField.optional() });
