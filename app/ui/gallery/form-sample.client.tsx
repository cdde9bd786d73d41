"use client";

import { useForm } from "react-hook-form";
import { AmountField } from "#ui/amount-field";
import { Button } from "#ui/button";
import { RadioRows } from "#ui/choice-rows";
import { ErrorSummary } from "#ui/error-summary.client";
import { NumberStepper } from "#ui/number-stepper.client";
import { SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";

interface SampleForm {
  readonly lot: string;
  readonly used: string;
  readonly usedUnit: string;
  readonly truck: string;
  readonly done: string;
  readonly wind: string;
}

const order = ["lot", "used", "usedUnit", "truck", "done"] as const;

/** A form by react-hook-form: every field registered, errors in the summary and at their fields. */
export function FormSample() {
  const { register, handleSubmit, formState, watch } = useForm<SampleForm>({ shouldFocusError: false });
  const { errors, isSubmitSuccessful, submitCount } = formState;
  const listed = order.flatMap((name) => {
    const sentence = errors[name]?.message;
    return sentence === undefined ? [] : [{ fieldId: `rhf-${name}`, sentence }];
  });
  const { name: doneName, ...done } = register("done", { required: "Say whether the front lawn is done" });
  return (
    <form noValidate onSubmit={(event) => void handleSubmit(() => undefined)(event)}>
      <Stack gap={5}>
        <ErrorSummary errors={listed} attempt={submitCount} />
        <TextField
          {...register("lot", { required: "Type the lot" })}
          id="rhf-lot"
          label="Lot"
          hint="On the bag's bottom seam"
          width="medium"
          error={errors.lot?.message}
        />
        <AmountField
          id="rhf-used"
          label="Used"
          number={register("used", { required: "Type how much was used" })}
          unit={{ ...register("usedUnit", { required: "Choose the unit" }), id: "rhf-usedUnit" }}
          units={[
            { value: "fl-oz", word: "fl oz", explained: "by volume" },
            { value: "oz-wt", word: "oz wt", explained: "by weight" },
            { value: "lb", word: "lb" },
          ]}
          error={errors.used?.message ?? errors.usedUnit?.message}
        />
        <SelectField
          {...register("truck", { required: "Choose the truck" })}
          id="rhf-truck"
          label="Truck"
          width="medium"
          chooseWords="Choose a truck"
          choices={[
            { value: "1", word: "Truck 1" },
            { value: "2", word: "Truck 2" },
          ]}
          error={errors.truck?.message}
        />
        <RadioRows
          id="rhf-done"
          name={doneName}
          registered={done}
          label="A Front, 2,180 sq ft"
          layout="keys"
          choices={[
            { value: "done", word: "Done" },
            { value: "part", word: "Part" },
            { value: "not", word: "Not" },
          ]}
          error={errors.done?.message}
        />
        <NumberStepper {...register("wind")} id="rhf-wind" label="Wind" unit="mph" min={0} max={40} defaultValue={5} />
        <div>
          <Button type="submit" kind="act">
            Check the form
          </Button>
        </div>
        {isSubmitSuccessful && (
          <p role="status">{`All answered: lot ${watch("lot")}, ${watch("used")} ${watch("usedUnit")}.`}</p>
        )}
      </Stack>
    </form>
  );
}
