import { z } from "zod";
import { BLOOM_SEEN } from "#domain/properties/lawn-look";
import { WATER_TOLD_BY, WATERED_BY } from "#domain/properties/lawn-watering";
import { of } from "#domain/quantities/quantity";
import { optionalClockTime, requiredClockTime } from "#application/clock-time.schema";
import { idField, optionalDate, optionalLine, requiredDate } from "#application/field.schema";
import { optionalLength } from "#application/properties/measure-fields.schema";

/** More water than this at one time is a slip of a unit (common practice). */
const MOST_WATER = of("in", "6").amount;

const choice = <Value extends string>(values: readonly [Value, ...Value[]], complaint: string) =>
  z.union([z.literal("").transform(() => null), z.enum(values)], complaint).default(null);

const lookFields = {
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  visitId: idField,
  seenOn: requiredDate("the day of the look"),
  seenAt: requiredClockTime("when it was seen"),
  seenById: z.uuid("Choose who saw it."),
  /** By lawn id: whether anything on it blooms. */
  lawns: z.record(idField, z.enum(BLOOM_SEEN, "Say whether anything blooms there, or that nobody looked.")),
  /** By lawn id: one sentence, or nothing. */
  said: z.record(idField, optionalLine(200)).default({}),
};

/** One statement about water for all lawns that are ticked, or none at all. */
const waterFields = {
  /** By lawn id: a tick for each lawn that was watered in. */
  watered: z.record(idField, z.union([z.literal("yes"), z.literal(""), z.literal(false)])).default({}),
  wateredOn: optionalDate("the day on which it was watered in").default(null),
  wateredAt: optionalClockTime("18:00").default(null),
  wateredBy: choice(WATERED_BY, "Choose what watered it in."),
  waterToldBy: choice(WATER_TOLD_BY, "Choose whose word it is."),
  /** A number alone is inches; empty where nobody knows. */
  waterDepth: optionalLength("how much water it was", "in").default(null),
};

type WaterFields = { readonly [Name in keyof typeof waterFields]: z.output<(typeof waterFields)[Name]> };

const ASKED = {
  wateredOn: "Give the day on which it was watered in.",
  wateredAt: "Give the time at which the water was done, such as 18:00.",
  wateredBy: "Choose what watered it in.",
  waterToldBy: "Choose whose word it is.",
} as const;

/** Complains about a statement about water that is not whole, at its fields. */
function checkWater(form: WaterFields, context: z.RefinementCtx): void {
  const complain = (field: string, message: string) => context.addIssue({ code: "custom", path: [field], message });
  const asked = Object.keys(ASKED) as (keyof typeof ASKED)[];
  if (!Object.values(form.watered).includes("yes")) {
    const isGiven = form.waterDepth !== null || asked.some((field) => form[field] !== null);
    if (isGiven) complain("watered", "Tick the lawns that were watered in, or leave the fields about water empty.");
    return;
  }
  for (const field of asked) if (form[field] === null) complain(field, ASKED[field]);
  if (form.waterDepth !== null && form.waterDepth <= 0n) complain("waterDepth", "Give more than nothing, or leave it empty.");
  if (form.waterDepth !== null && form.waterDepth > MOST_WATER) complain("waterDepth", "More than 6 in at one time can’t be meant.");
}

export const lookAtLawnsSchema = z.object({ ...lookFields, ...waterFields }).superRefine(checkWater);

export type LookAtLawnsForm = z.output<typeof lookAtLawnsSchema>;
