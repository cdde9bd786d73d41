import { type Page } from "@playwright/test";
import { expect, type Office, test } from "./office";

test.use({ storageState: async ({ owner }, use) => { await use(owner.storageState); } });

/** Every worksheet, with its kinds by their names on the page; none where there is one kind only. */
const WORKSHEETS = {
  nutrients: ["Product for a nutrient", "Nutrients of a product", "What is in a bag"],
  sprayer: ["Boom", "Small area, 1/128 acre", "Hose and gun"],
  spreader: ["Rate at a setting", "Swath from a line of pans"],
  "tank-mix": [],
  area: ["Rectangle", "Triangle", "Trapezoid", "Circle", "Widths along a line", "Average radius"],
  irrigation: ["The rate is known", "From catch cans"],
  "spray-hours": [],
  "degree-days": [],
  seed: ["By a rate of pure live seed", "By a rate from the bag"],
  lime: ["Mehlich buffer, by the table", "Another method, by the lab"],
  potash: [],
  topdressing: ["Material for a depth", "Depth of a load"],
} as const;

async function open(page: Page, office: Office, name: string, kind: string | undefined): Promise<void> {
  await page.goto(`${office.address}/worksheets/${name}`);
  if (kind === undefined) return;
  const link = page.getByRole("navigation", { name: "What is asked" }).getByRole("link", { name: kind, exact: true });
  const target = (await link.getAttribute("href")) ?? "";
  await link.click();
  // The kind before has an example too.
  await page.waitForURL((url) => `${url.pathname}${url.search}` === target);
}

/** The pages of a paper, counted in what Chromium wrote. */
function pagesOf(paper: Buffer): number {
  return paper.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/gu)?.length ?? 0;
}

test("the list is at the right end of the bar and leads to every worksheet", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/contents`);
  await page.getByRole("banner").getByRole("link", { name: "Worksheets", exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Worksheets" })).toBeVisible();
  await expect(page.getByRole("main").getByRole("listitem")).toHaveCount(Object.keys(WORKSHEETS).length);
  await page.getByRole("main").getByRole("link", { name: /^Tank mix/ }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Tank mix" })).toBeVisible();
});

test("a sheet is filled in, refused by field, corrected and worked out; the address keeps it", async ({ page, demonstration }) => {
  await open(page, demonstration, "nutrients", undefined);
  await page.getByLabel("Grade").fill("28-3");
  await page.getByLabel("Wanted rate of the nutrient").fill("1 oz per 1,000 sq ft");
  await page.getByRole("button", { name: "Work it out" }).click();
  const summary = page.getByRole("group", { name: "3 answers need another look" });
  await expect(summary).toBeFocused();
  await expect(summary.getByRole("link")).toHaveText([/"28-3" is not a grade/, /Write oz wt or fl oz/, "Give the area, such as 6,000 sq ft."]);
  await expect(page.getByLabel("Grade")).toHaveAccessibleDescription(/"28-3" is not a grade/);
  await expect(page.getByLabel("Wanted rate of the nutrient")).toHaveValue("1 oz per 1,000 sq ft");

  await page.getByLabel("Grade").fill("28-3-6");
  await page.getByLabel("Wanted rate of the nutrient").fill("1 lb/1,000");
  await page.getByLabel("Area").fill("6,000");
  await page.getByRole("button", { name: "Work it out" }).click();
  const result = page.getByRole("region", { name: "Result" });
  await expect(result).toContainText("21.43");
  await expect(page.getByRole("region", { name: "By hand" })).toContainText("100 ÷ 28 = 3.5714 lb.");
  await expect(page).toHaveURL(/grade=28-3-6/);

  await page.reload();
  await expect(result).toContainText("21.43");
  await page.goBack();
  await expect(page.getByLabel("Grade")).toHaveValue("28-3");
});

test("an area is drawn to scale, and a day of weather as a strip", async ({ page, demonstration }) => {
  await open(page, demonstration, "area", "Widths along a line");
  await page.getByRole("link", { name: "Fill in an example" }).click();
  await expect(page.getByRole("figure")).toContainText("1,440 sq ft");
  await open(page, demonstration, "spray-hours", undefined);
  await page.getByRole("link", { name: "Fill in an example" }).click();
  await expect(page.getByRole("figure")).toContainText("9 of 13 hours are not closed.");
  await expect(page.getByRole("row", { name: /^2 pm/ })).toContainText("the highest wind for this spray is 10 mph");
});

test("a station without a rate is told how to be tested", async ({ page, demonstration }) => {
  await open(page, demonstration, "irrigation", undefined);
  await page.getByLabel("Depth of water").fill("1/2");
  await page.getByRole("button", { name: "Work it out" }).click();
  await expect(page.getByRole("region", { name: "By hand" })).toContainText("Set out eight straight-sided cans");
});

for (const [name, kinds] of Object.entries(WORKSHEETS)) {
  for (const kind of kinds.length === 0 ? [undefined] : kinds) {
    test(`the example of ${name}${kind === undefined ? "" : `, ${kind},`} works out and prints on one page, as does the empty sheet`, async ({ page, demonstration }) => {
      await open(page, demonstration, name, kind);
      await expect(page.getByRole("button", { name: "Work it out" })).toBeVisible();
      expect(pagesOf(await page.pdf({ format: "Letter" }))).toBe(1);
      await page.getByRole("link", { name: "Fill in an example" }).click();
      await expect(page.getByRole("region", { name: "Result" })).toBeVisible();
      await expect(page.getByRole("region", { name: "By hand" }).getByRole("list")).not.toBeEmpty();
      expect(pagesOf(await page.pdf({ format: "Letter" }))).toBe(1);
    });
  }
}

test("the longest tables are thinned out on paper, and stay on one page", async ({ page, demonstration }) => {
  await open(page, demonstration, "degree-days", undefined);
  await page.getByRole("link", { name: "Fill in an example" }).click();
  await expect(page.getByRole("region", { name: "Result" })).toBeVisible();
  const address = new URL(page.url());
  const dateOf = (day: number) => new Date(Date.UTC(2026, 1, 15 + day)).toISOString().slice(0, 10);
  const days = Array.from({ length: 90 }, (_, day) => `${dateOf(day)}, ${String(55 + (day % 20))}, ${String(35 + (day % 10))}`).join("\n");
  address.searchParams.set("days", days);
  await page.goto(address.toString());
  const rows = page.getByRole("region", { name: "Result" }).locator("tbody tr");
  await expect(rows).toHaveCount(90);
  await page.emulateMedia({ media: "print" });
  await expect(rows.filter({ visible: true })).toHaveCount(31);
  await expect(page.getByText("On paper every third row and the last; the page has all 90.")).toBeVisible();
  expect(pagesOf(await page.pdf({ format: "Letter" }))).toBe(1);
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });
  test("a sheet is refused and worked out all the same", async ({ page, demonstration }) => {
    await page.goto(`${demonstration.address}/worksheets/seed`);
    await page.getByRole("button", { name: "Work it out" }).click();
    await expect(page.getByRole("heading", { name: "4 answers need another look" })).toBeVisible();
    await page.getByRole("link", { name: "Fill in an example" }).click();
    await page.getByRole("button", { name: "Work it out" }).click();
    await expect(page.getByRole("region", { name: "Result" })).toContainText("52.08");
  });
});
