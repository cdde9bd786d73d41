"use server";

import { redirect } from "next/navigation";
import { setShopPosition } from "#application/days/set-shop-position";
import { type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function setShopPositionAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(setShopPosition, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  redirect("/today");
}
