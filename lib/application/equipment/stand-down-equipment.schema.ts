import { z } from "zod";
import { idField } from "#application/field.schema";

export const standDownEquipmentSchema = z.object({ equipmentId: idField });
