import { z } from "zod";
import { idField } from "#application/field.schema";

export const listFillsSchema = z.object({
  /** Only the tanks that ride on this truck. */
  vehicleId: idField.optional(),
});
