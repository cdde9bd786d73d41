import { z } from "zod";
import { requiredLine } from "#application/field.schema";
import { optionalAmount, optionalAmountOrZero } from "#application/equipment/typed-field.schema";

const NUMBER_WORDS = "Give the truck's number: a whole number from 1 to 999.";

/** What is asked of every truck. */
export const vehicleFields = {
  number: z
    .union([z.number(), z.string().trim().regex(/^\d{1,3}$/u).transform(Number)], NUMBER_WORDS)
    .pipe(z.number().int(NUMBER_WORDS).min(1, NUMBER_WORDS).max(999, NUMBER_WORDS)),
  name: requiredLine("what the crew calls the truck", 80),
  payload: optionalAmount("the most that people and load may weigh, with its unit, such as 1,850 lb", "mass"),
  staysAboard: optionalAmountOrZero("what people and fixed gear weigh, with its unit, such as 620 lb", "mass"),
};
