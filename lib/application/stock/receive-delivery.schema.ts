import { z } from "zod";
import { parseDollars } from "#domain/money/money";
import { CONTAINERS } from "#domain/stock/container-words";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { idField, optionalDate, optionalLine, requiredDate, requiredLine } from "#application/field.schema";
import { stockPlaceField } from "#application/stock/stock-place.schema";

/** What one container holds, by weight or by volume: "50 lb", "2.5 gal". */
const containerSizeField = z.string("Write what one container holds.").transform((text, context) => {
  const read = parseQuantity(text, { field: "containerSize", dimensions: ["mass", "volume"] });
  if (!read.ok || read.value.quantity.amount === 0n) {
    context.addIssue({ code: "custom", message: read.ok ? "A container holds something." : read.refusal.sentence });
    return z.NEVER;
  }
  return { typed: text.trim(), quantity: read.value.quantity };
});

const MOST_CONTAINERS = 10_000;
const ASK_HOW_MANY = `Write how many containers came, from 1 to ${MOST_CONTAINERS.toLocaleString("en-US")}.`;

const countField = z
  .union([z.number(), z.string().trim().regex(/^\d{1,5}$/).transform(Number)], ASK_HOW_MANY)
  .pipe(z.number().int(ASK_HOW_MANY).min(1, ASK_HOW_MANY).max(MOST_CONTAINERS, ASK_HOW_MANY));

/** What was paid for one container, in whole cents; empty or the word none is "nobody knows", never nothing. */
export const paidField = z.string("Write what one container cost, or leave it empty.").transform((text, context) => {
  if (/^(?:none)?$/iu.test(text.trim())) return null;
  const read = parseDollars("paidForOne", text);
  if (read.ok) return read.value;
  context.addIssue({ code: "custom", message: read.refusal.sentence });
  return z.NEVER;
});

export const receiveDeliverySchema = z.object({
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  productId: idField,
  receivedOn: requiredDate("the day it came"),
  count: countField,
  container: z.enum(CONTAINERS, "Choose what it comes in."),
  containerSize: containerSizeField,
  paidForOne: paidField,
  lotNumber: requiredLine("the lot number on the container", 80),
  expiresOn: optionalDate("the day it expires"),
  to: stockPlaceField,
  note: optionalLine(200),
});
