"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addStation } from "#application/properties/add-station";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addStationAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addStation, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}#ground`);
}
