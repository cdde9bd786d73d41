import { DEMONSTRATION_PASSWORD, expect, signIn, test } from "./office";

test("the owner adds a person, a license and an invitation; the person accepts, works, and is let go", async ({ page, browser, demonstration }) => {
  await signIn(page, demonstration);
  await page.getByRole("link", { name: "Crew", exact: true }).click();
  await page.getByRole("link", { name: "Add a person" }).click();
  await page.getByLabel("Name").fill("Pia Lindqvist");
  await page.getByRole("button", { name: "Add the person" }).click();
  await expect(page.getByRole("heading", { name: "Pia Lindqvist" })).toBeVisible();
  const person = page.url();

  await page.getByRole("link", { name: "Add a license" }).click();
  await page.getByText("Registered technician").click();
  await page.getByLabel("Number on the license").fill("T-77");
  await page.getByLabel("Category").fill("Turf management");
  await page.getByLabel("Expires on").fill("2035-06-30");
  await page.getByRole("button", { name: "Add the license" }).click();
  await expect(page.getByRole("cell", { name: "T-77" })).toBeVisible();

  await page.getByRole("link", { name: "Invite" }).click();
  await page.getByLabel("Email address").fill("pia@tansyhollow.example");
  await page.getByText("Technician", { exact: true }).click();
  await page.getByRole("button", { name: "Make the link" }).click();
  const link = await page.getByLabel("Link, shown this once").inputValue();

  const guest = await browser.newContext();
  const guestPage = await guest.newPage();
  await guestPage.goto(link);
  await expect(guestPage.getByRole("heading", { name: "Tansy Hollow Lawn Care invites Pia Lindqvist" })).toBeVisible();
  await guestPage.getByLabel("Choose a password").fill("clover under the gate");
  await guestPage.getByRole("button", { name: "Accept" }).click();
  await signIn(guestPage, demonstration, "pia@tansyhollow.example", "clover under the gate");
  await guestPage.getByRole("link", { name: "Crew", exact: true }).click();
  await expect(guestPage.getByRole("heading", { name: "Crew" })).toBeVisible();
  await expect(guestPage.getByRole("link", { name: "Add a person" })).toHaveCount(0);
  await guestPage.goto(`${demonstration.address}/crew/add-person`);
  await expect(guestPage.getByRole("heading", { name: "Nothing is here" })).toBeVisible();

  await page.goto(person);
  await page.getByRole("button", { name: "End access" }).first().click();
  await page.getByRole("dialog").getByRole("button", { name: "End access" }).click();
  await expect(page.getByText("Pia Lindqvist has no account.")).toBeVisible();
  await guestPage.goto(`${demonstration.address}/crew`);
  await expect(guestPage).toHaveURL(/\/sign-in/);
  await guest.close();
});

test("two people who change the same person: the second is told, and what they typed is still there", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await page.getByRole("link", { name: "Crew", exact: true }).click();
  await page.getByRole("link", { name: "Wes Tolliver" }).click();
  await page.getByRole("link", { name: "Change", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Change a person" })).toBeVisible();
  const other = await page.context().newPage();
  await other.goto(page.url());
  await other.getByLabel("Phone").fill("219-555-0190");
  await other.getByRole("button", { name: "Save" }).click();
  await expect(other.getByText("219-555-0190")).toBeVisible();
  await page.getByLabel("Phone").fill("219-555-0191");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByRole("link", { name: /Someone else has changed this person/ })).toBeVisible();
  await expect(page.getByLabel("Phone")).toHaveValue("219-555-0191");
});

test("a link to set a new password works once and ends the old sessions", async ({ page, browser, demonstration }) => {
  const idasBrowser = await browser.newContext();
  const ida = await idasBrowser.newPage();
  await signIn(ida, demonstration, "ida@tansyhollow.example", DEMONSTRATION_PASSWORD);
  await signIn(page, demonstration);
  await page.getByRole("link", { name: "Crew", exact: true }).click();
  await page.getByRole("link", { name: "Ida Bray" }).click();
  await page.getByRole("button", { name: "Make a link to set a new password" }).click();
  const link = await page.getByLabel("Link, shown this once").inputValue();
  const guest = await browser.newContext();
  const guestPage = await guest.newPage();
  await guestPage.goto(link);
  await guestPage.getByLabel("New password").fill("quarry road in the rain");
  await guestPage.getByRole("button", { name: "Set the password" }).click();
  await signIn(guestPage, demonstration, "ida@tansyhollow.example", "quarry road in the rain");
  await ida.goto(`${demonstration.address}/crew`);
  await expect(ida).toHaveURL(/\/sign-in/);
  await guestPage.goto(link);
  await expect(guestPage.getByRole("heading", { name: "This link does not work" })).toBeVisible();
  await Promise.all([guest.close(), idasBrowser.close()]);
});

test("an id of nobody and an id that is none look the same", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  for (const id of ["00000000-0000-4000-8000-000000000000", "nonsense", "%27%3B--"]) {
    await page.goto(`${demonstration.address}/crew/${id}`);
    await expect(page.getByRole("heading", { name: "Nothing is here" })).toBeVisible();
  }
});
