import { z } from "zod";
import { idField } from "#application/field.schema";

export const withdrawLicenseSchema = z.object({ licenseId: idField });
