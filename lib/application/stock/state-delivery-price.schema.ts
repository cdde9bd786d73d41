import { z } from "zod";
import { idField, optionalLine } from "#application/field.schema";
import { paidField } from "#application/stock/receive-delivery.schema";

const CHOOSE = "Choose the delivery.";

/** A delivery as its choice sends it: the posting by which it came, and the line of its lot in it. */
const deliveryField = z.string(CHOOSE).transform((text, context) => {
  const [stockPostingId = "", line = "", ...more] = text.split(" ");
  if (z.uuid().safeParse(stockPostingId).success && /^[1-9]\d{0,5}$/u.test(line) && more.length === 0) return { stockPostingId, line: Number(line) };
  context.addIssue({ code: "custom", message: CHOOSE });
  return z.NEVER;
});

export const stateDeliveryPriceSchema = z.object({
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  productId: idField,
  delivery: deliveryField,
  /** In whole cents; the word none says that nobody knows after all. */
  paidForOne: z.string("Write what one container cost, or none.").trim().min(1, "Write what one container cost, or none where nobody knows after all.").pipe(paidField),
  said: optionalLine(200),
});
