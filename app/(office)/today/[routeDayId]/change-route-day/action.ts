"use server";

import { redirect } from "next/navigation";
import { changeRouteDay } from "#application/days/change-route-day";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function changeRouteDayAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeRouteDay, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/today?date=${answer.value.date}`);
}
