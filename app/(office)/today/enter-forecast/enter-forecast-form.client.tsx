"use client";

import { enterForecastSchema } from "#application/days/enter-forecast.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { enterForecastAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Forecast high, °F" inputMode="numeric" autoComplete="off" width="short" {...useField("highF")} />
      <TextField
        label="High of the day after, °F"
        hint="Only where a label limits the heat for hours afterwards, as in under 85 °F for 24 hours."
        inputMode="numeric"
        autoComplete="off"
        width="short"
        optional
        {...useField("nextHighF")}
      />
      <TextField label="Where it is from" hint="The source and its hour, such as National Weather Service, 5 am." autoComplete="off" {...useField("source")} />
    </>
  );
}

export function EnterForecastForm({ date, highF, nextHighF, source }: { readonly date: string; readonly highF: string; readonly nextHighF: string; readonly source: string }) {
  return (
    <ActionForm action={enterForecastAction} schema={enterForecastSchema} fixed={{ date }} values={{ highF, nextHighF, source }} submit="Enter it" whilePending="Entering">
      <Fields />
    </ActionForm>
  );
}
