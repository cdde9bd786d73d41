import { z } from "zod";
import { idField } from "#application/field.schema";
import { checkTest, stationFields } from "#application/properties/station-fields.schema";

export const addStationSchema = z.object({ propertyId: idField, ...stationFields }).superRefine(checkTest);
