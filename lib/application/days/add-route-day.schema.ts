import { z } from "zod";
import { idField, requiredDate } from "#application/field.schema";
import { ENDS_TOO_EARLY, endsAfterItBegins, routeDayFields } from "#application/days/route-day-fields.schema";

export const addRouteDaySchema = z.object({ date: requiredDate("the day"), vehicleId: idField, ...routeDayFields }).refine(endsAfterItBegins, ENDS_TOO_EARLY);
