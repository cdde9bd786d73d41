import { z } from "zod";
import { idField } from "#application/field.schema";

export const removeSeedingSchema = z.object({ seedingId: idField });
