import { z } from "zod";
import { requiredLine } from "#application/field.schema";

// What goes down, as a form asks for it: rows of a product's use, a rate as it is typed, and a reason.

const LONGEST_USE = 200;
const LONGEST_RATE = 60;
const LONGEST_SHARE = 20;
/** So many rows a form may hold; a visit of more products than that is two visits. */
export const MOST_ROWS = 6;

const UUID = "[0-9a-fA-F]{8}(?:-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}";
const PRODUCT_USE = new RegExp(`^(${UUID}) (.+)$`, "u");

/** The value of a choice of product and label use: the product's id and the name of the use. */
export function productUseKey(productId: string, labelUse: string): string {
  return `${productId} ${labelUse}`;
}

const productUse = z
  .string("Choose a product and its use.")
  .trim()
  .max(LONGEST_USE, "Choose from the list.")
  .transform((text, context) => {
    const [, productId, labelUse] = PRODUCT_USE.exec(text) ?? [];
    if (productId !== undefined && labelUse !== undefined) return { productId: productId.toLowerCase(), labelUse };
    context.addIssue({ code: "custom", message: "Choose a product and its use." });
    return z.NEVER;
  });

/** A rate as it is typed; what it means depends on the label and is read there. No rate is filled in for anybody. */
export const typedRate = z.string("Give a rate.").trim().min(1, "Choose a rate.").max(LONGEST_RATE, `At most ${String(LONGEST_RATE)} characters.`);

export const reasonField = requiredLine("a reason, such as feed or crabgrass", 120);

/** Of spot work the share of the lawn as it is typed; empty: all over the lawn. */
export const typedShare = z.string("Give a share.").trim().max(LONGEST_SHARE, `At most ${String(LONGEST_SHARE)} characters.`).default("");

/** One product at one rate for one reason, all over the lawn or on a share of it. */
export const treatmentRow = z.object({ productUse, rate: typedRate, spotShare: typedShare, reason: reasonField });

const typedText = z.string("Write a line of text.").max(1000, "This is too long.").default("");
const looseRow = z.object({ productUse: typedText, rate: typedText, spotShare: typedText, reason: typedText });

/** Rows by their number: an object as the server reads a form, or a list as the browser's form holds numbered fields. */
export function numberedRows<Row extends z.ZodType>(row: Row, message: string) {
  return z.union([z.array(row).max(10, message), z.record(z.string().regex(/^\d$/u), row)], message).transform((rows) => Object.entries<z.output<Row>>(rows));
}

/** Rows of treatments; rows that were left empty are left out. */
export const treatmentRows = numberedRows(looseRow, "Choose what goes down.").transform((rows, context) => {
  const filled = rows.filter(([, row]) => Object.values(row).some((text) => text.trim() !== ""));
  if (filled.length === 0) context.addIssue({ code: "custom", path: ["0", "productUse"], message: "Choose a product and its use." });
  if (filled.length > MOST_ROWS) context.addIssue({ code: "custom", message: `At most ${String(MOST_ROWS)} products.` });
  return filled.flatMap(([row, typed]) => {
    const read = treatmentRow.safeParse(typed);
    if (read.success) return [{ row, ...read.data.productUse, rate: read.data.rate, spotShare: read.data.spotShare, reason: read.data.reason }];
    for (const issue of read.error.issues) context.addIssue({ code: "custom", path: [row, ...issue.path], message: issue.message });
    return [];
  });
});
