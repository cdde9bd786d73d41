import { expect, type Page } from "@playwright/test";
import { DAYS } from "./days";
import { fill, goTo } from "./form";
import { FEED, PREVENTER } from "./shed";

export const SPRAYER = "60 gal skid";
const SPREADER = "Walk-behind, 80 lb";
const TRUCK = "Truck 3, Brown pickup";

/** A truck with a sprayer and a spreader, what measures, and a calibration of each by a named operator. */
export async function fitOut(page: Page, operator: string): Promise<void> {
  await openGear(page);
  await page.getByRole("link", { name: "Add a truck" }).first().click();
  await fill(page, { Number: "3", Name: "Brown pickup" });
  await page.getByLabel("May carry").fill("2,300 lb");
  await page.getByLabel("Rides along every day").fill("500 lb");
  await page.getByRole("button", { name: "Add the truck" }).click();
  await expect(page.getByRole("heading", { name: TRUCK })).toBeVisible();

  await page.getByRole("link", { name: "Add a sprayer" }).click();
  await page.getByText("Hose and gun", { exact: true }).click();
  await fill(page, { Name: SPRAYER });
  await page.getByLabel("Rides on").selectOption(TRUCK);
  await page.getByLabel("The tank holds").fill("60 gal");
  await page.getByLabel("Pump and hose hold").fill("3 gal");
  await page.getByRole("button", { name: "Add the sprayer" }).click();
  await expect(page.getByRole("heading", { name: SPRAYER })).toBeVisible();
  await calibrateSprayer(page, operator);

  await openGear(page);
  await page.getByRole("link", { name: "Add a spreader" }).click();
  await page.getByText("Broadcast spreader", { exact: true }).click();
  await fill(page, { Name: SPREADER });
  await page.getByLabel("Rides on").selectOption(TRUCK);
  await page.getByLabel("The hopper holds").fill("80 lb");
  await page.getByText("Yes", { exact: true }).click();
  await page.getByRole("button", { name: "Add the spreader" }).click();
  await expect(page.getByRole("heading", { name: SPREADER })).toBeVisible();
  await calibrateSpreader(page, operator, { product: FEED, setting: "M", collected: "1.25 lb\n1.25 lb" });
  await calibrateSpreader(page, operator, { product: PREVENTER, setting: "P", collected: "1.5 lb\n1.5 lb" });

  await addTool(page, "Half-ounce cup", "0.5 fl oz");
  await addTool(page, "Hanging scale", "0.25 lb");
}

async function openGear(page: Page): Promise<void> {
  await goTo(page, "Crew");
  await page.getByRole("link", { name: "Trucks and gear" }).first().click();
  await expect(page.getByRole("heading", { name: "Trucks and gear" })).toBeVisible();
}

/** 3 gal a minute for half a minute on 1,000 sq ft: 1.5 gal. */
async function calibrateSprayer(page: Page, operator: string): Promise<void> {
  await page.getByRole("link", { name: "Calibrate" }).click();
  await page.getByLabel("Who measured").selectOption(operator);
  await page.getByLabel("Measured on").fill(DAYS.measured);
  await page.getByLabel("Tip", { exact: true }).fill("Gun tip, 3 gal a minute");
  await page.getByLabel("Pressure").fill("150");
  await page.getByLabel("Caught").fill("1.5 gal\n1.5 gal");
  await page.getByLabel("Each catch took, in seconds").fill("30");
  await page.getByLabel("Measured area").first().fill("1,000 sq ft");
  await page.getByLabel("Seconds for the measured area").fill("30\n30\n30");
  await page.getByRole("button", { name: "Write the calibration" }).click();
  await expect(page.getByRole("heading", { name: "1\u00BD gal per 1,000 sq ft" })).toBeVisible();
  await expect(page.getByText(`Measured by ${operator}`)).toBeVisible();
}

async function calibrateSpreader(page: Page, operator: string, { product, setting, collected }: { readonly product: string; readonly setting: string; readonly collected: string }): Promise<void> {
  await openGear(page);
  await page.getByRole("link", { name: `Calibrate ${SPREADER}` }).click();
  await page.getByLabel("Who measured").selectOption(operator);
  await page.getByLabel("Measured on").fill(DAYS.measured);
  await page.getByLabel("Product").selectOption(product);
  await page.getByLabel("Setting").fill(setting);
  await page.getByLabel("Test area").fill("1,000 sq ft");
  await page.getByLabel("Collected").fill(collected);
  await page.getByRole("button", { name: "Write the calibration" }).click();
  await expect(page.getByText(`Measured by ${operator}`)).toBeVisible();
}

async function addTool(page: Page, name: string, mark: string): Promise<void> {
  await openGear(page);
  await page.getByRole("link", { name: "Add a measuring tool" }).first().click();
  await fill(page, { Name: name, "One mark": mark });
  await page.getByRole("button", { name: "Add the tool" }).click();
  await expect(page.getByRole("heading", { name: "Trucks and gear" })).toBeVisible();
}
