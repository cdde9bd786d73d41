import { z } from "zod";

/** Which source and year to show, as an address says it; what is not kept shows the source in use and its newest year. */
export const readTemperaturesSchema = z.object({
  source: z.string("Choose a source.").max(80, "Choose a source.").optional(),
  year: z.string("Choose a year.").max(4, "Choose a year.").optional(),
});
