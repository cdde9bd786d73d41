import { z } from "zod";
import { idField, requiredLine } from "#application/field.schema";
import { optionalLength } from "#application/properties/measure-fields.schema";

export const addWaterEdgeSchema = z.object({
  zoneId: idField,
  name: requiredLine("what water it is, such as Pond", 80),
  length: optionalLength("the length along the water", "ft"),
  width: optionalLength("the width that is kept clear", "ft"),
});
