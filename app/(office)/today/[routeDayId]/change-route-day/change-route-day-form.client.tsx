"use client";

import { changeRouteDaySchema } from "#application/days/change-route-day.schema";
import { type Choice } from "#ui/select-field";
import { ActionForm } from "../../../../action-form.client";
import { RouteDayFields } from "../../route-day-fields.client";
import { changeRouteDayAction } from "./action";

interface ChangeRouteDayFormProps {
  readonly fixed: { readonly routeDayId: string; readonly version: string };
  readonly values: { readonly operatorId: string; readonly startsAt: string; readonly endsAt: string };
  readonly people: readonly Choice[];
}

export function ChangeRouteDayForm({ fixed, values, people }: ChangeRouteDayFormProps) {
  return (
    <ActionForm action={changeRouteDayAction} schema={changeRouteDaySchema} fixed={fixed} values={values} submit="Change" whilePending="Changing">
      <RouteDayFields people={people} />
    </ActionForm>
  );
}
