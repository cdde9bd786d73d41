"use client";

import { changeVehicleSchema } from "#application/equipment/change-vehicle.schema";
import { ActionForm } from "../../../../../action-form.client";
import { VehicleFields } from "../../vehicle-fields.client";
import { changeVehicleAction } from "./action";

interface Props {
  readonly vehicleId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangeVehicleForm({ vehicleId, version, values }: Props) {
  return (
    <ActionForm
      action={changeVehicleAction}
      schema={changeVehicleSchema}
      fixed={{ vehicleId, version }}
      values={values}
      submit="Save"
      whilePending="Saving"
    >
      <VehicleFields />
    </ActionForm>
  );
}
