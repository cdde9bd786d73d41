"use client";

import { acceptInvitationSchema } from "#application/people/accept-invitation.schema";
import { PasswordField } from "#ui/password-field.client";
import { ActionForm, useField } from "../../../action-form.client";
import { acceptInvitationAction } from "./action";

function PasswordOf({ email, hasAccount }: { readonly email: string; readonly hasAccount: boolean }) {
  const field = useField("password");
  return hasAccount ? (
    <PasswordField label="Your password" hint={`${email} has an account already: give its password.`} autoComplete="current-password" {...field} />
  ) : (
    <PasswordField
      label="Choose a password"
      hint={`For ${email}. At least 15 characters; several words in a row are good.`}
      autoComplete="new-password"
      {...field}
    />
  );
}

interface Props {
  readonly link: string;
  readonly email: string;
  readonly hasAccount: boolean;
}

export function AcceptInvitationForm({ link, email, hasAccount }: Props) {
  return (
    <ActionForm action={acceptInvitationAction} schema={acceptInvitationSchema} fixed={{ link }} submit="Accept" whilePending="Accepting">
      <input type="hidden" autoComplete="username" value={email} readOnly />
      <PasswordOf email={email} hasAccount={hasAccount} />
    </ActionForm>
  );
}
