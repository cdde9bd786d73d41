"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeSeeding } from "#application/properties/change-seeding";
import { removeSeeding } from "#application/properties/remove-seeding";
import { type FormState, refusedForm, textFields } from "../../../../../../../../form-state";
import { sendForm } from "../../../../../../../../session";

export async function changeSeedingAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeSeeding, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}?lawn=${answer.value.zoneId}#seed`);
}

export async function removeSeedingAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(removeSeeding, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const { propertyId = "", zoneId = "" } = textFields(form);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${propertyId}?lawn=${zoneId}#seed`);
}
