"use client";

import { addStationSchema } from "#application/properties/add-station.schema";
import { ActionForm } from "../../../../action-form.client";
import { type LawnToWater, StationFields } from "../station-fields.client";
import { addStationAction } from "./action";

interface Props {
  readonly propertyId: string;
  readonly number: string;
  readonly lawns: readonly LawnToWater[];
}

export function AddStationForm({ propertyId, number, lawns }: Props) {
  return (
    <ActionForm
      action={addStationAction}
      schema={addStationSchema}
      fixed={{ propertyId }}
      values={{ number, depths: "", minutes: "", wind: "", testedOn: "", longestRun: "" }}
      submit="Add the station"
      whilePending="Adding"
    >
      <StationFields lawns={lawns} />
    </ActionForm>
  );
}
