import { z } from "zod";
import { idField } from "#application/field.schema";
import { CUSTOMER_COLUMN_IDS, type CustomerColumn } from "#domain/properties/customer-columns";
import { SIZE_MEANINGS } from "#domain/properties/lawn-size";

/** Lists that are longer come in parts: a person can't look through more at once. */
export const MOST_ROWS = 500;
const LONGEST_TEXT = 400_000;
const LONGEST_CELL = 4000;

const cell = z.string("Write text, or leave the cell empty.").max(LONGEST_CELL, `At most ${String(LONGEST_CELL)} characters.`);
const cells = z.object(Object.fromEntries(CUSTOMER_COLUMN_IDS.map((column) => [column, cell])) as Record<CustomerColumn, typeof cell>);

/** A line of the list: the number that it has in the file, its cells, and what a size in acres was said to be of. */
const row = z.object({ number: z.number().int().min(1).max(1_000_000), cells, sizeMeaning: z.union([z.literal(""), z.enum(SIZE_MEANINGS)]) });
const rows = z.array(row).min(1, "There is no row in this list.").max(MOST_ROWS, `At most ${String(MOST_ROWS)} rows at a time.`);

export const readCustomerListSchema = z.object({
  text: z.string("Paste the list, or choose a file.").max(LONGEST_TEXT, "This list is too long: bring it in parts.").refine((text) => text.trim() !== "", "Paste the list, or choose a file."),
});

export const checkCustomerListSchema = z.object({
  rows,
  /** The numbers of the rows to judge; all of them without it. The others still count as neighbors. */
  only: z.array(z.number().int()).max(MOST_ROWS, `At most ${String(MOST_ROWS)} rows at a time.`).optional(),
});

export const importCustomersSchema = z.object({ listId: idField, rows });

export type CustomerListRow = z.output<typeof row>;
