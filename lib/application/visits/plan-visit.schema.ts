import { z } from "zod";
import { idField, requiredLine } from "#application/field.schema";
import { checkWindow, secondLookField, windowFields } from "#application/programs/round-fields.schema";
import { taskRows } from "#application/visits/task-fields.schema";

const MINUTES_AN_HOUR = 60;

/** A time of day as a time field sends it, in minutes of the local day; empty becomes null. */
const timeOfDay = z.string("Give a time, or leave it empty.").transform((text, context) => {
  if (text.trim() === "") return null;
  const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/u.exec(text.trim()) ?? [];
  if (hours !== undefined && minutes !== undefined) return Number(hours) * MINUTES_AN_HOUR + Number(minutes);
  context.addIssue({ code: "custom", message: "Give the time as hours and minutes, for example 09:30." });
  return z.NEVER;
});

export const planVisitSchema = z
  .object({
    /** The form's own id becomes the visit's, so that sending it twice plans one visit. */
    requestId: idField,
    propertyId: idField,
    name: requiredLine("a name for the visit, such as Call-back", 80),
    ...windowFields,
    customerFrom: timeOfDay,
    customerUntil: timeOfDay,
    secondLook: secondLookField,
    tasks: taskRows,
  })
  .superRefine(checkWindow)
  .superRefine(({ customerFrom, customerUntil }, context) => {
    if ((customerFrom === null) !== (customerUntil === null)) {
      context.addIssue({ code: "custom", path: [customerFrom === null ? "customerFrom" : "customerUntil"], message: "Give both times, or neither." });
    } else if (customerFrom !== null && customerUntil !== null && customerUntil <= customerFrom) {
      context.addIssue({ code: "custom", path: ["customerUntil"], message: "It ends before it begins." });
    }
  });
