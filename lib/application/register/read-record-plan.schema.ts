import { z } from "zod";
import { idField } from "#application/field.schema";

export const readRecordPlanSchema = z.object({ visitId: idField });
