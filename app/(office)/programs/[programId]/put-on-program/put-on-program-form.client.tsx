"use client";

import { useRef, useState, useSyncExternalStore } from "react";
import { putOnProgramSchema } from "#application/programs/put-on-program.schema";
import { Button } from "#ui/button";
import { ChoiceRow } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { FieldGroup } from "#ui/field";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { matchesFilter } from "../../../../ui/data-table-order";
import { putOnProgramAction } from "./action";

/** A property that may be put on. */
export interface PropertyToPut {
  readonly propertyId: string;
  readonly words: string;
  readonly hint: string;
}

interface Props {
  readonly programId: string;
  readonly properties: readonly PropertyToPut[];
  /** What the address asks to find: that is how the list is narrowed without scripts. */
  readonly find: string;
}

const never = () => () => undefined;

function PropertyRow({ property, isShown }: { readonly property: PropertyToPut; readonly isShown: boolean }) {
  const { error: _error, defaultValue, name, ...registered } = useField(`properties.${property.propertyId}`);
  return (
    <div hidden={!isShown}>
      <ChoiceRow {...registered} type="checkbox" id={name} name={name} value="yes" hint={property.hint} defaultChecked={defaultValue === "yes"}>
        {property.words}
      </ChoiceRow>
    </div>
  );
}

function PropertyRows({ properties, find }: Pick<Props, "properties" | "find">) {
  const { error } = useField("properties");
  const rows = useRef<HTMLDivElement>(null);
  const hasScripts = useSyncExternalStore(never, () => true, () => false);
  const shown = new Set(properties.filter(({ words, hint }) => matchesFilter(`${words} ${hint}`, find)).map(({ propertyId }) => propertyId));
  const tickShown = () => {
    for (const box of rows.current?.querySelectorAll<HTMLInputElement>("div:not([hidden]) > label > input:not(:checked)") ?? []) box.click();
  };
  return (
    <FieldGroup id="properties" label="Properties" hint={`${String(shown.size)} of ${String(properties.length)} shown. A ticked one goes on even while it is not shown.`} error={error}>
      <Stack gap={3}>
        {hasScripts && shown.size > 0 && (
          <div>
            <Button onClick={tickShown}>Tick all that are shown</Button>
          </div>
        )}
        <div ref={rows}>
          <Columns>
            {properties.map((property) => (
              <PropertyRow key={property.propertyId} property={property} isShown={shown.has(property.propertyId)} />
            ))}
          </Columns>
        </div>
      </Stack>
    </FieldGroup>
  );
}

/** Finds properties and puts the ticked ones on the program. Without scripts the list is narrowed by the address. */
export function PutOnProgramForm({ programId, properties, find }: Props) {
  const [wanted, setWanted] = useState(find);
  return (
    <Stack gap={5}>
      <form method="get" role="search">
        <Row align="baseline">
          <TextField
            label="Find by street, town or customer"
            name="find"
            autoComplete="off"
            width="medium"
            value={wanted}
            onChange={(event) => {
              setWanted(event.target.value);
            }}
          />
          <noscript>
            <Button type="submit">Find</Button>
          </noscript>
        </Row>
      </form>
      <ActionForm action={putOnProgramAction} schema={putOnProgramSchema} fixed={{ programId }} submit="Put them on" whilePending="Putting them on">
        <PropertyRows properties={properties} find={wanted} />
      </ActionForm>
    </Stack>
  );
}
