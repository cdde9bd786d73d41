"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { previewTemperatures } from "#application/temperatures/preview-temperatures";
import { changedForm, type FormState, readBackForm, refusedForm, textFields } from "../../../form-state";
import { sendForm } from "../../../session";
import { caresOfDays, understoodSentence } from "../temperature-words";

/** The first press reads the days back, the second one keeps them; a third press of the same form writes nothing. */
export async function keepTemperaturesAction(previous: FormState, form: FormData): Promise<FormState> {
  const { press, source = "" } = textFields(form);
  if (press === "change") return changedForm(previous, form);
  if (press !== "write") {
    const preview = await sendForm(previewTemperatures, form);
    if (!preview.ok) return refusedForm(previous, form, preview.refusal);
    return readBackForm(previous, form, understoodSentence(preview.value), caresOfDays(preview.value));
  }
  const answer = await sendForm(keepTemperatures, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(`/settings/temperatures?source=${encodeURIComponent(source.trim())}`);
}
