"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { stateDeliveryPrice } from "#application/stock/state-delivery-price";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function stateDeliveryPriceAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(stateDeliveryPrice, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(`/shed/${textFields(form)["productId"] ?? ""}#prices`);
}
