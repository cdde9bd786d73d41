"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { previewTankReading } from "#application/fills/preview-tank-reading";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { changedForm, type FormState, readBackForm, refusedForm, textFields } from "../../../form-state";
import { memberOfPage, sendForm } from "../../../session";
import { careOfForm } from "../../visits/visit-finding";
import { tankReadingSentence } from "./tank-reading-sentence";

/** The first press holds the reading against the books and reads it back, the second one writes it; a third writes nothing. */
export async function recordTankReadingAction(previous: FormState, form: FormData): Promise<FormState> {
  const { press, equipmentId = "" } = textFields(form);
  if (press === "change") return changedForm(previous, form);
  if (press !== "write") {
    const preview = await sendForm(previewTankReading, form);
    if (!preview.ok) return refusedForm(previous, form, preview.refusal);
    const { company } = await memberOfPage();
    return readBackForm(previous, form, tankReadingSentence(preview.value, company.timeZone), preview.value.findings.map(careOfForm));
  }
  const answer = await sendForm(recordTankReading, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(`/fills#tank-${equipmentId}`);
}
