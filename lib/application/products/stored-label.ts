import { z } from "zod";
import { type CompanyTransaction } from "#adapters/postgres/company-work";
import { type LabelFacts } from "#domain/label/label-facts";
import { GENERAL_FIELD_NAMES, type LabelText, USE_FIELD_NAMES } from "#domain/label/label-fields";
import { readLabelOnFile } from "#domain/label/label-on-file";
import { type LabelComplaints } from "#domain/label/label-text";

function textsOf<Name extends string>(names: readonly Name[]) {
  // A field that came later than the entry has been read by nobody.
  const shape = Object.fromEntries(names.map((name) => [name, z.string().default("")])) as Record<Name, z.ZodDefault<z.ZodString>>;
  return z.object(shape);
}

const storedLabelSchema = z.object({
  productName: z.string(),
  form: z.enum(["granular", "liquid"]),
  general: textsOf(GENERAL_FIELD_NAMES),
  uses: z.array(textsOf(USE_FIELD_NAMES)),
});

/** A label as it was typed, out of its column. */
export function labelTextOf(stored: unknown): LabelText {
  return storedLabelSchema.parse(stored);
}

/** One entry of a label: what was typed, what it means, who typed it, and who held it against the container. */
export interface EntryOfLabel {
  readonly labelEntryId: string;
  readonly number: number;
  readonly text: LabelText;
  readonly facts: LabelFacts;
  /** What of it was taken once and is refused today; it counts as read by nobody. */
  readonly complaints: LabelComplaints;
  readonly enteredBy: string;
  readonly enteredAt: Date;
  readonly confirmation: { readonly by: string; readonly at: Date } | undefined;
}

/** The entries of a product's label that matter. Only the confirmed one counts; a newer one may wait for its reading back. */
export interface LabelOfProduct {
  readonly latest: EntryOfLabel | undefined;
  readonly confirmed: EntryOfLabel | undefined;
}

/** The labels of products that were read, by product id; a product without an entry is not among them. */
export type LabelsRead = ReadonlyMap<string, LabelOfProduct>;

/** The entry that plans and counts go by: the confirmed one, or the latest while none is. */
export function labelInUse(label: LabelOfProduct | undefined): EntryOfLabel | undefined {
  return label?.confirmed ?? label?.latest;
}

interface EntryRow {
  readonly label_entry_id: string;
  readonly product_id: string;
  readonly number: number;
  readonly facts: unknown;
  readonly entered_by: string;
  readonly entered_at: Date;
  readonly confirmed_by: string | null;
  readonly confirmed_at: Date | null;
}

function entryOf(row: EntryRow): EntryOfLabel {
  const text = labelTextOf(row.facts);
  const { facts, complaints } = readLabelOnFile(text);
  return {
    labelEntryId: row.label_entry_id,
    number: row.number,
    text,
    facts,
    complaints,
    enteredBy: row.entered_by,
    enteredAt: row.entered_at,
    confirmation: row.confirmed_by === null || row.confirmed_at === null ? undefined : { by: row.confirmed_by, at: row.confirmed_at },
  };
}

/**
 * The labels of products: the latest entry, and the latest that was confirmed. Each is read and parsed here, so that a use
 * case asks once for all of its products and hands on what it was answered.
 */
export async function labelsOfProducts(tx: CompanyTransaction, companyId: string, productIds: readonly string[]): Promise<LabelsRead> {
  if (productIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<EntryRow[]>`
    WITH entry AS (
      SELECT e.*, who.name AS entered_by, confirmer.name AS confirmed_by, c.confirmed_at
      FROM label_entry e
      JOIN person who ON who.company_id = e.company_id AND who.person_id = e.person_id
      LEFT JOIN label_confirmation c ON c.company_id = e.company_id AND c.label_entry_id = e.label_entry_id
      LEFT JOIN person confirmer ON confirmer.company_id = c.company_id AND confirmer.person_id = c.person_id
      WHERE e.company_id = ${companyId}::uuid AND e.product_id = ANY(${[...productIds]}::uuid[])
    )
    SELECT label_entry_id, product_id, number, facts, entered_by, entered_at, confirmed_by, confirmed_at
    FROM entry e
    WHERE number = (SELECT max(number) FROM entry l WHERE l.product_id = e.product_id)
       OR number = (SELECT max(number) FROM entry l WHERE l.product_id = e.product_id AND l.confirmed_at IS NOT NULL)
    ORDER BY product_id, number`;
  const labels = new Map<string, LabelOfProduct>();
  for (const row of rows) {
    const entry = entryOf(row);
    const before = labels.get(row.product_id);
    labels.set(row.product_id, { latest: entry, confirmed: entry.confirmation === undefined ? before?.confirmed : entry });
  }
  return labels;
}
