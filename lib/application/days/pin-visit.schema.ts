import { z } from "zod";
import { idField } from "#application/field.schema";

export const pinVisitSchema = z.object({ visitId: idField, pin: z.enum(["pin", "unpin"], "Say whether to pin it or not.") });
