import { z } from "zod";
import { idField } from "#application/field.schema";
import { firstMeasureField, waterField, zoneFields } from "#application/properties/zone-fields.schema";

export const addZoneSchema = z.object({ propertyId: idField, ...zoneFields, ...waterField, measure: firstMeasureField });
