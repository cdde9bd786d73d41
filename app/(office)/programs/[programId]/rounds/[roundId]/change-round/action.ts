"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeRound } from "#application/programs/change-round";
import { type FormState, refusedForm } from "../../../../../../form-state";
import { sendForm } from "../../../../../../session";

export async function changeRoundAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeRound, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/programs", "layout");
  redirect(`/programs/${answer.value.programId}`);
}
