"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function changeHouseSettingsAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeHouseSettings, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect("/settings#ways");
}
