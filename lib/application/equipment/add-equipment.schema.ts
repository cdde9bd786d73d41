import { z } from "zod";
import { sprayerFields, spreaderFields } from "#application/equipment/equipment-fields.schema";

export const addEquipmentSchema = z.discriminatedUnion("kind", [z.object(sprayerFields), z.object(spreaderFields)], "Choose the kind.");

/** The form as it was read. */
export type EquipmentForm = z.output<typeof addEquipmentSchema>;
