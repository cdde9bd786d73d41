import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { ENDS_TOO_EARLY, endsAfterItBegins, routeDayFields } from "#application/days/route-day-fields.schema";

export const changeRouteDaySchema = z.object({ routeDayId: idField, version: versionField, ...routeDayFields }).refine(endsAfterItBegins, ENDS_TOO_EARLY);
