"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { recordFill } from "#application/fills/record-fill";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function recordFillAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(recordFill, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(`/fills#fill-${String(answer.value.number)}`);
}
