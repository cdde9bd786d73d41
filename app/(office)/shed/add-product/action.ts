"use server";

import { redirect } from "next/navigation";
import { addProduct } from "#application/products/add-product";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function addProductAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addProduct, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/shed/${answer.value.productId}/enter-label`);
}
