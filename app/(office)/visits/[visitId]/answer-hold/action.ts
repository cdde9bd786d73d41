"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { answerHold } from "#application/visits/answer-hold";
import { type FormState, refusedForm, textFields } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function answerHoldAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(answerHold, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const path = `/visits/${textFields(form)["visitId"] ?? ""}`;
  revalidatePath(path);
  redirect(`${path}#findings`);
}
