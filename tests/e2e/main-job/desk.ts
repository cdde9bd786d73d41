import { expect, type Page } from "@playwright/test";
import { DAYS, longDayOf } from "./days";
import { choose, fill, goTo } from "./form";
import { openDay, openVisit } from "./plan";
import { IRON, openProduct } from "./shed";

/** Records the one fill that serves the day's three sprayed visits. */
export async function recordFill(page: Page, gallons: string, fluidOunces: string): Promise<void> {
  await openDay(page);
  await page.getByText(/^Fills? A/).last().click();
  await page.getByRole("link", { name: "Record fill A" }).click();
  await expect(page.getByRole("heading", { name: "Record a fill" })).toBeVisible();
  await expect(page.getByLabel("Gauge before filling")).toHaveValue("0 gal");
  await fill(page, { Day: DAYS.work, "Filled at": "06:50", "Gauge after filling": gallons, [IRON]: fluidOunces, "Where it was mixed": "Wash pad at the shop" });
  await choose(page, { "Products came from": "Shop" });
  await page.getByRole("button", { name: "Read it back" }).click();
  await expect(page.getByText(/The tank held 0 gal before, as in the books, and .+ after\./)).toBeVisible();
  await page.getByRole("button", { name: "Record the fill" }).dblclick();
  await expect(page.getByRole("heading", { name: "Fill 1", exact: true })).toBeVisible();
  await expect(page.getByText(`${gallons} left`).first()).toBeVisible();
}

/** What was said of one mix at the desk. */
interface MixDone {
  readonly mix: string;
  readonly how: "In bags" | "Weighed" | "By the meter" | "As planned, not measured";
  readonly amount?: string;
  readonly fill?: RegExp;
}

interface VisitDone {
  readonly street: string;
  readonly from: string;
  readonly until: string;
  readonly lawns: number;
  readonly mixes: readonly MixDone[];
}

/** Completes a visit at the desk: read back, then written by a button that is pressed twice. */
export async function completeVisit(page: Page, signature: string, { street, from, until, lawns, mixes }: VisitDone): Promise<void> {
  await openVisit(page, street);
  await page.getByRole("link", { name: "Complete the visit" }).first().click();
  await expect(page.getByRole("heading", { name: "Complete the visit" })).toBeVisible();
  await expect(page.getByLabel("Day", { exact: true })).toHaveValue(DAYS.work);
  await fill(page, { Started: from, Ended: until, "Temperature, \u00B0F": "66", "Wind, mph": "5", "Read from": "hand-held meter", Signature: signature });
  await choose(page, { "Wind from": "SW" });
  for (let index = 0; index < lawns; index += 1) await page.getByRole("radio", { name: "Done", exact: true }).nth(index).check();
  for (const { mix, how, amount, fill: drawnFrom } of mixes) {
    const part = page.getByRole("region", { name: mix });
    await part.getByRole("radio", { name: new RegExp(`^${how}`) }).check();
    if (amount !== undefined) await part.getByLabel(/^(?:Gallons sprayed|Amount put down)/).fill(amount);
    if (drawnFrom !== undefined) await part.getByLabel("Drawn from").selectOption({ label: await optionOf(page, drawnFrom) });
  }
  for (const question of ["Is the sign up?", "Was the notice left?"]) await page.getByRole("group", { name: question }).getByRole("radio", { name: "Yes", exact: true }).check();
  await page.getByRole("button", { name: "Read it back" }).click();
  await expect(page.getByRole("heading", { name: "Read it back" })).toBeVisible();
  await page.getByRole("button", { name: "Write the record" }).dblclick();
  await expect(page.getByRole("heading", { name: /^Record \d+$/ })).toBeVisible();
}

async function optionOf(page: Page, words: RegExp): Promise<string> {
  return (await page.getByRole("option", { name: words }).first().textContent()) ?? "";
}

/** The record as it stands in the register: one for each visit, in a whole chain. */
export async function checkRegister(page: Page, count: number): Promise<void> {
  await goTo(page, "Register");
  await expect(page.getByRole("heading", { name: "Register", exact: true })).toBeVisible();
  await expect(page.getByRole("table").getByRole("row")).toHaveCount(count + 1);
}

/** What is left in the tank, under Fills and in the shed. */
export async function checkTank(page: Page, gallonsLeft: string, fluidOuncesLeft: string): Promise<void> {
  await openDay(page);
  await page.getByRole("link", { name: "What is left in the tanks" }).click();
  await expect(page.getByText(`${gallonsLeft} left in`).first()).toBeVisible();
  await expect(page.getByText("as planned, not measured")).toHaveCount(1);
  await openProduct(page, IRON);
  await expect(page.getByText(fluidOuncesLeft).first()).toBeVisible();
}

/** Dips the tank after the day: held against the books, then written once by a button that is pressed twice. */
export async function measureTank(page: Page, person: string): Promise<void> {
  await openDay(page);
  await page.getByRole("link", { name: "What is left in the tanks" }).click();
  await page.getByRole("link", { name: "Write down what a tank holds", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Write down what a tank holds" })).toBeVisible();
  await fill(page, { "Found in it": "2 gal", Day: DAYS.work, "Measured at": "12:05", "With what": "Dipstick" });
  await choose(page, { "Measured by": person });
  await page.getByRole("radio", { name: /^Nobody knows/ }).check();
  await page.getByRole("button", { name: "Hold it against the books" }).click();
  await expect(page.getByText(/it is 0\.46 gal less than the books\..+to count difference/)).toBeVisible();
  await page.getByRole("button", { name: "Write it down" }).dblclick();
  await expect(page.getByText(/^2 gal found on .+ at 12:05 pm by /)).toHaveCount(1);
}

/** Cleans the sprayer out after the day: read back, then written once by a button that is pressed twice. */
export async function recordCleanOut(page: Page, person: string): Promise<void> {
  await openDay(page);
  await page.getByRole("link", { name: "What is left in the tanks" }).click();
  await expect(page.getByText("Not cleaned out since fill 1.")).toBeVisible();
  await page.getByRole("link", { name: "Record a clean-out", exact: true }).click();
  await writeCleanOut(page, person, "12:10", "Three times with 4 gal of water");
  await expect(page.getByText(/^Cleaned out on .+ at 12:10 pm by /)).toHaveCount(1);
}

/** What a sprayer held last nobody knows of a new company, so its first fill waits for a clean-out. */
export async function recordFirstCleanOut(page: Page, person: string, street: string): Promise<void> {
  await openVisit(page, street);
  await page.getByRole("link", { name: "Record a clean-out" }).first().click();
  await writeCleanOut(page, person, "05:40", "Three times with 10 gal of water");
}

async function writeCleanOut(page: Page, person: string, cleanedAt: string, how: string): Promise<void> {
  await expect(page.getByRole("heading", { name: "Record a clean-out" })).toBeVisible();
  await fill(page, { Day: DAYS.work, "Cleaned out at": cleanedAt, "How it was done": how });
  await choose(page, { "Done by": person });
  await page.getByRole("radio", { name: /^Into the shop's rinsate tank/ }).check();
  await page.getByRole("button", { name: "Read it back" }).click();
  await expect(page.getByText(/was cleaned out on .+ by .+The rinsate went into the shop's rinsate tank\./)).toBeVisible();
  await page.getByRole("button", { name: "Record the clean-out" }).dblclick();
  await expect(page.getByRole("heading", { level: 1, name: "Fills" })).toBeVisible();
}

/** The second look stands on the visit's page, three days after the work. */
export async function checkSecondLook(page: Page, street: string): Promise<void> {
  await openVisit(page, street);
  await expect(page.getByText(new RegExp(`Second look.*${longDayOf(DAYS.secondLook)}`)).first()).toBeVisible();
  await page.getByRole("link", { name: "Second look" }).first().click();
  await expect(page.getByText("This is a second look at")).toBeVisible();
}
