"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addZone } from "#application/properties/add-zone";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function measureLawnAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addZone, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}?lawn=${answer.value.zoneId}#ground`);
}
