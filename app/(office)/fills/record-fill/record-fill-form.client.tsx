"use client";

import { recordFillSchema } from "#application/fills/record-fill.schema";
import { Columns } from "#ui/columns";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { recordFillAction } from "./action";

/** A product that may have gone in, and how much of it was planned. */
export interface ProductAsked {
  readonly productId: string;
  readonly name: string;
  readonly hint: string;
}

interface Choices {
  readonly tanks: readonly Choice[];
  readonly places: readonly Choice[];
  readonly products: readonly ProductAsked[];
  readonly beforeHint: string;
  readonly afterHint: string;
}

function Product({ productId, name, hint }: ProductAsked) {
  return <TextField label={name} hint={hint} autoComplete="off" width="medium" {...useField(`products.${productId}`)} />;
}

function Tank({ tanks }: { readonly tanks: readonly Choice[] }) {
  return <SelectField label="Tank" chooseWords="Choose a tank" choices={tanks} {...useField("equipmentId")} />;
}

function Gauge({ beforeHint, afterHint }: Pick<Choices, "beforeHint" | "afterHint">) {
  return (
    <>
      <TextField label="Gauge before filling" hint={beforeHint} autoComplete="off" width="short" {...useField("gaugeBefore")} />
      <TextField label="Gauge after filling" hint={afterHint} autoComplete="off" width="short" {...useField("gaugeAfter")} />
    </>
  );
}

function Fields({ tanks, places, products, beforeHint, afterHint }: Choices) {
  return (
    <>
      {tanks.length > 1 && <Tank tanks={tanks} />}
      <Columns split="two">
        <DateField label="Day" {...useField("filledOn")} />
        <TextField label="Filled at" type="time" width="short" {...useField("filledAt")} />
      </Columns>
      <Gauge beforeHint={beforeHint} afterHint={afterHint} />
      <Stack gap={4}>
        {products.map((product) => (
          <Product key={product.productId} {...product} />
        ))}
      </Stack>
      <SelectField label="Products came from" choices={places} width="medium" {...useField("from")} />
      <TextField label="Where it was mixed" hint="Such as: wash pad at the shop." autoComplete="off" {...useField("mixingPlace")} />
    </>
  );
}

interface Props extends Choices {
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
}

/**
 * What really went into a tank: read back beside the books and the plan first, then written. Only what the books have in the
 * tank is filled in beforehand: planned is not measured.
 */
export function RecordFillForm({ fixed, values, ...choices }: Props) {
  return (
    <ActionForm
      action={recordFillAction}
      schema={recordFillSchema}
      fixed={fixed}
      values={values}
      submit="Read it back"
      whilePending="Reading it back"
      write={{ submit: "Record the fill", whilePending: "Recording" }}
    >
      <Fields {...choices} />
    </ActionForm>
  );
}
