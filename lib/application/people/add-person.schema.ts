import { z } from "zod";
import { optionalLine, requiredLine } from "#application/field.schema";

export const addPersonSchema = z.object({ name: requiredLine("the person's name"), phone: optionalLine(40) });
