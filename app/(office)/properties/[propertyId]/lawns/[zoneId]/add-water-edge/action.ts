"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { type FormState, refusedForm, textFields } from "../../../../../../form-state";
import { sendForm } from "../../../../../../session";

export async function addWaterEdgeAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addWaterEdge, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}?lawn=${textFields(form)["zoneId"] ?? ""}#ground`);
}
