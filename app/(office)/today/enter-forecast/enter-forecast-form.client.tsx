"use client";

import { enterForecastSchema } from "#application/days/enter-forecast.schema";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { enterForecastAction } from "./action";

function Fields() {
  return (
    <>
      <TextField label="Forecast high, °F" inputMode="numeric" autoComplete="off" width="short" {...useField("highF")} />
      <TextField label="Where it is from" hint="The source and its hour, such as National Weather Service, 5 am." autoComplete="off" {...useField("source")} />
    </>
  );
}

export function EnterForecastForm({ date, highF, source }: { readonly date: string; readonly highF: string; readonly source: string }) {
  return (
    <ActionForm action={enterForecastAction} schema={enterForecastSchema} fixed={{ date }} values={{ highF, source }} submit="Enter it" whilePending="Entering">
      <Fields />
    </ActionForm>
  );
}
