import { z } from "zod";
import { idField } from "#application/field.schema";

export const listRecordsOfPropertySchema = z.object({ propertyId: idField });
