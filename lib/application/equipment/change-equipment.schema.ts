import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { sprayerFields, spreaderFields } from "#application/equipment/equipment-fields.schema";

const which = { equipmentId: idField, version: versionField };

export const changeEquipmentSchema = z.discriminatedUnion(
  "kind",
  [z.object({ ...which, ...sprayerFields }), z.object({ ...which, ...spreaderFields })],
  "The form is not whole. Load the page again.",
);
