import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { requiredArea } from "#application/properties/measure-fields.schema";
import { pieceField } from "#application/properties/zone-fields.schema";

/** Which piece of the lawn, by its place in the list; "new" for one after the last. */
const pieceAt = z.union([z.literal("new"), z.string().regex(/^\d{1,2}$/).transform(Number)], "This piece is not there.");

export const measureZoneSchema = z.object({
  zoneId: idField,
  version: versionField,
  change: z.discriminatedUnion("kind", [
    z.object({ kind: z.literal("put-piece"), at: pieceAt, piece: pieceField }),
    z.object({ kind: z.literal("remove-piece"), at: pieceAt }),
    z.object({ kind: z.literal("enter-area"), area: requiredArea("the size of the lawn") }),
  ]),
});
