"use client";

import { calibrateSpreaderSchema } from "#application/equipment/calibrate-spreader.schema";
import { type Choice, SelectField } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../../action-form.client";
import { calibrateSpreaderAction } from "./action";
import { MeasureLine, MeasureLines, WhoAndWhen } from "./calibration-fields.client";

interface Props {
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
  readonly operators: readonly Choice[] | undefined;
  readonly products: readonly Choice[];
}

export function CalibrateSpreaderForm({ fixed, values, operators, products }: Props) {
  return (
    <ActionForm
      action={calibrateSpreaderAction}
      schema={calibrateSpreaderSchema}
      fixed={fixed}
      values={values}
      submit="Write the calibration"
      whilePending="Writing"
    >
      <WhoAndWhen operators={operators} />
      <ProductAndSetting products={products} />
      <MeasureLine name="area" label="Test area" hint="The swath times the length of the course, with its unit: 1,000 sq ft." />
      <MeasureLines name="collected" label="Collected" hint="Caught, or weighed before and after. Each run on its line, with the unit: 3.1 lb." />
      <MeasureLine name="swath" label="Swath" optional hint="The width that one pass covers: 10 ft." />
      <MeasureLine name="speedMph" label="Speed" optional hint="Your usual pace in mph. It tells how long a lawn takes." />
      <MeasureLine name="minutesPerThousand" label="Or minutes for 1,000 sq ft" optional hint="With all turns, by the watch." />
    </ActionForm>
  );
}

function ProductAndSetting({ products }: { readonly products: readonly Choice[] }) {
  return (
    <>
      <SelectField label="Product" hint="Another product flows differently and has a calibration of its own." chooseWords="Choose a product" choices={products} {...useField("productId")} />
      <TextField label="Setting" hint="As it is written on the spreader." autoComplete="off" width="short" {...useField("setting")} />
    </>
  );
}
