"use server";

import { revalidatePath } from "next/cache";
import { issueResetLink, RESET_LINK_HOURS } from "#application/accounts/issue-reset-link";
import { changeRole } from "#application/people/change-role";
import { endMembership } from "#application/people/end-membership";
import { withdrawInvitation } from "#application/people/withdraw-invitation";
import { withdrawLicense } from "#application/people/withdraw-license";
import { officeLink } from "#application/office";
import { doneForm, type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

const CREW = "/crew";

export async function changeRoleAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeRole, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "The role is changed, from the next click on.");
}

export async function endMembershipAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(endMembership, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "Access has ended.");
}

export async function withdrawInvitationAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(withdrawInvitation, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "The invitation is withdrawn.");
}

export async function withdrawLicenseAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(withdrawLicense, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "The entry is taken back.");
}

export async function issueResetLinkAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(issueResetLink, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const link = officeLink(`/reset-password/${answer.value.secret}`);
  return doneForm(previous, `For ${answer.value.email}, once, within ${String(RESET_LINK_HOURS)} hours:`, link);
}
