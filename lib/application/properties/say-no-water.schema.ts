import { z } from "zod";
import { idField } from "#application/field.schema";

export const sayNoWaterSchema = z.object({ propertyId: idField });
