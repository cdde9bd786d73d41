import { z } from "zod";
import { idField } from "#application/field.schema";
import { MOST_ROWS, numberedRows, reasonField, treatmentRow } from "#application/programs/treatment-fields.schema";

// The tasks of one visit as a form asks for them: what, at which rate, why, and on which lawns.

/** The choice that stands for work without a product. */
export const LOOK = "look";

const tick = z.union([z.literal("yes"), z.literal(""), z.literal(false)], "Tick it or leave it.");

/** A tick for each lawn, by its id; the ticked ones come out. */
export const lawnTicks = z
  .record(idField, tick)
  .default({})
  .transform((ticks) => Object.entries(ticks).flatMap(([zoneId, mark]) => (mark === "yes" ? [zoneId.toLowerCase()] : [])));

const typedText = z.string("Write a line of text.").max(1000, "This is too long.").default("");
const looseRow = z.object({ productUse: typedText, rate: typedText, spotShare: typedText, reason: typedText, lawns: lawnTicks });
type LooseRow = z.output<typeof looseRow>;

/** A treatment or a look, with the number of its row on the form. */
export type TaskAsked =
  | { readonly kind: "treatment"; readonly row: string; readonly productId: string; readonly labelUse: string; readonly rate: string; readonly spotShare: string; readonly reason: string; readonly zoneIds: readonly string[] }
  | { readonly kind: "look"; readonly row: string; readonly reason: string; readonly zoneIds: readonly string[] };

const lookRow = z.object({
  rate: z.string().trim().max(0, "A look has no rate. Choose a product, or leave this empty."),
  spotShare: z.string().trim().max(0, "A look has no share. Choose a product, or leave this empty."),
  reason: reasonField,
});

function readRow(row: string, typed: LooseRow, context: z.RefinementCtx): readonly TaskAsked[] {
  const zoneIds = typed.lawns;
  if (zoneIds.length === 0) context.addIssue({ code: "custom", path: [row, "lawns"], message: "Tick at least one lawn." });
  const complain = (error: z.ZodError) => {
    for (const issue of error.issues) context.addIssue({ code: "custom", path: [row, ...issue.path], message: issue.message });
    return [];
  };
  if (typed.productUse.trim() === LOOK) {
    const look = lookRow.safeParse(typed);
    return look.success ? [{ kind: "look", row, reason: look.data.reason, zoneIds }] : complain(look.error);
  }
  const treatment = treatmentRow.safeParse(typed);
  if (!treatment.success) return complain(treatment.error);
  const { productUse, rate, spotShare, reason } = treatment.data;
  return [{ kind: "treatment", row, ...productUse, rate, spotShare, reason, zoneIds }];
}

/** The tasks by their number on the form. A row in which nothing was chosen or typed is left out, whatever its ticks. */
export const taskRows = numberedRows(looseRow, "Choose what is done.").transform((rows, context) => {
  const filled = rows.filter(([, { productUse, rate, spotShare, reason }]) => `${productUse}${rate}${spotShare}${reason}`.trim() !== "");
  if (filled.length === 0) context.addIssue({ code: "custom", path: ["0", "productUse"], message: "Choose a product and its use, or a look without one." });
  if (filled.length > MOST_ROWS) context.addIssue({ code: "custom", message: `At most ${String(MOST_ROWS)} tasks.` });
  return filled.flatMap(([row, typed]) => readRow(row, typed, context));
});
