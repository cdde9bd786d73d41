import { z } from "zod";
import { emailField, optionalLine, requiredLine, stateField } from "#application/field.schema";

// What a customer and a property are asked for, wherever they are entered.

/** The ZIP code as the post writes it. */
const zipField = z
  .string("Give the ZIP code.")
  .trim()
  .regex(/^\d{5}(-\d{4})?$/, "Five digits, or five and four: 46304 or 46304-1102.");

export const addressFields = {
  street: requiredLine("the house number and street"),
  city: requiredLine("the town", 100),
  state: stateField,
  zip: zipField,
};

/** An email address, or nothing. */
const optionalEmail = z.union([z.literal("").transform(() => null), emailField], "This does not look like an email address: something@somewhere.example");

export const clientFields = {
  name: requiredLine("the customer's name"),
  phone: optionalLine(40),
  email: z
    .string("Give an email address, or leave it empty.")
    .trim()
    .pipe(optionalEmail),
};
