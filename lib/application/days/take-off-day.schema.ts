import { z } from "zod";
import { idField } from "#application/field.schema";

export const takeOffDaySchema = z.object({ visitId: idField });
