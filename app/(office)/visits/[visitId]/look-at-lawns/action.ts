"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function lookAtLawnsAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(lookAtLawns, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(`/visits/${textFields(form)["visitId"] ?? ""}#seen`);
}
