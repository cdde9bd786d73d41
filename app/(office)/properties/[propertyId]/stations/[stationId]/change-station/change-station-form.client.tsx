"use client";

import { changeStationSchema } from "#application/properties/change-station.schema";
import { ActionForm } from "../../../../../../action-form.client";
import { type LawnToWater, StationFields } from "../../../station-fields.client";
import { TickRow } from "../../../tick-row.client";
import { changeStationAction } from "./action";

interface Props {
  readonly stationId: string;
  readonly version: string;
  readonly lawns: readonly LawnToWater[];
  readonly testOnFile?: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangeStationForm({ stationId, version, lawns, testOnFile, values }: Props) {
  return (
    <ActionForm action={changeStationAction} schema={changeStationSchema} fixed={{ stationId, version }} values={values} submit="Save" whilePending="Saving">
      <StationFields lawns={lawns} testOnFile={testOnFile} />
      <TickRow name="isGone" hint="It stays on record and waters no lawn any more.">
        This station is gone from the controller
      </TickRow>
    </ActionForm>
  );
}
