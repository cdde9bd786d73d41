"use server";

import { redirect } from "next/navigation";
import { addPerson } from "#application/people/add-person";
import { type FormState, readForm, refusedForm } from "../../../form-state";
import { asMember } from "../../../session";

export async function addPersonAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await asMember(addPerson, readForm(form));
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/crew/${answer.value.personId}`);
}
