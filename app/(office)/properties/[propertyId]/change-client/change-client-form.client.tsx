"use client";

import { changeClientSchema } from "#application/properties/change-client.schema";
import { CLIENT_STANDING_SENTENCES, CLIENT_STANDING_WORDS, CLIENT_STANDINGS } from "#domain/properties/client-standing";
import { RadioRows } from "#ui/choice-rows";
import { ActionForm, useChoice } from "../../../../action-form.client";
import { ClientFields } from "../../address-fields.client";
import { changeClientAction } from "./action";

function Standing() {
  return (
    <RadioRows
      label="Standing"
      {...useChoice("standing")}
      choices={CLIENT_STANDINGS.map((standing) => ({ value: standing, word: CLIENT_STANDING_WORDS[standing], hint: CLIENT_STANDING_SENTENCES[standing] }))}
    />
  );
}

interface Props {
  /** Where the form leads back to. */
  readonly propertyId: string;
  readonly clientId: string;
  readonly version: string;
  readonly values: Readonly<Record<string, string>>;
}

export function ChangeClientForm({ propertyId, clientId, version, values }: Props) {
  return (
    <ActionForm
      action={changeClientAction}
      schema={changeClientSchema}
      fixed={{ propertyId, clientId, version }}
      values={values}
      submit="Save"
      whilePending="Saving"
    >
      <ClientFields />
      <Standing />
    </ActionForm>
  );
}
