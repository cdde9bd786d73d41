"use client";

import { Disclosure } from "#ui/disclosure";
import { FieldGroup } from "#ui/field";
import { Row } from "#ui/row";
import { DateField, TextField } from "#ui/text-field";
import { useField } from "../../action-form.client";
import { type ProductChoice, TreatmentRow } from "./treatment-row.client";

/** A name, such as the example, and the window in which it may be done. */
export function RoundWindowFields({ example = "Such as Spring feed." }: { readonly example?: string }) {
  return (
    <>
      <TextField label="Name" hint={example} autoComplete="off" width="medium" {...useField("name")} />
      <Row align="top" gap="wide">
        <DateField label="Opens on" {...useField("opensOn")} />
        <DateField label="Closes on" {...useField("closesOn")} />
      </Row>
    </>
  );
}

/** Whether somebody looks again. */
export function SecondLookField() {
  return <TextField label="Second look after" optional hint="In days. Empty: nobody looks again." inputMode="numeric" autoComplete="off" width="short" {...useField("secondLook")} />;
}

/** What the list of products holds. */
export const TREATMENT_HINT = "Products whose label is confirmed, each use with the label's range of rates.";

const ORDINALS = ["First product", "Second product", "Third product", "Fourth product", "Fifth product", "Sixth product"];

/** What goes down: as many products as are on file, and room for one or two more. */
export function TreatmentFields({ products, onFile = 0 }: { readonly products: readonly ProductChoice[]; readonly onFile?: number }) {
  const { error } = useField("treatments");
  const open = Math.max(1, onFile);
  const rows = Math.min(ORDINALS.length, Math.max(3, onFile + 1));
  return Array.from({ length: rows }, (_, row) => {
    const words = ORDINALS[row] ?? "";
    const fields = <TreatmentRow name={`treatments.${String(row)}`} products={products} />;
    return row < open ? (
      <FieldGroup key={row} id={`treatments-${String(row)}`} label={words} hint={row === 0 ? TREATMENT_HINT : undefined} error={row === 0 ? error : undefined}>
        {fields}
      </FieldGroup>
    ) : (
      <Disclosure key={row} name={`${words}, if there is one`}>
        {fields}
      </Disclosure>
    );
  });
}
