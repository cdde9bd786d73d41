"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { putOnProgram } from "#application/programs/put-on-program";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function putOnProgramAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(putOnProgram, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/programs", "layout");
  redirect(`/programs/${answer.value.programId}`);
}
