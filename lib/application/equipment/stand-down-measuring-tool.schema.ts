import { z } from "zod";
import { idField } from "#application/field.schema";

export const standDownMeasuringToolSchema = z.object({ measuringToolId: idField });
