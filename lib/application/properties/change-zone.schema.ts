import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { ESTABLISHED_TOGETHER } from "#application/properties/add-zone.schema";
import { establishedFields, waterField, zoneFields } from "#application/properties/zone-fields.schema";

export const changeZoneSchema = z
  .object({ zoneId: idField, version: versionField, ...zoneFields, ...waterField, ...establishedFields })
  .refine((form) => (form.establishedBy === null) === (form.establishedOn === null), ESTABLISHED_TOGETHER);
