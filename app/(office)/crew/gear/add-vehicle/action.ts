"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addVehicle } from "#application/equipment/add-vehicle";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addVehicleAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addVehicle, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect("/crew/gear");
}
