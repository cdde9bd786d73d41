"use client";

import { enterForecastSchema, LATER_HIGHS } from "#application/days/enter-forecast.schema";
import { Columns } from "#ui/columns";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { enterForecastAction } from "./action";

interface Props {
  readonly date: string;
  readonly values: Readonly<Record<string, string>>;
  /** The days after, in words and in their order. */
  readonly dayWords: readonly string[];
}

function LaterHigh({ name, day }: { readonly name: (typeof LATER_HIGHS)[number]; readonly day: string }) {
  return <TextField label={`High of ${day}, °F`} inputMode="numeric" autoComplete="off" width="short" optional {...useField(`followingHighsF.${name}`)} />;
}

function Fields({ dayWords }: Pick<Props, "dayWords">) {
  return (
    <>
      <TextField label="Forecast high, °F" inputMode="numeric" autoComplete="off" width="short" {...useField("highF")} />
      <p>The days after: feed and iron burn in their heat too, and a label may limit it, as in under 85&nbsp;°F for 48 hours.</p>
      <Columns>
        {LATER_HIGHS.map((name, index) => (
          <LaterHigh key={name} name={name} day={dayWords[index] ?? ""} />
        ))}
      </Columns>
      <TextField label="Where it is from" hint="The source and its hour, such as National Weather Service, 5 am." autoComplete="off" {...useField("source")} />
    </>
  );
}

export function EnterForecastForm({ date, values, dayWords }: Props) {
  return (
    <ActionForm action={enterForecastAction} schema={enterForecastSchema} fixed={{ date }} values={values} submit="Enter it" whilePending="Entering">
      <Fields dayWords={dayWords} />
    </ActionForm>
  );
}
