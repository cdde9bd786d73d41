import { z } from "zod";
import { emailField, newPasswordField, requiredDate, requiredLine, stateField, timeZoneField } from "#application/field.schema";
import { LICENSE_KINDS } from "#domain/crew/license";

export const BIND_ADDRESS_CHOICES = ["127.0.0.1", "0.0.0.0"] as const;

/** The first-run form: the company, its owner, and the owner's license. */
export const createCompanySchema = z.object({
  companyName: requiredLine("the company's name"),
  state: stateField,
  timeZone: timeZoneField,
  bindAddress: z.enum(BIND_ADDRESS_CHOICES, "Choose who may reach this installation."),
  ownerName: requiredLine("your name"),
  email: emailField,
  password: newPasswordField,
  license: z.object({
    kind: z.enum(LICENSE_KINDS, "Choose the kind of license."),
    state: stateField,
    number: requiredLine("the number on the license", 80),
    category: requiredLine("the category as the state writes it", 80),
    expiresOn: requiredDate("the day the license expires"),
  }),
});

export type NewCompany = z.output<typeof createCompanySchema>;
