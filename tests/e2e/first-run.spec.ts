import { goTo } from "./main-job/form";
import { expect, signIn, test } from "./office";

test("a new company is created once by the link from the terminal, and its owner signs in", async ({ page, emptyOffice }) => {
  const printed = await emptyOffice.companyCommand();
  const link = /http:\/\/\S+/.exec(printed)?.[0] ?? "";
  await page.goto(link);
  await page.getByRole("button", { name: "Create the company" }).click();
  await expect(page.getByRole("link", { name: "Give the company's name." })).toBeVisible();
  await page.getByLabel("Name of the company").fill("Larch Road Turf");
  await page.getByLabel("State", { exact: true }).selectOption("Illinois");
  await page.getByLabel("Time zone").selectOption("America, Chicago");
  await page.getByLabel("Your name").fill("Nell Aldane");
  await page.getByLabel("Email address").fill("nell@larchroad.example");
  await page.getByLabel("Password", { exact: true }).fill("short");
  await page.getByText("Certified applicator").click();
  await page.getByLabel("State that gave it").selectOption("Illinois");
  await page.getByLabel("Number on the license").fill("L-1");
  await page.getByLabel("Category").fill("Turf");
  await page.getByLabel("Expires on").fill("2035-12-31");
  await page.getByRole("button", { name: "Create the company" }).click();
  await expect(page.getByRole("link", { name: /At least 15 characters/ })).toBeVisible();
  await expect(page.getByLabel("Name of the company")).toHaveValue("Larch Road Turf");
  await page.getByLabel("Password", { exact: true }).fill("larches along the road");
  await page.getByRole("button", { name: "Create the company" }).click();
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  await signIn(page, emptyOffice, "nell@larchroad.example", "larches along the road");
  await goTo(page, "Crew");
  await expect(page.getByRole("link", { name: "Nell Aldane" })).toBeVisible();
  await page.goto(link);
  await expect(page.getByRole("heading", { name: "This link does not work" })).toBeVisible();
});

test("a link that was never printed opens nothing", async ({ page, emptyOffice }) => {
  await page.goto(`${emptyOffice.address}/first-run/${"A".repeat(43)}`);
  await expect(page.getByRole("heading", { name: "This link does not work" })).toBeVisible();
  await page.goto(`${emptyOffice.address}/first-run/%00`);
  await expect(page.getByRole("heading", { name: "This link does not work" })).toBeVisible();
});
