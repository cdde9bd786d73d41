"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addProperty } from "#application/properties/add-property";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addPropertyAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addProperty, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}`);
}
