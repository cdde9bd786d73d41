import { z } from "zod";
import { idField } from "#application/field.schema";

export const removeRoundSchema = z.object({ roundId: idField });
