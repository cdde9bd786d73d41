"use client";

import { addRouteDaySchema } from "#application/days/add-route-day.schema";
import { type Choice, SelectField } from "#ui/select-field";
import { DateField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { RouteDayFields } from "../route-day-fields.client";
import { addRouteDayAction } from "./action";

interface AddRouteDayFormProps {
  readonly date: string;
  readonly vehicles: readonly Choice[];
  readonly people: readonly Choice[];
}

function Fields({ vehicles, people }: Omit<AddRouteDayFormProps, "date">) {
  return (
    <>
      <DateField label="Day" {...useField("date")} />
      <SelectField label="Truck" choices={vehicles} {...useField("vehicleId")} />
      <RouteDayFields people={people} />
    </>
  );
}

export function AddRouteDayForm({ date, vehicles, people }: AddRouteDayFormProps) {
  const [first] = vehicles;
  return (
    <ActionForm
      action={addRouteDayAction}
      schema={addRouteDaySchema}
      values={{ date, vehicleId: first?.value ?? "", operatorId: "", startsAt: "07:30", endsAt: "16:30" }}
      submit="Send it out"
      whilePending="Sending"
    >
      <Fields vehicles={vehicles} people={people} />
    </ActionForm>
  );
}
