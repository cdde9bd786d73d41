"use client";

import { changePasswordSchema } from "#application/accounts/change-password.schema";
import { PasswordField } from "#ui/password-field.client";
import { ActionForm, useField } from "../../../action-form.client";
import { changePasswordAction } from "./action";

function Fields() {
  return (
    <>
      <PasswordField label="Present password" autoComplete="current-password" {...useField("present")} />
      <PasswordField
        label="New password"
        hint="At least 15 characters. Several words in a row are good."
        autoComplete="new-password"
        {...useField("next")}
      />
    </>
  );
}

export function ChangePasswordForm() {
  return (
    <ActionForm action={changePasswordAction} schema={changePasswordSchema} submit="Change the password" whilePending="Changing">
      <Fields />
    </ActionForm>
  );
}
