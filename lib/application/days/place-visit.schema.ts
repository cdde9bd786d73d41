import { z } from "zod";
import { idField } from "#application/field.schema";

export const placeVisitSchema = z.object({ visitId: idField, routeDayId: z.uuid("Choose a truck.") });
