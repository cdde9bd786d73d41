"use client";

import { type Choice, SelectField } from "#ui/select-field";
import { Row } from "#ui/row";
import { TextField } from "#ui/text-field";
import { useField } from "../../action-form.client";

/** Who applies, and when the truck leaves and should be back. */
export function RouteDayFields({ people }: { readonly people: readonly Choice[] }) {
  return (
    <>
      <SelectField label="Who applies" choices={people} chooseWords="Choose a person" {...useField("operatorId")} />
      <Row align="top">
        <TextField label="Leaves at" type="time" width="medium" {...useField("startsAt")} />
        <TextField label="Back by" type="time" width="medium" {...useField("endsAt")} />
      </Row>
    </>
  );
}
