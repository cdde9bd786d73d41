import { randomUUID } from "node:crypto";
import pg from "pg";
import { goTo } from "./main-job/form";
import { expect, type Office, signIn, test } from "./office";

const PRODUCT = "Plain Oats 18-0-4";

/** Writes a granular product into the demonstration's books, for a spreader to be calibrated with. */
async function addProduct(office: Office): Promise<void> {
  const owner = new pg.Client({ connectionString: office.database.ownerUrl });
  await owner.connect();
  await owner.query(
    `insert into product (company_id, product_id, name, form, counted_by, created_at)
     select company_id, $1, $2, 'granular', 'mass', now() from company`,
    [randomUUID(), PRODUCT],
  );
  await owner.end();
}

test("a truck with a sprayer, calibrated by a named operator: the arithmetic is shown, and the crew sees how it stands", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await goTo(page, "Crew");
  await page.getByRole("link", { name: "Trucks and gear" }).first().click();
  await page.getByRole("link", { name: "Add a truck" }).click();
  await page.getByLabel("Number").fill("7");
  await page.getByLabel("Name").fill("Red pickup");
  await page.getByLabel("May carry").fill("1,400");
  await page.getByRole("button", { name: "Add the truck" }).click();
  await expect(page.getByRole("link", { name: /"1,400" has no unit/ })).toBeVisible();
  await page.getByLabel("May carry").fill("1,400 lb");
  await page.getByRole("button", { name: "Add the truck" }).click();
  await expect(page.getByRole("heading", { name: "Truck 7, Red pickup" })).toBeVisible();

  await page.getByRole("link", { name: "Add a sprayer" }).click();
  await page.getByText("Hose and gun", { exact: true }).click();
  await page.getByLabel("Name").fill("50 gal skid");
  await page.getByLabel("Rides on").selectOption("Truck 7, Red pickup");
  await page.getByLabel("The tank holds").fill("50 gal");
  await page.getByText("Work it out from the hose").click();
  await page.getByLabel("Length of the hose").fill("300 ft");
  await page.getByLabel("Inner diameter of the hose").fill("1/2 in");
  await page.getByLabel("The pump holds").fill("0 gal");
  await page.getByRole("button", { name: "Add the sprayer" }).click();
  await expect(page.getByRole("heading", { name: "50 gal skid" })).toBeVisible();
  await expect(page.getByText("pump and hose hold 3.06 gal")).toBeVisible();
  await expect(page.getByText("Nobody has calibrated it yet.")).toBeVisible();

  await page.getByRole("link", { name: "Calibrate" }).click();
  await page.getByLabel("Who measured").selectOption("Lou Parrish");
  await page.getByLabel("Tip", { exact: true }).fill("Gun tip, 4 gal a minute");
  await page.getByLabel("Pressure").fill("150");
  await page.getByLabel("Caught").fill("2 gal\n2 gal");
  await page.getByLabel("Each catch took, in seconds").fill("30");
  await page.getByLabel("Measured area").first().fill("1,000 sq ft");
  await page.getByLabel("Seconds for the measured area").fill("29\n30\n31");
  await page.getByRole("button", { name: "Write the calibration" }).click();
  await expect(page.getByRole("heading", { name: "2 gal per 1,000 sq ft" })).toBeVisible();
  await expect(page.getByText("4 gal a minute for 30 s is 2 gal.")).toBeVisible();
  await page.getByRole("link", { name: "50 gal skid" }).click();
  const row = page.getByRole("region", { name: "Whose figures hold today" }).getByRole("row", { name: /Lou Parrish/ });
  await expect(row).toContainText("2 gal per 1,000 sq ft");
  await expect(row).toContainText("good for 365 days");
});

test("a spreader is calibrated for one product by a technician, for themselves", async ({ page, demonstration }) => {
  await addProduct(demonstration);
  await signIn(page, demonstration, "lou@tansyhollow.example");
  await page.goto(`${demonstration.address}/crew/gear`);
  await expect(page.getByRole("link", { name: "Add a spreader" })).toHaveCount(0);
  await page.getByRole("link", { name: "Calibrate Push spreader, 80 lb" }).click();
  await expect(page.getByLabel("Who measured")).toHaveCount(0);
  await page.getByLabel("Product").selectOption(PRODUCT);
  await page.getByLabel("Setting").fill("N");
  await page.getByLabel("Test area").fill("1,000 sq ft");
  await page.getByLabel("Collected").fill("2.9 lb\n3.1 lb");
  await page.getByRole("button", { name: "Write the calibration" }).click();
  await expect(page.getByRole("heading", { name: "3 lb per 1,000 sq ft" })).toBeVisible();
  await expect(page.getByText(`Measured by Lou Parrish`)).toBeVisible();
  await page.getByRole("link", { name: "Push spreader, 80 lb" }).click();
  await expect(page.getByRole("region", { name: "All calibrations" }).getByRole("row", { name: new RegExp(PRODUCT) })).toContainText("3 lb per 1,000 sq ft");
});

test("a calibration that ran out, and a tip that was changed, want care", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await page.goto(`${demonstration.address}/crew/gear`);
  await page.getByRole("link", { name: "Backpack, gray", exact: true }).click();
  await expect(page.getByText("The calibration of Backpack, gray by Ray Odum has run out.")).toBeVisible();
  await page.goto(`${demonstration.address}/crew/gear`);
  await page.getByRole("link", { name: "100 gal tank with hose reel", exact: true }).click();
  await expect(page.getByText("by Mina Feld is of another tip or pressure.")).toBeVisible();
});
