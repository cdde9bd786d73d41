"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeClient } from "#application/properties/change-client";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function changeClientAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeClient, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${encodeURIComponent(textFields(form)["propertyId"] ?? "")}#people`);
}
