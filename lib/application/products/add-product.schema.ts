import { z } from "zod";
import { requiredLine } from "#application/field.schema";

export const addProductSchema = z.object({
  name: requiredLine("the product's name, as it stands on the container", 120),
  form: z.enum(["granular", "liquid"], "Choose how it goes out."),
  countedBy: z.enum(["mass", "volume"], "Choose how the stock is counted."),
});
