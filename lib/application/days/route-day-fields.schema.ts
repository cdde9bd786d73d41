import { requiredClockTime } from "#application/clock-time.schema";
import { idField } from "#application/field.schema";

const NO_TIME = "Give the time as hours and minutes, for example 07:30.";

/** What a truck's day is asked for, whether new or changed. */
export const routeDayFields = {
  operatorId: idField,
  startsAt: requiredClockTime("when the truck leaves", NO_TIME),
  endsAt: requiredClockTime("when it should be back", NO_TIME),
};

/** A day has to end after it begins. */
export function endsAfterItBegins({ startsAt, endsAt }: { readonly startsAt: number; readonly endsAt: number }): boolean {
  return startsAt < endsAt;
}

export const ENDS_TOO_EARLY = { path: ["endsAt"], message: "The day has to end after it begins." };
