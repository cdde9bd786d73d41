"use client";

import { changeRoleSchema } from "#application/people/change-role.schema";
import { type Role, ROLE_SENTENCES, ROLE_WORDS, ROLES } from "#domain/crew/role";
import { Disclosure } from "#ui/disclosure";
import { RoleRows } from "../role-rows.client";
import { ActionForm } from "../../../action-form.client";
import { changeRoleAction } from "./action";

export function ChangeRoleForm({ personId, role }: { readonly personId: string; readonly role: Role }) {
  return (
    <Disclosure name="Change what they may do">
      <ActionForm action={changeRoleAction} schema={changeRoleSchema} fixed={{ personId }} values={{ role }} submit="Change" whilePending="Changing">
        <RoleRows choices={ROLES.map((value) => ({ value, word: ROLE_WORDS[value], hint: ROLE_SENTENCES[value] }))} />
      </ActionForm>
    </Disclosure>
  );
}
