import { z } from "zod";
import { optionalDate, optionalLine, requiredLine, stateField, timeZoneField } from "#application/field-schema";

export const changeCompanySchema = z.object({
  /** The version the form was filled from; another one in the database means someone else was faster. */
  version: z.coerce.number("The form is not whole. Load the page again.").int().min(1),
  name: requiredLine("the company's name"),
  state: stateField,
  timeZone: timeZoneField,
  phone: optionalLine(40),
  address: optionalLine(300),
  businessLicenseNumber: optionalLine(80),
  businessLicenseExpiresOn: optionalDate("the day the business license expires"),
  insuranceExpiresOn: optionalDate("the day the insurance expires"),
});
