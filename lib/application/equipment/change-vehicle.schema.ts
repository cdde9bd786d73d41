import { z } from "zod";
import { idField, versionField } from "#application/field.schema";
import { vehicleFields } from "#application/equipment/vehicle-fields.schema";

export const changeVehicleSchema = z.object({ vehicleId: idField, version: versionField, ...vehicleFields });
