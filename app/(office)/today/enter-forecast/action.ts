"use server";

import { redirect } from "next/navigation";
import { enterForecast } from "#application/days/enter-forecast";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function enterForecastAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(enterForecast, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect(`/today?date=${answer.value.date}`);
}
