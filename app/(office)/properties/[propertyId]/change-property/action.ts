"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeProperty } from "#application/properties/change-property";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function changePropertyAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeProperty, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${encodeURIComponent(textFields(form)["propertyId"] ?? "")}`);
}
