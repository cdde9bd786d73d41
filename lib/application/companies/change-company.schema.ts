import { z } from "zod";
import { optionalDate, optionalLine, requiredLine, stateField, timeZoneField, versionField } from "#application/field.schema";

export const changeCompanySchema = z.object({
  version: versionField,
  name: requiredLine("the company's name"),
  state: stateField,
  timeZone: timeZoneField,
  phone: optionalLine(40),
  address: optionalLine(300),
  businessLicenseNumber: optionalLine(80),
  businessLicenseExpiresOn: optionalDate("the day the business license expires"),
  insuranceExpiresOn: optionalDate("the day the insurance expires"),
});
