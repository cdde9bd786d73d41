"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { type FormState, refusedForm, textFields } from "../../../form-state";
import { sendForm } from "../../../session";

export async function issueMixTicketAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(issueMixTicket, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const path = `/visits/${textFields(form)["visitId"] ?? ""}`;
  revalidatePath(path);
  redirect(`${path}#mix-ticket`);
}
