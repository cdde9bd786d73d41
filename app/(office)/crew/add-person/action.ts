"use server";

import { redirect } from "next/navigation";
import { addPerson } from "#application/people/add-person";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function addPersonAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addPerson, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/crew/${answer.value.personId}`);
}
