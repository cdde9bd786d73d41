import { z } from "zod";
import { idField, versionField } from "#application/field.schema";

/** The visits in the order in which they stood, their ids divided by spaces, as a form carries it. */
const orderField = z
  .string("The order is not whole.")
  .max(10_000, "The order is not whole.")
  .transform((text) => text.split(" ").filter((id) => id !== ""))
  .pipe(z.array(idField).min(1, "The order is not whole."));

export const restoreOrderSchema = z.object({ routeDayId: idField, version: versionField, order: orderField });
