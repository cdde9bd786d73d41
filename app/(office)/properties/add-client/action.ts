"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addClient } from "#application/properties/add-client";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function addClientAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addClient, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}`);
}
