"use client";

import { changeEquipmentSchema } from "#application/equipment/change-equipment.schema";
import { type Choice } from "#ui/select-field";
import { ActionForm } from "../../../../../action-form.client";
import { EquipmentFields } from "../../equipment-fields.client";
import { changeEquipmentAction } from "./action";

interface Props {
  readonly what: "sprayer" | "spreader";
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
  readonly trucks: readonly Choice[];
}

export function ChangeEquipmentForm({ what, fixed, values, trucks }: Props) {
  return (
    <ActionForm action={changeEquipmentAction} schema={changeEquipmentSchema} fixed={fixed} values={values} submit="Save" whilePending="Saving">
      <EquipmentFields what={what} asksKind={false} trucks={trucks} />
    </ActionForm>
  );
}
