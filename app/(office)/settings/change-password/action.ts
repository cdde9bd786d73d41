"use server";

import { redirect } from "next/navigation";
import { changePassword } from "#application/accounts/change-password";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function changePasswordAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changePassword, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal, ["present", "next"]);
  redirect("/sign-in");
}
