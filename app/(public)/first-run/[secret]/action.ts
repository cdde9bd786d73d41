"use server";

import { redirect } from "next/navigation";
import { createCompanyByLink } from "#application/companies/create-company";
import { house } from "#application/house";
import { type FormState, readForm, refusedForm, textFields } from "../../../form-state";

export async function createCompanyAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await createCompanyByLink(house(), textFields(form)["secret"], readForm(form));
  if (!answer.ok) return refusedForm(previous, form, answer.refusal, ["password"]);
  redirect("/sign-in");
}
