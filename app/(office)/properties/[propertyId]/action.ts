"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { measureZone } from "#application/properties/measure-zone";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { removeZone } from "#application/properties/remove-zone";
import { sayNoWater } from "#application/properties/say-no-water";
import { doneForm, type FormState, refusedForm } from "../../../form-state";
import { sendForm } from "../../../session";

export async function removePieceAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(measureZone, form);
  if (!answer.ok) {
    const said = answer.refusal.kind === "bad-input" ? Object.values(answer.refusal.fields)[0] : undefined;
    return refusedForm(previous, form, { sentence: said ?? answer.refusal.sentence });
  }
  revalidatePath("/properties", "layout");
  return doneForm(previous, "The piece is taken out.");
}

export async function removeWaterEdgeAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(removeWaterEdge, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  return doneForm(previous, "The water is taken off.");
}

export async function sayNoWaterAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(sayNoWater, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  return doneForm(previous, "It is on file that there is no water.");
}

export async function removeZoneAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(removeZone, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/properties", "layout");
  redirect(`/properties/${answer.value.propertyId}`);
}
