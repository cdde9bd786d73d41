import { z } from "zod";
import { idField } from "#application/field.schema";

export const removeWaterEdgeSchema = z.object({ waterEdgeId: idField });
