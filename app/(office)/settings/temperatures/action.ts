"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { chooseTemperatureSource } from "#application/temperatures/choose-temperature-source";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function chooseTemperatureSourceAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(chooseTemperatureSource, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect("/settings/temperatures");
}
