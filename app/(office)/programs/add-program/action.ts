"use server";

import { redirect } from "next/navigation";
import { addProgram } from "#application/programs/add-program";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function addProgramAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addProgram, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/programs/${answer.value.programId}`);
}
