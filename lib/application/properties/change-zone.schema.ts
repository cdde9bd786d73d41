import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { waterField, zoneFields } from "#application/properties/zone-fields.schema";

export const changeZoneSchema = z.object({ zoneId: idField, version: versionField, ...zoneFields, ...waterField });
