import { expect, signIn, test } from "./office";

test("without scripts a form still goes out, and its complaints and what was typed come back", async ({ page, browser, demonstration }) => {
  await signIn(page, demonstration);
  const context = await browser.newContext({ javaScriptEnabled: false, storageState: await page.context().storageState() });
  const plain = await context.newPage();
  await plain.goto(`${demonstration.address}/crew/add-person`);
  await plain.getByLabel("Phone").fill("219-555-0177");
  await plain.getByRole("button", { name: "Add the person" }).click();
  await expect(plain.getByRole("link", { name: "Give the person's name." })).toBeVisible();
  await expect(plain.getByLabel("Phone")).toHaveValue("219-555-0177");
  await plain.getByLabel("Name").fill("Otto Brandt");
  await plain.getByRole("button", { name: "Add the person" }).click();
  await expect(plain.getByRole("heading", { name: "Otto Brandt" })).toBeVisible();
  await context.close();
});
