"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeVisitTask } from "#application/visits/change-visit-task";
import { type FormState, refusedForm, textFields } from "../../../../../form-state";
import { sendForm } from "../../../../../session";

export async function changeTaskAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeVisitTask, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const path = `/visits/${textFields(form)["visitId"] ?? ""}`;
  revalidatePath(path);
  redirect(`${path}#put-down`);
}
