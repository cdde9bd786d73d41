"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { previewCleanOut } from "#application/fills/preview-clean-out";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { changedForm, type FormState, readBackForm, refusedForm, textFields } from "../../../form-state";
import { memberOfPage, sendForm } from "../../../session";
import { careOfForm } from "../../visits/visit-finding";
import { cleanOutSentence } from "./clean-out-sentence";

/** The first press reads the clean-out back, the second one writes it; a third press of the same form writes nothing. */
export async function recordCleanOutAction(previous: FormState, form: FormData): Promise<FormState> {
  const { press, equipmentId = "" } = textFields(form);
  if (press === "change") return changedForm(previous, form);
  if (press !== "write") {
    const preview = await sendForm(previewCleanOut, form);
    if (!preview.ok) return refusedForm(previous, form, preview.refusal);
    const { company } = await memberOfPage();
    return readBackForm(previous, form, cleanOutSentence(preview.value, company.timeZone), preview.value.findings.map(careOfForm));
  }
  const answer = await sendForm(recordCleanOut, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(`/fills#tank-${equipmentId}`);
}
