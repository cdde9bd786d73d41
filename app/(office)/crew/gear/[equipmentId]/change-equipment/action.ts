"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeEquipment } from "#application/equipment/change-equipment";
import { type FormState, refusedForm, textFields } from "../../../../../form-state";
import { sendForm } from "../../../../../session";

export async function changeEquipmentAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeEquipment, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect(`/crew/gear/${textFields(form)["equipmentId"] ?? ""}`);
}
