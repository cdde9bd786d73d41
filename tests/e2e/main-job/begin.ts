import { expect, type Page } from "@playwright/test";
import { type Office, signIn } from "../office";
import { DAYS } from "./days";
import { choose, fill, goTo } from "./form";

export const OWNER = { name: "Tilda Marsh", email: "tilda@wrenfield.example", password: "clover between the rows" } as const;
export const COMPANY = { name: "Wrenfield Turf", phone: "815-555-0150" } as const;

/** Creates the company by the one-time link, signs its owner in, and writes down what papers say of it. */
export async function beginCompany(page: Page, office: Office): Promise<void> {
  await page.goto(/http:\/\/\S+/.exec(await office.companyCommand())?.[0] ?? "");
  await fill(page, { "Name of the company": COMPANY.name, "Your name": OWNER.name, "Email address": OWNER.email, Password: OWNER.password });
  await page.getByLabel("State", { exact: true }).selectOption("Illinois");
  await page.getByLabel("Time zone").selectOption("America, Chicago");
  await page.getByText("Certified applicator").click();
  await choose(page, { "State that gave it": "Illinois" });
  await fill(page, { "Number on the license": "DEMO-IL-7001", Category: "Turf" });
  await page.getByLabel("Expires on").fill(DAYS.farAhead);
  await page.getByRole("button", { name: "Create the company" }).click();
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  await signIn(page, office, OWNER.email, OWNER.password);
  await page.getByRole("link", { name: "Settings" }).first().click();
  await page.getByRole("link", { name: "Change the company" }).click();
  await fill(page, { Phone: COMPANY.phone, Address: "4 Grange Road, Crane Grove, IL" });
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByText(COMPANY.phone)).toBeVisible();
  await goTo(page, "Properties");
}
