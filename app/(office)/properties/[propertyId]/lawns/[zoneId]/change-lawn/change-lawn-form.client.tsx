"use client";

import { changeZoneSchema } from "#application/properties/change-zone.schema";
import { ActionForm } from "../../../../../../action-form.client";
import { ZoneFields } from "../../../zone-fields.client";
import { changeLawnAction } from "./action";

interface Props {
  readonly zoneId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangeLawnForm({ zoneId, version, values }: Props) {
  return (
    <ActionForm action={changeLawnAction} schema={changeZoneSchema} fixed={{ zoneId, version }} values={values} submit="Save" whilePending="Saving">
      <ZoneFields />
    </ActionForm>
  );
}
