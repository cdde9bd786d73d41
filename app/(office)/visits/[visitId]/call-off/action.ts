"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { callOffVisit } from "#application/visits/call-off-visit";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function callOffAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(callOffVisit, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const path = `/visits/${textFields(form)["visitId"] ?? ""}`;
  revalidatePath("/today");
  revalidatePath(path);
  redirect(path);
}
