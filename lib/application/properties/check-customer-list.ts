import { accept } from "#domain/foundation/outcome";
import { addressKey, type CellComplaint, type CustomerRow, readCustomerRow } from "#domain/properties/customer-row";
import { checkCustomerListSchema, type CustomerListRow } from "#application/properties/customer-list.schema";
import { useCase, type Work } from "#application/use-case";

/** What was found in one row: it can be imported, or these cells need another look. */
export type RowVerdict =
  | { readonly number: number; readonly kind: "good"; readonly row: CustomerRow }
  | { readonly number: number; readonly kind: "complaints"; readonly complaints: readonly CellComplaint[] };

function twice(found: string, sentence: string): readonly CellComplaint[] {
  return [{ column: "street", found, allowed: "a property that is not on file yet", sentence, asksLotOrTurf: false }];
}

/** Judges rows one by one, and against the company's properties and the rows above them. */
export async function judgeRows(work: Work, rows: readonly CustomerListRow[]): Promise<readonly RowVerdict[]> {
  const properties = await work.tx.property.findMany({ where: { companyId: work.company.companyId }, select: { street: true, zip: true } });
  const onFile = new Set(properties.map(({ street, zip }) => addressKey(street, zip)));
  const above = new Map<string, number>();
  return rows.map(({ number, cells, sizeMeaning }): RowVerdict => {
    const address = addressKey(cells.street, cells.zip);
    const earlier = above.get(address);
    if (earlier === undefined && cells.street !== "") above.set(address, number);
    const read = readCustomerRow(cells, sizeMeaning === "" ? undefined : sizeMeaning);
    const known = onFile.has(address)
      ? twice(cells.street, `${cells.street} is on file already: a property is imported once.`)
      : earlier === undefined
        ? []
        : twice(cells.street, `Row ${String(earlier)} is the same property: keep one of the two.`);
    if (read.ok && known.length === 0) return { number, kind: "good", row: read.value };
    return { number, kind: "complaints", complaints: [...(read.ok ? [] : read.refusal), ...known] };
  });
}

/** Judges a list, or some rows of it among the others. Stores nothing. */
export const checkCustomerList = useCase("properties/check-customer-list", checkCustomerListSchema, async (work, { rows, only }) => {
  const verdicts = await judgeRows(work, rows);
  return accept({ verdicts: only === undefined ? verdicts : verdicts.filter(({ number }) => only.includes(number)) });
});
