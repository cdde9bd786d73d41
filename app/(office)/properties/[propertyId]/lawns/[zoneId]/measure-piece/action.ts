"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { measureZone } from "#application/properties/measure-zone";
import { type FormState, refusedForm, textFields } from "../../../../../../form-state";
import { sendForm } from "../../../../../../session";

export async function measurePieceAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(measureZone, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}?lawn=${textFields(form)["zoneId"] ?? ""}#ground`);
}
