"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addLicense } from "#application/people/add-license";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addLicenseAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addLicense, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect(`/crew/${textFields(form)["personId"] ?? ""}`);
}
