import { z } from "zod";
import { requiredLine } from "#application/field.schema";

const ASK = "Give the season as a year, such as 2026.";

export const addProgramSchema = z.object({
  name: requiredLine("a name for the program", 80),
  season: z
    .string(ASK)
    .trim()
    .regex(/^2\d{3}$/u, ASK)
    .transform(Number),
});
