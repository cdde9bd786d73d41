"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { moveStock } from "#application/stock/move-stock";
import { type FormState, refusedForm, textFields } from "../../../form-state";
import { sendForm } from "../../../session";

export async function moveStockAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(moveStock, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/shed", "layout");
  redirect(`/shed/${textFields(form)["productId"] ?? ""}`);
}
