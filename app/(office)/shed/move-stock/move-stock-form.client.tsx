"use client";

import { moveStockSchema } from "#application/stock/move-stock.schema";
import { type Choice, SelectField } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../action-form.client";
import { moveStockAction } from "./action";

interface Choices {
  readonly products: readonly Choice[];
  readonly places: readonly Choice[];
  readonly lots: readonly Choice[];
}

function Fields({ products, places, lots }: Choices) {
  return (
    <>
      <SelectField label="Product" chooseWords="Choose a product" choices={products} {...useField("productId")} />
      <TextField label="How much" hint="With its unit: 100 lb, or 2.5 gal." autoComplete="off" width="medium" {...useField("amount")} />
      <SelectField label="From" choices={places} width="medium" {...useField("from")} />
      <SelectField label="To" chooseWords="Choose a location" choices={places} width="medium" {...useField("to")} />
      <SelectField label="Lot" optional chooseWords="the first to expire" choices={lots} {...useField("lotId")} />
      <TextField label="Note" optional autoComplete="off" {...useField("note")} />
    </>
  );
}

interface Props extends Choices {
  readonly requestId: string;
  readonly values: Readonly<Record<string, string>>;
}

export function MoveStockForm({ requestId, values, products, places, lots }: Props) {
  return (
    <ActionForm action={moveStockAction} schema={moveStockSchema} fixed={{ requestId }} values={values} submit="Move it" whilePending="Moving">
      <Fields products={products} places={places} lots={lots} />
    </ActionForm>
  );
}
