import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { checkTest, stationFields } from "#application/properties/station-fields.schema";
import { tickField } from "#application/properties/measure-fields.schema";

export const changeStationSchema = z
  .object({
    stationId: idField,
    version: versionField,
    ...stationFields,
    /** A station that is gone from the controller. */
    isGone: tickField,
  })
  .superRefine(checkTest);
