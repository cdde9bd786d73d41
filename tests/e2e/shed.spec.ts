import { type Page } from "@playwright/test";
import { choose, fill } from "./main-job/form";
import { addProduct, type ProductToAdd } from "./main-job/shed";
import { expect, signIn, test } from "./office";

/** Goes to the shed by the bar. */
async function openShed(page: Page): Promise<void> {
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "Shed" }).click();
  await expect(page.getByRole("heading", { name: "Shed", exact: true })).toBeVisible();
}

const PRODUCTS: readonly ProductToAdd[] = [
  {
    name: "Brookfield 32-0-0",
    goesOut: "Spread dry",
    countedBy: "Weight",
    choices: { "How it is made": "dry granule", "Kind of work": "fertilizer" },
    facts: {
      Grade: "32-0-0", "Slow-release nitrogen": "slow 50 % of nitrogen", "Name of this use": "Established lawns", "Put down against": "none",
      "On which grasses": "any turfgrass", Rate: "2 to 3 lb per 1,000 sq ft", "People and pets stay off": "until watered in and dry", "Must be watered in": "0.25 in within 2 days",
    },
    readBack: ["Slow: 50 % of the nitrogen.", "Nobody on it until it is watered in and dry again.", "At least \u00BC in of water, by 2 days (48 hours) after the application starts. The label does not say whether rain counts."],
  },
  {
    name: "Rustwater 6-0-0",
    goesOut: "Sprayed",
    countedBy: "Volume",
    choices: { "How it is made": "soluble liquid", "Kind of work": "fertilizer", "Stains walks and drives": "yes" },
    facts: {
      Grade: "6-0-0-10Fe", Density: "10.8 lb per gal", "Name of this use": "Foliar iron", "Put down against": "none", Rate: "1 to 2 fl oz per 1,000 sq ft",
      "Finished spray": "1 to 2 gal per 1,000 sq ft", "Highest temperature": "under 80 \u00B0F", "Must not be watered": "12 hours",
    },
    readBack: ["Only under 80 \u00B0F: 80 \u00B0F itself is too hot.", "No water until 12 hours after the application ends."],
  },
  {
    name: "Harrow 19-0-7",
    goesOut: "Spread dry",
    countedBy: "Weight",
    choices: { "How it is made": "dry granule", "Kind of work": "grassy weed control", "Signal word": "CAUTION" },
    facts: {
      Grade: "19-0-7", "Active ingredients": "Prodiamine; 0.37 %; Group 3 herbicide", "Name of this use": "Crabgrass", "Put down against": "crabgrass",
      Rate: "2.5 to 4 lb per 1,000 sq ft", "Most of an active ingredient": "Prodiamine; 1.5 lb per acre; calendar year", "No seeding for": "4 months",
    },
    readBack: ["Prodiamine: 0.37 % of the weight.", "At most 1\u00BD lb per acre of Prodiamine in a calendar year.", "No seed until 4 months after the day of the application."],
  },
];

test("three products come into the shed, their labels are typed, read back and confirmed, and a delivery is taken in", async ({ page, demonstration }) => {
  test.setTimeout(180_000);
  await signIn(page, demonstration);
  for (const product of PRODUCTS) await addProduct(page, product, "Dana Quill");
  await page.getByRole("link", { name: "Receive", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Receive a delivery" })).toBeVisible();
  await fill(page, { "How many": "12", "One holds": "50 lb", "Lot number": "HR-1001" });
  await choose(page, { "Of what": "bag" });
  await page.getByRole("button", { name: "Take it in" }).click();
  await expect(page.getByText("On hand: 12 bags of 50 lb.")).toBeVisible();
  await openShed(page);
  const row = page.getByRole("row", { name: /Harrow 19-0-7/ });
  await expect(row.getByRole("cell", { name: "12 bags of 50 lb" })).toBeVisible();
  await expect(row.getByRole("cell", { name: "confirmed by Dana Quill" })).toBeVisible();
});

test("ounces without their kind are asked about, and nothing that was typed is lost", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await openShed(page);
  await page.getByRole("link", { name: "Plainleaf Broadleaf Concentrate" }).click();
  await page.getByRole("link", { name: "Add another use" }).click();
  await choose(page, { "Kind of work": "broadleaf weed control" });
  await fill(page, { "Name of this use": "Spots", "Put down against": "dandelion", Rate: "1 oz per 1,000 sq ft" });
  await page.getByRole("button", { name: "Keep this and read it back" }).click();
  await expect(page.getByRole("link", { name: /could be ounces by weight or fluid ounces/ })).toBeVisible();
  await expect(page.getByLabel("Name of this use", { exact: true })).toHaveValue("Spots");
  await page.getByLabel("Rate", { exact: true }).fill("1 fl oz per 1,000 sq ft");
  await page.getByRole("button", { name: "Keep this and read it back" }).click();
  await expect(page.getByText("Exactly 1 fl oz per 1,000 sq ft.")).toBeVisible();
});

test("a technician reads the shed and changes nothing in it", async ({ page, demonstration }) => {
  await signIn(page, demonstration, "lou@tansyhollow.example");
  await openShed(page);
  await expect(page.getByRole("link", { name: "Receive a delivery" })).toHaveCount(0);
  await page.getByRole("link", { name: "Greenmere 32-0-0" }).click();
  await expect(page.getByRole("heading", { name: "Use: Established lawns" })).toBeVisible();
  for (const name of ["Receive", "Move", "Change this use", "Add another use"]) await expect(page.getByRole("link", { name, exact: true })).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Retire this product" })).toHaveCount(0);
  await page.goto(`${demonstration.address}/shed/receive-delivery`);
  await expect(page.getByRole("heading", { name: "Nothing is here" })).toBeVisible();
});
