import { z } from "zod";
import { idField } from "#application/field.schema";
import { establishedFields, firstMeasureField, waterField, zoneFields } from "#application/properties/zone-fields.schema";

export const ESTABLISHED_TOGETHER = { path: ["establishedOn"], message: "Give how and when it was established, or neither." };

export const addZoneSchema = z
  .object({ propertyId: idField, ...zoneFields, ...waterField, ...establishedFields, measure: firstMeasureField })
  .refine((form) => (form.establishedBy === null) === (form.establishedOn === null), ESTABLISHED_TOGETHER);
