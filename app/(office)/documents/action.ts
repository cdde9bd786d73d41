"use server";

import { redirect } from "next/navigation";
import { printApplicationRecord } from "#application/documents/print-application-record";
import { printCustomerNotice } from "#application/documents/print-customer-notice";
import { printLoadingList } from "#application/documents/print-loading-list";
import { printMixTicket } from "#application/documents/print-mix-ticket";
import { printPacket } from "#application/documents/print-packet";
import { printPostingSign } from "#application/documents/print-posting-sign";
import { printRouteSheet } from "#application/documents/print-route-sheet";
import { type UseCase } from "#application/use-case";
import { type FormState, refusedForm } from "../../form-state";
import { sendForm } from "../../session";

/** Issues a paper and goes to it: the press writes, the address only reads. */
async function issue(useCase: UseCase<never, { readonly issuedPaperId: string }>, previous: FormState, form: FormData, extent = ""): Promise<FormState> {
  const answer = await sendForm(useCase, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/documents/papers/${answer.value.issuedPaperId}${extent}`);
}

export async function printMixTicketAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printMixTicket, previous, form);
}

export async function printCustomerNoticeAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printCustomerNotice, previous, form);
}

export async function printPostingSignAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printPostingSign, previous, form);
}

export async function printApplicationRecordAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printApplicationRecord, previous, form);
}

export async function printRouteSheetAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printRouteSheet, previous, form);
}

export async function printLoadingListAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printLoadingList, previous, form);
}

export async function printPacketAction(previous: FormState, form: FormData): Promise<FormState> {
  return issue(printPacket, previous, form, "?extent=packet");
}
