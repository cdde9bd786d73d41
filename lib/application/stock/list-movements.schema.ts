import { z } from "zod";
import { idField } from "#application/field.schema";

export const listMovementsSchema = z.object({ productId: idField });
