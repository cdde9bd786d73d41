import { z } from "zod";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { idField, optionalLine } from "#application/field.schema";
import { stockPlaceField } from "#application/stock/stock-place.schema";

const amountField = z.string("Write how much.").transform((text, context) => {
  const read = parseQuantity(text, { field: "amount", dimensions: ["mass", "volume"] });
  if (!read.ok || read.value.quantity.amount === 0n) {
    context.addIssue({ code: "custom", message: read.ok ? "Nothing is no movement." : read.refusal.sentence });
    return z.NEVER;
  }
  return read.value.quantity;
});

export const moveStockSchema = z
  .object({
    requestId: idField,
    productId: idField,
    amount: amountField,
    from: stockPlaceField,
    to: stockPlaceField,
    /** The lot that is in the hand; empty takes the first to expire first. */
    lotId: z.union([z.literal("").transform(() => null), idField], "Choose a lot, or leave the choice to the order of expiry."),
    note: optionalLine(200),
  })
  .refine(({ from, to }) => JSON.stringify(from) !== JSON.stringify(to), { path: ["to"], message: "It is there already. Choose another location." });
