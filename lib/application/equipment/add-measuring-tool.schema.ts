import { z } from "zod";
import { requiredLine } from "#application/field.schema";
import { typedMark } from "#application/equipment/typed-field.schema";

export const addMeasuringToolSchema = z.object({
  name: requiredLine("what the crew calls the tool", 80),
  mark: typedMark("one mark with its unit, such as 0.5 fl oz"),
});
