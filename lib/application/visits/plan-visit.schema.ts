import { z } from "zod";
import { optionalClockTime } from "#application/clock-time.schema";
import { idField, requiredLine } from "#application/field.schema";
import { checkWindow, secondLookField, windowFields } from "#application/programs/round-fields.schema";
import { taskRows } from "#application/visits/task-fields.schema";

export const planVisitSchema = z
  .object({
    /** The form's own id becomes the visit's, so that sending it twice plans one visit. */
    requestId: idField,
    propertyId: idField,
    name: requiredLine("a name for the visit, such as Call-back", 80),
    ...windowFields,
    customerFrom: optionalClockTime("09:30"),
    customerUntil: optionalClockTime("09:30"),
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
