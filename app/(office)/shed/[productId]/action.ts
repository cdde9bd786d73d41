"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { retireProduct } from "#application/products/retire-product";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function retireProductAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(retireProduct, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/shed", "layout");
  redirect("/shed");
}
