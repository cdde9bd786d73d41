import { z } from "zod";
import { idField } from "#application/field.schema";

export const confirmLabelSchema = z.object({ labelEntryId: idField });
