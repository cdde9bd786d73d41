"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { confirmLabel } from "#application/products/confirm-label";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function confirmLabelAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(confirmLabel, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/shed", "layout");
  redirect(`/shed/${answer.value.productId}`);
}
