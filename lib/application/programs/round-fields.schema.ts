import { z } from "zod";
import { requiredDate, requiredLine } from "#application/field.schema";

/** The longest that a second look may wait, in days. */
const MOST_DAYS = 60;

const wholeDays = z
  .string("Give whole days.")
  .trim()
  .regex(/^\d{1,3}$/u, "Give whole days, or leave it empty for none.")
  .transform(Number)
  .pipe(z.number().int().min(1, "Give a day or more, or leave it empty for none.").max(MOST_DAYS, `At most ${String(MOST_DAYS)} days.`));

/** Days until a second look; empty becomes null: none. */
export const secondLookField = z.union([z.literal("").transform(() => null), wholeDays], "Give whole days from 1 to 60, or leave it empty for none.");

export const windowFields = {
  opensOn: requiredDate("the day it opens"),
  closesOn: requiredDate("the day it closes"),
};

/** Complains at its field about a window that closes before it opens. */
export function checkWindow({ opensOn, closesOn }: { readonly opensOn: string; readonly closesOn: string }, context: z.RefinementCtx): void {
  if (closesOn < opensOn) context.addIssue({ code: "custom", path: ["closesOn"], message: "It closes before it opens." });
}

/** A round's name, its window and whether somebody looks again. */
export const roundFields = { name: requiredLine("a name for the round, such as Spring feed", 80), ...windowFields, secondLook: secondLookField };
