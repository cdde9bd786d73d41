"use client";

import { resetPasswordSchema } from "#application/accounts/reset-password.schema";
import { PasswordField } from "#ui/password-field.client";
import { ActionForm, useField } from "../../../action-form.client";
import { resetPasswordAction } from "./action";

function NewPassword() {
  return (
    <PasswordField
      label="New password"
      hint="At least 15 characters. Several words in a row are good."
      autoComplete="new-password"
      {...useField("password")}
    />
  );
}

export function ResetPasswordForm({ secret }: { readonly secret: string }) {
  return (
    <ActionForm action={resetPasswordAction} schema={resetPasswordSchema} fixed={{ secret }} submit="Set the password" whilePending="Setting">
      <NewPassword />
    </ActionForm>
  );
}
