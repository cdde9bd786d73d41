"use client";

import { invitePersonSchema } from "#application/people/invite-person.schema";
import { ROLE_SENTENCES, ROLE_WORDS, ROLES } from "#domain/crew/role";
import { TextField } from "#ui/text-field";
import { ActionForm, useField } from "../../../../action-form.client";
import { RoleRows } from "../../role-rows.client";
import { invitePersonAction } from "./action";

function EmailField() {
  return <TextField label="Email address" type="email" autoComplete="off" {...useField("email")} />;
}

export function InvitePersonForm({ personId }: { readonly personId: string }) {
  return (
    <ActionForm action={invitePersonAction} schema={invitePersonSchema} fixed={{ personId }} submit="Make the link" whilePending="Making the link">
      <EmailField />
      <RoleRows choices={ROLES.map((value) => ({ value, word: ROLE_WORDS[value], hint: ROLE_SENTENCES[value] }))} />
    </ActionForm>
  );
}
