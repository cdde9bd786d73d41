"use client";

import { FieldGroup } from "#ui/field";
import { Stack } from "#ui/stack";
import { DateField, TextField } from "#ui/text-field";
import { useField } from "../../../action-form.client";
import { TickRow } from "./tick-row.client";

/** A lawn that a station may water. */
export interface LawnToWater {
  readonly zoneId: string;
  readonly words: string;
}

interface Props {
  readonly lawns: readonly LawnToWater[];
  /** What is said of the test that is on file, if one is. */
  readonly testOnFile?: string | undefined;
}

/** What a station is asked for: its number, its lawns, and its catch-can test. */
export function StationFields({ lawns, testOnFile }: Props) {
  const { error } = useField("waters");
  return (
    <>
      <TextField label="Number on the controller" inputMode="numeric" autoComplete="off" width="short" {...useField("number")} />
      <TextField label="Name" hint="Such as Front spray heads." autoComplete="off" width="medium" {...useField("name")} />
      {lawns.length > 0 && (
        <FieldGroup id="waters" label="Waters" error={error} optional>
          <Stack gap={2}>
            {lawns.map(({ zoneId, words }) => (
              <TickRow key={zoneId} name={`waters.${zoneId}`}>
                {words}
              </TickRow>
            ))}
          </Stack>
        </FieldGroup>
      )}
      <TextField
        label="Depth in each can"
        optional
        hint={testOnFile ?? "Set out four straight-sided cans or more, run the station, measure the water in each. With commas between; without a unit they are inches, one after the last is that of all, an empty can is 0. Without a test there is no rate."}
        autoComplete="off"
        {...useField("depths")}
      />
      <TextField label="Minutes it ran" optional hint="Up to 240." inputMode="numeric" autoComplete="off" width="short" {...useField("minutes")} />
      <TextField label="Wind during the test" optional hint="In mph. Above 5 mph a test says little." inputMode="numeric" autoComplete="off" width="short" {...useField("wind")} />
      <DateField label="Tested on" optional {...useField("testedOn")} />
      <TextField
        label="Longest run at once"
        optional
        hint="In minutes, where the soil can't take more before it runs off."
        inputMode="numeric"
        autoComplete="off"
        width="short"
        {...useField("longestRun")}
      />
    </>
  );
}
