"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { may } from "#application/permission";
import { completeVisit } from "#application/register/complete-visit";
import { previewRecord } from "#application/register/preview-record";
import { changedForm, type FormState, readBackForm, refusedForm, textFields } from "../../../../form-state";
import { memberOfPage, sendForm } from "../../../../session";
import { recordSentence } from "../../../register/record-sentence";
import { careOfForm } from "../../visit-finding";

/** The first press reads the record back, the second one writes it; a third press of the same form writes nothing. */
export async function completeVisitAction(previous: FormState, form: FormData): Promise<FormState> {
  const { press, visitId = "" } = textFields(form);
  if (press === "change") return changedForm(previous, form);
  if (press !== "write") {
    const preview = await sendForm(previewRecord, form);
    if (!preview.ok) return refusedForm(previous, form, preview.refusal);
    const { content } = preview.value;
    const cares = content.findings.filter(({ level }) => level !== "note").map(careOfForm);
    return readBackForm(previous, form, recordSentence(content), cares);
  }
  const answer = await sendForm(completeVisit, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  const { member } = await memberOfPage();
  redirect(may(member.role, "register/read-record") ? `/register/${answer.value.registerEntryId}` : `/visits/${visitId}#record`);
}
