"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { changeCompany } from "#application/companies/change-company";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function changeCompanyAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(changeCompany, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect("/settings");
}
