import { readCsvTable } from "#adapters/csv-table";
import { accept } from "#domain/foundation/outcome";
import { offerColumns } from "#domain/properties/customer-columns";
import { MOST_ROWS, readCustomerListSchema } from "#application/properties/customer-list.schema";
import { badField } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Reads the text of a list: its heads, its lines, and which head is offered for which column. Stores nothing. */
export const readCustomerList = useCase("properties/read-customer-list", readCustomerListSchema, (work, { text }) => {
  const table = readCsvTable("text", text);
  if (!table.ok) return Promise.resolve(badField("text", table.refusal.sentence));
  const [head, ...lines] = table.value;
  if (head === undefined || lines.length === 0) {
    return Promise.resolve(badField("text", "The first line names the columns, and a line for each customer follows. Here is only one line."));
  }
  if (lines.length > MOST_ROWS) return Promise.resolve(badField("text", `This list has ${String(lines.length)} rows; bring at most ${String(MOST_ROWS)} at a time.`));
  return Promise.resolve(accept({ heads: head.cells, lines, places: offerColumns(head.cells), listId: work.newId() }));
});
