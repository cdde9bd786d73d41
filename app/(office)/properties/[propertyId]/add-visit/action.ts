"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { planVisit } from "#application/visits/plan-visit";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addVisitAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(planVisit, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}`);
}
