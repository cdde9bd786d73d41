import { z } from "zod";
import { requiredDate, requiredLine } from "#application/field.schema";

const WHOLE_DEGREES = /^-?\d{1,3}$/;
const POSSIBLE_HIGH = "Give a high between -60 and 140 degrees Fahrenheit.";

function isPossible(high: number): boolean {
  return high >= -60 && high <= 140;
}

const highField = z
  .string("Give the forecast high.")
  .trim()
  .regex(WHOLE_DEGREES, "Give the forecast high in whole degrees Fahrenheit, for example 84.")
  .transform(Number)
  .refine(isPossible, POSSIBLE_HIGH);

/** The high of a day after: what burns is for care in its heat, and a label may limit the hours afterwards. Empty becomes null. */
const laterHighField = z
  .string("Give the high of that day, or leave it empty.")
  .trim()
  .refine((text) => text === "" || WHOLE_DEGREES.test(text), "Give the high in whole degrees Fahrenheit, for example 84, or leave it empty.")
  .transform((text) => (text === "" ? null : Number(text)))
  .refine((high) => high === null || isPossible(high), POSSIBLE_HIGH)
  .default(null);

/** The days after the one whose forecast is entered, in their order, as the form names their highs. */
export const LATER_HIGHS = ["next", "second", "third"] as const;

export const enterForecastSchema = z.object({
  date: requiredDate("the day"),
  highF: highField,
  followingHighsF: z.object({ next: laterHighField, second: laterHighField, third: laterHighField }).default({ next: null, second: null, third: null }),
  source: requiredLine("where the forecast is from", 120),
});
