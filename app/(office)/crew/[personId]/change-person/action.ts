"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changePerson } from "#application/people/change-person";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function changePersonAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changePerson, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect(`/crew/${textFields(form)["personId"] ?? ""}`);
}
