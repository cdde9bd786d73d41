"use client";

import { planVisitSchema } from "#application/visits/plan-visit.schema";
import { LOOK } from "#application/visits/task-fields.schema";
import { Disclosure } from "#ui/disclosure";
import { FieldGroup } from "#ui/field";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { RoundWindowFields, SecondLookField, TREATMENT_HINT } from "../../../programs/round-fields.client";
import { type ProductChoice, TreatmentRow } from "../../../programs/treatment-row.client";
import { TickRow } from "../tick-row.client";
import { addVisitAction } from "./action";

interface LawnToWork {
  readonly zoneId: string;
  readonly words: string;
}

interface Props {
  readonly requestId: string;
  readonly propertyId: string;
  readonly today: string;
  readonly lawns: readonly LawnToWork[];
  readonly products: readonly ProductChoice[];
}

const TASKS = ["First task", "Second task", "Third task"] as const;
const LOOK_CHOICE = [{ value: LOOK, word: "No product: look at the lawn" }];

function TaskFields({ row, lawns, products }: { readonly row: number } & Pick<Props, "lawns" | "products">) {
  const name = `tasks.${String(row)}`;
  const { error } = useField(`${name}.lawns`);
  return (
    <TreatmentRow name={name} products={products} otherChoices={LOOK_CHOICE}>
      <FieldGroup id={`${name}.lawns`} label="Lawns" error={error}>
        <Stack gap={2}>
          {lawns.map(({ zoneId, words }) => (
            <TickRow key={zoneId} name={`${name}.lawns.${zoneId}`}>
              {words}
            </TickRow>
          ))}
        </Stack>
      </FieldGroup>
    </TreatmentRow>
  );
}

function CustomerHours() {
  return (
    <FieldGroup id="customer-hours" label="Customer's hours" optional hint="When the crew may be on the ground, where it may not be there at any time.">
      <Row align="top" gap="wide">
        <TextField label="From" type="time" width="short" {...useField("customerFrom")} />
        <TextField label="Until" type="time" width="short" {...useField("customerUntil")} />
      </Row>
    </FieldGroup>
  );
}

/** Asks for one visit outside any program. */
export function AddVisitForm({ requestId, propertyId, today, lawns, products }: Props) {
  // A lawn is one more press to leave out than to forget: the ticks begin set, the products and rates do not.
  const ticks = Object.fromEntries(TASKS.flatMap((_, row) => lawns.map(({ zoneId }) => [`tasks.${String(row)}.lawns.${zoneId}`, "yes"] as const)));
  return (
    <ActionForm
      action={addVisitAction}
      schema={planVisitSchema}
      fixed={{ requestId, propertyId }}
      values={{ opensOn: today, customerFrom: "", customerUntil: "", secondLook: "", ...ticks }}
      submit="Plan the visit"
      whilePending="Planning"
    >
      <RoundWindowFields example="Such as Call-back." />
      {TASKS.map((words, row) =>
        row === 0 ? (
          <FieldGroup key={words} id={`tasks-${String(row)}`} label={words} hint={TREATMENT_HINT}>
            <TaskFields row={row} lawns={lawns} products={products} />
          </FieldGroup>
        ) : (
          <Disclosure key={words} name={`${words}, if there is one`}>
            <TaskFields row={row} lawns={lawns} products={products} />
          </Disclosure>
        ),
      )}
      <CustomerHours />
      <SecondLookField />
    </ActionForm>
  );
}
