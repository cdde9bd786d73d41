"use client";

import { addEquipmentSchema } from "#application/equipment/add-equipment.schema";
import { type Choice } from "#ui/select-field";
import { ActionForm } from "../../../../action-form.client";
import { EquipmentFields } from "../equipment-fields.client";
import { addEquipmentAction } from "./action";

interface Props {
  readonly what: "sprayer" | "spreader";
  readonly trucks: readonly Choice[];
}

export function AddEquipmentForm({ what, trucks }: Props) {
  return (
    <ActionForm action={addEquipmentAction} schema={addEquipmentSchema} submit={`Add the ${what}`} whilePending="Adding">
      <EquipmentFields what={what} asksKind trucks={trucks} />
    </ActionForm>
  );
}
