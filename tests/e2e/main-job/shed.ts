import { expect, type Page } from "@playwright/test";
import { DAYS } from "./days";
import { choose, fill, goTo } from "./form";

export const FEED = "Marlgate 32-0-0";
export const IRON = "Copperfen 6-0-0";
export const PREVENTER = "Hedgeward 19-0-7";

const SILENT = {
  "Lowest temperature": "none", "Highest temperature afterwards": "none", "Lowest wind": "none", "Heavy rain that would wash it away": "none",
  "Not when the soil is": "frozen, saturated", "On which grasses": "any turfgrass", "No mowing before": "none", "Sign that the label asks for": "none",
  "Not while something blooms": "none", "Kept apart from other products": "none", "Distance to water": "none", "Most applications": "none",
} as const;

const SPREAD = { ...SILENT, Density: "none", "Finished spray": "none", "Highest temperature": "none", "Highest wind": "none", "Must stay without rain": "none", "Must not be watered": "none", "Rain that spoils it": "none", "No mowing after": "until watered in" } as const;
const NO_PESTICIDE = { "EPA registration number": "none", "Active ingredients": "none", "Most of an active ingredient": "none", "Put down against": "none" } as const;
const CHOSEN = { "Restricted use": "no", "The leaf must be": "dry", "The soil must be": "none: the label says nothing" } as const;
const NO_WORD = { "Signal word": "none: the label says nothing" } as const;

/** What a person reads on a container, field by field. */
export interface ProductToAdd {
  readonly name: string;
  readonly goesOut: "Spread dry" | "Sprayed";
  readonly countedBy: "Weight" | "Volume";
  readonly choices: Readonly<Record<string, string>>;
  readonly facts: Readonly<Record<string, string>>;
  /** Sentences of the reading back. */
  readonly readBack: readonly string[];
}

const PRODUCTS: readonly ProductToAdd[] = [
  {
    name: FEED,
    goesOut: "Spread dry",
    countedBy: "Weight",
    choices: { "How it is made": "dry granule", "Kind of work": "fertilizer", "Stains walks and drives": "no", ...CHOSEN, ...NO_WORD },
    facts: {
      ...SPREAD, ...NO_PESTICIDE, Grade: "32-0-0", "Slow-release nitrogen": "slow 50 % of nitrogen", "Name of this use": "Established lawns", Rate: "2 to 3 lb per 1,000 sq ft",
      "Least time between two applications": "28 days", "People and pets stay off": "until watered in and dry", "Must be watered in": "0.25 in within 2 days, rain counts",
      "Not on new seed for": "none", "No seeding for": "none",
    },
    readBack: ["Slow: 50 % of the nitrogen.", "Nobody on it until it is watered in and dry again."],
  },
  {
    name: IRON,
    goesOut: "Sprayed",
    countedBy: "Volume",
    choices: { "How it is made": "soluble liquid", "Kind of work": "fertilizer", "Stains walks and drives": "yes", ...CHOSEN, ...NO_WORD },
    facts: {
      ...SILENT, ...NO_PESTICIDE, Grade: "6-0-0-10Fe", "Slow-release nitrogen": "none", Density: "10.8 lb per gal", "Name of this use": "Foliar iron", Rate: "1 to 2 fl oz per 1,000 sq ft",
      "Finished spray": "1 to 2 gal per 1,000 sq ft", "Droplet class of the spray": "none", "Least time between two applications": "14 days", "Highest temperature": "under 80 \u00B0F", "Highest wind": "10 mph",
      "Must stay without rain": "12 hours", "People and pets stay off": "until dry", "Must not be watered": "12 hours", "Must be watered in": "none",
      "Rain that spoils it": "any rain within 12 hours", "No mowing after": "24 hours", "Not on new seed for": "none", "No seeding for": "none",
    },
    readBack: ["Only under 80 \u00B0F: 80 \u00B0F itself is too hot.", "No water until 12 hours after the application ends."],
  },
  {
    name: PREVENTER,
    goesOut: "Spread dry",
    countedBy: "Weight",
    choices: { "How it is made": "dry granule", "Kind of work": "grassy weed control", "Stains walks and drives": "yes", "Signal word": "CAUTION", ...CHOSEN },
    facts: {
      ...SPREAD, "EPA registration number": "DEMO-0000-71", "Active ingredients": "Prodiamine; 0.37 %; Group 3 herbicide", Grade: "19-0-7", "Slow-release nitrogen": "slow 25 % of nitrogen",
      "Name of this use": "Crabgrass", "Put down against": "crabgrass", Rate: "2.5 to 4 lb per 1,000 sq ft", "Least time between two applications": "60 days",
      "Most of an active ingredient": "Prodiamine; 1.5 lb per acre; calendar year", "People and pets stay off": "until watered in and dry", "Must be watered in": "0.5 in within 8 hours, rain counts",
      "Not on new seed for": "60 days", "No seeding for": "4 months",
    },
    readBack: ["Prodiamine: 0.37 % of the weight.", "No seed until 4 months after the day of the application."],
  },
];

/** Adds a product, types its label from the container, reads it back and confirms it. */
export async function addProduct(page: Page, product: ProductToAdd, confirmer: string): Promise<void> {
  await goTo(page, "Shed");
  await page.getByRole("link", { name: "Add a product" }).first().click();
  await page.getByLabel("Name", { exact: true }).fill(product.name);
  await page.getByText(product.goesOut, { exact: true }).click();
  await page.getByText(product.countedBy, { exact: true }).click();
  await page.getByRole("button", { name: "Add the product" }).click();
  await expect(page.getByRole("heading", { name: "Enter the label" })).toBeVisible();
  await choose(page, product.choices);
  await fill(page, product.facts);
  await page.getByRole("button", { name: "Keep this and read it back" }).click();
  await expect(page.getByRole("heading", { name: "Hold every line against the container" })).toBeVisible();
  for (const sentence of product.readBack) await expect(page.getByText(sentence, { exact: true })).toBeVisible();
  await page.getByRole("button", { name: "Every line agrees with the container" }).click();
  await expect(page.getByRole("heading", { name: product.name })).toBeVisible();
  await expect(page.getByText(new RegExp(`held against the container by ${confirmer}`))).toBeVisible();
}

/** Types three labels from their containers, reads each back and confirms it, and takes a delivery of each in. */
export async function fillShed(page: Page, confirmer: string): Promise<void> {
  for (const product of PRODUCTS) await addProduct(page, product, confirmer);
  await receive(page, { product: FEED, count: "1", container: "bag", size: "10 lb", lot: "MG-1", expires: DAYS.farAhead });
  await receive(page, { product: IRON, count: "2", container: "jug", size: "2.5 gal", lot: "CF-1" });
  await receive(page, { product: PREVENTER, count: "4", container: "bag", size: "50 lb", lot: "HW-1" });
}

interface DeliveryToTakeIn {
  readonly product: string;
  readonly count: string;
  readonly container: "bag" | "jug";
  readonly size: string;
  readonly lot: string;
  readonly expires?: string;
}

/** Takes a delivery in, from the product's page. */
export async function receive(page: Page, { product, count, container, size, lot, expires = "" }: DeliveryToTakeIn): Promise<void> {
  await openProduct(page, product);
  await page.getByRole("link", { name: "Receive", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Receive a delivery" })).toBeVisible();
  await fill(page, { "How many": count, "One holds": size, "Lot number": lot, "Expires on": expires });
  await page.getByLabel("Came on").fill(DAYS.measured);
  await choose(page, { "Of what": container });
  await page.getByRole("button", { name: "Take it in" }).click();
  await expect(page.getByRole("heading", { name: product })).toBeVisible();
}

/** A product's page, from the shed. */
export async function openProduct(page: Page, product: string): Promise<void> {
  await goTo(page, "Shed");
  await page.getByRole("link", { name: product, exact: true }).first().click();
  await expect(page.getByRole("heading", { name: product })).toBeVisible();
}
