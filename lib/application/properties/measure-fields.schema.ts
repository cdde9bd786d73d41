import { z } from "zod";
import { parseLength } from "#domain/quantities/parse-length";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { type Outcome } from "#domain/foundation/outcome";

// Measures as people type them, as amounts in canonical units.

const LONGEST_MEASURE = 60;
const typedMeasure = (what: string) => z.string(`Give ${what}, or leave it empty.`).trim().max(LONGEST_MEASURE, "This is too long to be one measure.");

function amountOf(read: Outcome<{ readonly quantity: { readonly amount: bigint } }>, context: z.RefinementCtx): bigint {
  const sentence = read.ok ? "This is more than nothing, or empty." : read.refusal.sentence;
  if (read.ok && read.value.quantity.amount > 0n) return read.value.quantity.amount;
  context.addIssue({ code: "custom", message: sentence });
  return z.NEVER;
}

/** A length above zero, or nothing; a number alone is in the field's unit. */
export function optionalLength(what: string, unitWhenNone: "ft" | "in") {
  return typedMeasure(what).transform((text, context) => (text === "" ? null : amountOf(parseLength(text, { field: what, unitWhenNone }), context)));
}

/** An area above zero, or nothing; a number alone is square feet. */
export function optionalArea(what: string) {
  return typedMeasure(what).transform((text, context) =>
    text === "" ? null : amountOf(parseQuantity(text, { field: what, dimensions: ["area"], unitWhenNone: "sq ft" }), context),
  );
}

/** An area above zero; a number alone is square feet. */
export function requiredArea(what: string) {
  return typedMeasure(what).transform((text, context) => {
    if (text === "") {
      context.addIssue({ code: "custom", message: `Give ${what}.` });
      return z.NEVER;
    }
    return amountOf(parseQuantity(text, { field: what, dimensions: ["area"], unitWhenNone: "sq ft" }), context);
  });
}

/** A box that is ticked or not: a browser sends "yes" or nothing at all. */
export const tickField = z
  .union([z.literal("yes"), z.literal(""), z.literal(false)])
  .optional()
  .transform((value) => value === "yes");
