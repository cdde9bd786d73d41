import { z } from "zod";
import { idField } from "#application/field.schema";

/** All products, or one. */
export const listStockSchema = z.object({ productId: idField.optional() });
