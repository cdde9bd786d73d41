import { z } from "zod";
import { idField, optionalDate, optionalLine, requiredLine } from "#application/field-schema";

export const changePersonSchema = z.object({
  personId: idField,
  version: z.coerce.number("The form is not whole. Load the page again.").int().min(1),
  name: requiredLine("the person's name"),
  phone: optionalLine(40),
  leftOn: optionalDate("the day this person left"),
});
