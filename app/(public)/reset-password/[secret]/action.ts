"use server";

import { redirect } from "next/navigation";
import { resetPassword } from "#application/accounts/reset-password";
import { house } from "#application/house";
import { type FormState, readForm, refusedForm } from "../../../form-state";

export async function resetPasswordAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await resetPassword(house(), readForm(form));
  if (!answer.ok) return refusedForm(previous, form, answer.refusal, ["password"]);
  redirect("/sign-in");
}
