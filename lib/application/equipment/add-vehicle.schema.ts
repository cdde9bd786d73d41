import { z } from "zod";
import { vehicleFields } from "#application/equipment/vehicle-fields.schema";

export const addVehicleSchema = z.object(vehicleFields);
