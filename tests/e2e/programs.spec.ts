import { type Page } from "@playwright/test";
import { expect, signIn, test } from "./office";

async function fillRound(page: Page, rate: string): Promise<void> {
  await page.getByLabel("Name").fill("Spring feed");
  await page.getByLabel("Opens on").fill("2035-04-06");
  await page.getByLabel("Closes on").fill("2035-04-24");
  await page.getByLabel("Product and use").first().selectOption({ label: "Greenmere 32-0-0: Established lawns (2 to 3 lb per 1,000 sq ft)" });
  await page.getByLabel("Rate", { exact: true }).first().fill(rate);
  await page.getByLabel("Reason").first().fill("feed");
}

test("a program is written, its round is held against the label, and a property is put on it once", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await page.getByRole("link", { name: "Programs" }).first().click();
  await page.getByRole("link", { name: "Add a program" }).click();
  await page.getByLabel("Name").fill("Shade lawns");
  await page.getByLabel("Season").fill("2035");
  await page.getByRole("button", { name: "Add the program" }).click();
  await expect(page.getByText("This program has no round yet.")).toBeVisible();
  await page.getByRole("link", { name: "Add a round" }).click();

  await expect(page.getByLabel("Rate", { exact: true }).first()).toHaveValue("");
  await fillRound(page, "3.5 lb/1,000 sq ft");
  await page.getByRole("button", { name: "Add the round" }).click();
  await expect(page.getByRole("link", { name: /above the label's highest rate, 3 lb per 1,000 sq ft/ })).toBeVisible();
  await page.getByLabel("Rate", { exact: true }).first().fill("2.5 lb/1,000 sq ft");
  await expect(page.getByText("Within the label's range. Brings 0.8 lb per 1,000 sq ft of nitrogen.")).toBeVisible();
  await page.getByRole("button", { name: "Add the round" }).click();
  await expect(page.getByRole("link", { name: "Spring feed" })).toBeVisible();

  await page.getByRole("link", { name: "Put properties on" }).click();
  await page.getByLabel("Find by street, town or customer").fill("7 Heron Court");
  await page.getByRole("checkbox", { name: /^7 Heron Court/ }).check();
  await page.getByRole("button", { name: "Put them on" }).click();
  await expect(page.getByText("1 round, 1 property.")).toBeVisible();
  await expect(page.getByRole("row", { name: /Spring feed/ })).toContainText("waiting");
  await page.getByRole("link", { name: "Put properties on" }).click();
  await expect(page.getByRole("checkbox", { name: /^7 Heron Court/ })).toHaveCount(0);
});

test("one visit is planned from a property's page and stands there as open", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await page.getByRole("link", { name: "Properties" }).first().click();
  await page.getByRole("link", { name: "7 Heron Court" }).click();
  await page.getByRole("link", { name: "Add one visit" }).click();
  await page.getByLabel("Name").fill("Look for grubs");
  await page.getByLabel("Closes on").fill("2199-01-01");
  await page.getByLabel("Product and use").first().selectOption({ label: "No product: look at the lawn" });
  await page.getByLabel("Reason").first().fill("loose turf by the pond");
  await page.getByRole("button", { name: "Plan the visit" }).click();
  await expect(page.getByText("loose turf by the pond")).toBeVisible();
});

test("without scripts the list of properties is narrowed by the address and a tick still goes out", async ({ page, browser, demonstration }) => {
  await signIn(page, demonstration);
  await page.goto(`${demonstration.address}/programs`);
  const program = (await page.getByRole("link", { name: "Cool-season lawns" }).getAttribute("href")) ?? "";
  const context = await browser.newContext({ javaScriptEnabled: false, storageState: await page.context().storageState() });
  const plain = await context.newPage();
  await plain.goto(`${demonstration.address}${program}/put-on-program`);
  const all = await plain.getByRole("checkbox").count();
  await plain.getByRole("button", { name: "Put them on" }).click();
  await expect(plain.getByRole("link", { name: "Tick at least one property." })).toBeVisible();
  await plain.getByRole("checkbox").last().check();
  await plain.getByRole("button", { name: "Put them on" }).click();
  await expect(plain.getByRole("heading", { name: "Rounds" })).toBeVisible();
  await plain.goto(`${demonstration.address}${program}/put-on-program`);
  await expect(plain.getByRole("checkbox")).toHaveCount(all - 1);
  await context.close();
});
