import { expect, type Locator, type Page } from "@playwright/test";

/** A label as a whole, with or without the word that it may stay empty. */
function labelled(label: string): RegExp {
  return new RegExp(`^${label.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&")}( \\(optional\\))?$`);
}

/** Fills fields by their labels. */
export async function fill(page: Page | Locator, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(fields)) await page.getByLabel(labelled(label)).fill(text);
}

/** Chooses by the words that a person reads. */
export async function choose(page: Page | Locator, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, word] of Object.entries(fields)) await page.getByLabel(labelled(label)).selectOption({ label: word });
}

/** Goes to one of the office's places by the bar. */
export async function goTo(page: Page, place: string): Promise<void> {
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: place, exact: true }).click();
  // The page before may have fields of the same names.
  await expect(page).toHaveURL(new RegExp(`/${place.toLowerCase()}$`));
}

/** A property's page, found by its street. */
export async function openProperty(page: Page, street: string): Promise<void> {
  await goTo(page, "Properties");
  await page.getByLabel("Find by name, street or phone").fill(street);
  await page.getByRole("link", { name: street }).first().click();
}
