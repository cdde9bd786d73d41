"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { enterLabel } from "#application/products/enter-label";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function enterLabelAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(enterLabel, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/shed", "layout");
  redirect(`/shed/${textFields(form)["productId"] ?? ""}/confirm-label`);
}
