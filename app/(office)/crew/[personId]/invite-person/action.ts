"use server";

import { revalidatePath } from "next/cache";
import { officeLink } from "#application/office";
import { INVITATION_DAYS, invitePerson } from "#application/people/invite-person";
import { doneForm, type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function invitePersonAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(invitePerson, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  const link = officeLink(`/invitation/${answer.value.link}`);
  return doneForm(previous, `The invitation is made. Its link works once, within ${String(INVITATION_DAYS)} days.`, link);
}
