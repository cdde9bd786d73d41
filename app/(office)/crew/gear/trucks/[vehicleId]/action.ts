"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeVehicle } from "#application/equipment/change-vehicle";
import { type FormState, refusedForm } from "../../../../../form-state";
import { sendForm } from "../../../../../session";

export async function changeVehicleAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeVehicle, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect("/crew/gear");
}
