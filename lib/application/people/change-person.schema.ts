import { z } from "zod";
import { idField, optionalDate, optionalLine, requiredLine, versionField } from "#application/field.schema";

export const changePersonSchema = z.object({
  personId: idField,
  version: versionField,
  name: requiredLine("the person's name"),
  phone: optionalLine(40),
  leftOn: optionalDate("the day this person left"),
});
