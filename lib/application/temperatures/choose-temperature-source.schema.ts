import { z } from "zod";
import { requiredLine } from "#application/field.schema";

export const chooseTemperatureSourceSchema = z.object({ source: requiredLine("the source", 80) });
