import { z } from "zod";
import { idField, requiredDate, requiredLine } from "#application/field.schema";
import { PHOSPHORUS_FINDINGS } from "#domain/properties/soil-test";

export const addSoilTestSchema = z.object({
  zoneId: idField,
  sampledOn: requiredDate("the day the sample was taken"),
  laboratory: requiredLine("the laboratory", 120),
  phosphorusWord: requiredLine("the laboratory's own word for phosphorus", 80),
  phosphorus: z.enum(PHOSPHORUS_FINDINGS, "Choose what the laboratory says of phosphorus."),
});
