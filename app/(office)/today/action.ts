"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { moveVisit } from "#application/days/move-visit";
import { orderDay } from "#application/days/order-day";
import { pinVisit } from "#application/days/pin-visit";
import { placeVisit } from "#application/days/place-visit";
import { restoreOrder } from "#application/days/restore-order";
import { takeOffDay } from "#application/days/take-off-day";
import { doneForm, type FormState, refusedForm } from "../../form-state";
import { asMember, sendForm } from "../../session";

const TODAY = "/today";

/** The day's address with what was just done, so that it can be told and taken back without anything kept. */
function after(date: string, done: Readonly<Record<string, string | number>>): string {
  const query = new URLSearchParams({ date, ...Object.fromEntries(Object.entries(done).map(([name, value]) => [name, String(value)])) });
  return `${TODAY}?${query.toString()}`;
}

function adds(minutes: number | null): Readonly<Record<string, number>> {
  return minutes === null ? {} : { adds: minutes };
}

function idIn(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
}

export async function placeVisitAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(placeVisit, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const { date, addsMinutes } = answer.value;
  redirect(after(date, { after: "placed", visit: idIn(form, "visitId"), ...adds(addsMinutes) }));
}

export async function moveVisitAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(moveVisit, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const { from, addsMinutes } = answer.value;
  redirect(after(from.date, { after: "moved", visit: idIn(form, "visitId"), day: from.routeDayId, position: from.position, ...adds(addsMinutes) }));
}

export async function takeOffDayAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(takeOffDay, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  const { date, routeDayId, version, orderBefore } = answer.value;
  redirect(after(date, { after: "taken-off", visit: idIn(form, "visitId"), day: routeDayId, version, order: orderBefore.join(" ") }));
}

export async function pinVisitAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(pinVisit, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath(TODAY);
  return doneForm(previous, answer.value.isPinned ? "Pinned to its place." : "Not pinned any more.");
}

export async function orderDayAction(previous: FormState, form: FormData): Promise<FormState> {
  const answer = await sendForm(orderDay, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  if (answer.value.kind === "does-not-fit") {
    const why = answer.value.leftOut.map(({ street, sentence }) => `${street}: ${sentence}`).join("\n");
    return { ...doneForm(previous, "The day was left as it is: not everything fits."), values: { why } };
  }
  const { date, version, orderBefore } = answer.value;
  redirect(after(date, { after: "ordered", day: idIn(form, "routeDayId"), version, order: orderBefore.join(" ") }));
}

/** What an Undo needs: the way back of one plan. */
export type WayBack =
  | { readonly kind: "take-off"; readonly date: string; readonly visitId: string }
  | { readonly kind: "move"; readonly date: string; readonly visitId: string; readonly routeDayId: string; readonly position: string }
  | { readonly kind: "restore"; readonly date: string; readonly routeDayId: string; readonly version: string; readonly order: string };

export async function undoAction(way: WayBack): Promise<void> {
  const answer = await takeBack(way);
  redirect(after(way.date, { after: answer.ok ? "undone" : "not-undone" }));
}

function takeBack(way: WayBack) {
  switch (way.kind) {
    case "take-off":
      return asMember(takeOffDay, { visitId: way.visitId });
    case "move":
      return asMember(moveVisit, { visitId: way.visitId, routeDayId: way.routeDayId, position: way.position });
    case "restore":
      return asMember(restoreOrder, { routeDayId: way.routeDayId, version: way.version, order: way.order });
  }
}

// A form calls it, and what a form calls is asynchronous.
export async function closeAction(date: string): Promise<void> {
  await Promise.resolve();
  redirect(`${TODAY}?date=${date}`);
}
