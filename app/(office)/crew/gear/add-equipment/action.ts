"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addEquipment } from "#application/equipment/add-equipment";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addEquipmentAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addEquipment, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect(`/crew/gear/${answer.value.equipmentId}`);
}
