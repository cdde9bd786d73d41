import { z } from "zod";
import { idField } from "#application/field.schema";

export const standDownVehicleSchema = z.object({ vehicleId: idField });
