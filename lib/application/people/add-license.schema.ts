import { z } from "zod";
import { idField, optionalDate, requiredDate, requiredLine, stateField } from "#application/field.schema";
import { LICENSE_KINDS } from "#domain/crew/license";

export const addLicenseSchema = z
  .object({
    personId: idField,
    kind: z.enum(LICENSE_KINDS, "Choose the kind of license."),
    state: stateField,
    number: requiredLine("the number on the license", 80),
    category: requiredLine("the category as the state writes it", 80),
    issuedOn: optionalDate("the day the license was issued"),
    expiresOn: requiredDate("the day the license expires"),
  })
  .refine((form) => form.issuedOn === null || form.issuedOn < form.expiresOn, {
    path: ["expiresOn"],
    message: "A license expires after it is issued.",
  });
