"use server";

import { redirect } from "next/navigation";
import { changePassword } from "#application/accounts/change-password";
import { type FormState, readForm, refusedForm } from "../../../form-state";
import { asMember } from "../../../session";

export async function changePasswordAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await asMember(changePassword, readForm(form));
  if (!answer.ok) return refusedForm(previous, form, answer.refusal, ["present", "next"]);
  redirect("/sign-in");
}
