import { z } from "zod";
import { idField } from "#application/field.schema";

export const removeZoneSchema = z.object({ zoneId: idField });
