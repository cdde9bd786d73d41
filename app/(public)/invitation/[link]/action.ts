"use server";

import { redirect } from "next/navigation";
import { house } from "#application/house";
import { acceptInvitation } from "#application/people/accept-invitation";
import { type FormState, readForm, refusedForm } from "../../../form-state";

export async function acceptInvitationAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await acceptInvitation(house(), readForm(form));
  if (!answer.ok) return refusedForm(previous, form, answer.refusal, ["password"]);
  redirect("/sign-in");
}
