"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { type FormState, refusedForm, textFields } from "../../../form-state";
import { sendForm } from "../../../session";

export async function receiveDeliveryAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(receiveDelivery, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/shed", "layout");
  redirect(`/shed/${textFields(form)["productId"] ?? ""}`);
}
