"use client";

import { addVehicleSchema } from "#application/equipment/add-vehicle.schema";
import { ActionForm } from "../../../../action-form.client";
import { VehicleFields } from "../vehicle-fields.client";
import { addVehicleAction } from "./action";

export function AddVehicleForm() {
  return (
    <ActionForm action={addVehicleAction} schema={addVehicleSchema} submit="Add the truck" whilePending="Adding">
      <VehicleFields />
    </ActionForm>
  );
}
