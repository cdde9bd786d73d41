"use server";

import { redirect } from "next/navigation";
import { addRouteDay } from "#application/days/add-route-day";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function addRouteDayAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addRouteDay, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/today?date=${answer.value.date}`);
}
