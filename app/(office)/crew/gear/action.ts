"use server";

import { revalidatePath } from "next/cache";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { standDownMeasuringTool } from "#application/equipment/stand-down-measuring-tool";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { doneForm, type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

const CREW = "/crew";

export async function standDownMeasuringToolAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(standDownMeasuringTool, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "It is stood down.");
}

export async function standDownEquipmentAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(standDownEquipment, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "It is stood down.");
}

export async function standDownVehicleAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(standDownVehicle, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(CREW, "layout");
  return doneForm(previous, "The truck is stood down.");
}
