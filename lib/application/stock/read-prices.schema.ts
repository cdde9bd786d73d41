import { z } from "zod";
import { idField } from "#application/field.schema";

export const readPricesSchema = z.object({ productId: idField });
