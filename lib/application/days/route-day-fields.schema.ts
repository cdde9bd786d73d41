import { idField } from "#application/field.schema";
import { requiredClock } from "#application/days/clock-field.schema";

/** What a truck's day is asked for, whether new or changed. */
export const routeDayFields = {
  operatorId: idField,
  startsAt: requiredClock("when the truck leaves"),
  endsAt: requiredClock("when it should be back"),
};

/** A day has to end after it begins. */
export function endsAfterItBegins({ startsAt, endsAt }: { readonly startsAt: number; readonly endsAt: number }): boolean {
  return startsAt < endsAt;
}

export const ENDS_TOO_EARLY = { path: ["endsAt"], message: "The day has to end after it begins." };
