"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { type FormState, refusedForm } from "../../../../form-state";
import { sendForm } from "../../../../session";

export async function addMeasuringToolAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(addMeasuringTool, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/crew", "layout");
  redirect("/crew/gear#tools");
}
