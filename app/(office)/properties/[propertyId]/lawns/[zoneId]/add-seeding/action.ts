"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addSeeding } from "#application/properties/add-seeding";
import { type FormState, refusedForm, textFields } from "../../../../../../form-state";
import { sendForm } from "../../../../../../session";

export async function addSeedingAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addSeeding, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}?lawn=${textFields(form)["zoneId"] ?? ""}#seed`);
}
