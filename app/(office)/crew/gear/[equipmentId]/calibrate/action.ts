"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { type FormState, refusedForm, textFields } from "../../../../../form-state";
import { sendForm } from "../../../../../session";

/** The page that shows the arithmetic of what was just written. */
function addressOf(form: FormData, calibrationId: string): string {
  return `/crew/gear/${textFields(form)["equipmentId"] ?? ""}/calibrations/${calibrationId}`;
}

export async function calibrateSprayerAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(calibrateSprayer, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect(addressOf(form, answer.value.calibrationId));
}

export async function calibrateSpreaderAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(calibrateSpreader, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect(addressOf(form, answer.value.calibrationId));
}
