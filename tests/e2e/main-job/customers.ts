import { expect, type Page } from "@playwright/test";
import { customerListText, POND_ROW, ROWS_IN_LIST } from "../../../prisma/seed/customer-list";
import { goTo } from "./form";

// The demonstration's list with the slips that such lists have: a size in acres of which nobody said whether it is the
// lot, a ZIP code that lost a digit, a size with a question mark.

const LINES = customerListText().split("\r\n");
const [HEAD = "", ...ROWS] = LINES;
const CELL = { customer: 0, street: 3, zip: 6, size: 7 } as const;

function cellsOf(index: number): readonly string[] {
  // No cell of the list but a size has a comma, and that one is quoted.
  return (ROWS[index] ?? "").match(/"[^"]*"|[^,]+|(?<=^|,)(?=,|$)/g)?.map((cell) => cell.replaceAll('"', "")) ?? [];
}

/** The street of a row, counted from zero without the line of names. */
export function streetOf(index: number): string {
  return cellsOf(index)[CELL.street] ?? "";
}

export { POND_ROW };

/** Rows with a size in the list, in Illinois and not far from the shop. */
export const LISTED = { longIron: 51, shortIron: 28, preventer: 41, feed: 40, largeFeed: 50 } as const;

/** Square feet of a row as the list has them. */
export function listedSquareFeet(index: number): number {
  return Number((cellsOf(index)[CELL.size] ?? "").replaceAll(/[^0-9]/g, ""));
}

const WRONG = { acres: 24, zip: 12, size: 46 } as const;

function spoiled(index: number, cell: number, text: string): string {
  return cellsOf(index).map((kept, at) => (at === cell ? text : kept.includes(",") ? `"${kept}"` : kept)).join(",");
}

function listText(): string {
  const rows = ROWS.map((row, index) => {
    if (index === WRONG.acres) return spoiled(index, CELL.size, "1/4 acre");
    if (index === WRONG.zip) return spoiled(index, CELL.zip, "4635");
    return index === WRONG.size ? spoiled(index, CELL.size, "about 9k?") : row;
  });
  return [HEAD, ...rows].join("\n");
}

/** The row's block of the import; the list's first line is its names. */
function rowOf(page: Page, index: number) {
  return page.getByRole("region", { name: `Row ${String(index + 2)}: ${cellsOf(index)[CELL.customer] ?? ""}, ${streetOf(index)}` });
}

/** Brings the list as a file, mends its faulty rows one by one, and imports all of it. */
export async function importCustomers(page: Page): Promise<void> {
  await goTo(page, "Properties");
  await page.getByRole("link", { name: "Import a list" }).first().click();
  await page.getByLabel("File").setInputFiles({ name: "customers.csv", mimeType: "text/csv", buffer: Buffer.from(listText()) });
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByText(`${String(ROWS_IN_LIST)} rows.`)).toBeVisible();
  await page.getByRole("button", { name: "Read the rows" }).click();
  await expect(page.getByText("3 rows need another look.")).toBeVisible();

  const acres = rowOf(page, WRONG.acres);
  await expect(acres.getByText("Is that the whole lot, or the turf alone?")).toBeVisible();
  await acres.getByText("The whole lot", { exact: true }).click();
  await acres.getByRole("button", { name: `Check row ${String(WRONG.acres + 2)}` }).click();
  await expect(acres).toHaveCount(0);

  const zip = rowOf(page, WRONG.zip);
  await zip.getByLabel("ZIP").fill(cellsOf(WRONG.zip)[CELL.zip] ?? "");
  await zip.getByRole("button", { name: `Check row ${String(WRONG.zip + 2)}` }).click();
  await expect(zip).toHaveCount(0);

  const size = rowOf(page, WRONG.size);
  await size.getByLabel("Lawn size").fill("0 sq ft");
  await size.getByRole("button", { name: `Check row ${String(WRONG.size + 2)}` }).click();
  await expect(size.getByText("A size is more than nothing; leave the cell empty where none is known.")).toBeVisible();
  await expect(size.getByLabel("Lawn size")).toHaveValue("0 sq ft");
  await size.getByLabel("Lawn size").fill("9,000 sq ft");
  await size.getByRole("button", { name: `Check row ${String(WRONG.size + 2)}` }).click();

  await expect(page.getByText(`All ${String(ROWS_IN_LIST)} rows are ready.`)).toBeVisible();
  await page.getByRole("button", { name: `Import all ${String(ROWS_IN_LIST)}` }).click();
  await expect(page.getByRole("heading", { name: "Properties", exact: true })).toBeVisible();
  await expect(page.getByLabel("Find by name, street or phone")).toBeVisible();
}
