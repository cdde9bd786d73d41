"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeStation } from "#application/properties/change-station";
import { type FormState, refusedForm } from "../../../../../../form-state";
import { sendForm } from "../../../../../../session";

export async function changeStationAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeStation, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}#ground`);
}
