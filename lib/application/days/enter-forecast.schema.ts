import { z } from "zod";
import { requiredDate, requiredLine } from "#application/field.schema";

const highField = z
  .string("Give the forecast high.")
  .trim()
  .regex(/^-?\d{1,3}$/, "Give the forecast high in whole degrees Fahrenheit, for example 84.")
  .transform(Number)
  .refine((high) => high >= -60 && high <= 140, "Give a high between -60 and 140 degrees Fahrenheit.");

export const enterForecastSchema = z.object({ date: requiredDate("the day"), highF: highField, source: requiredLine("where the forecast is from", 120) });
