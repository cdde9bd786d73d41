import { expect, type Locator, type Page } from "@playwright/test";
import { DAYS } from "./days";
import { choose, fill, goTo, openProperty } from "./form";
import { FEED, IRON, PREVENTER } from "./shed";

interface Task {
  readonly use: string;
  readonly rate: string;
  readonly reason: string;
}

export const TASKS = {
  feed: { use: `${FEED}: Established lawns (2 to 3 lb per 1,000 sq ft)`, rate: "2.5 lb/1,000 sq ft", reason: "feed" },
  iron: { use: `${IRON}: Foliar iron (1 to 2 fl oz per 1,000 sq ft)`, rate: "1.5 fl oz/1,000 sq ft", reason: "color" },
  preventer: { use: `${PREVENTER}: Crabgrass (2\u00BD to 4 lb per 1,000 sq ft)`, rate: "3 lb/1,000 sq ft", reason: "crabgrass" },
} as const satisfies Readonly<Record<string, Task>>;

interface VisitToPlan {
  readonly street: string;
  readonly name: string;
  readonly tasks: readonly Task[];
  /** Days after which somebody looks again; empty for nobody. */
  readonly secondLook?: string;
}

/** Plans one visit from its property's page. */
export async function planVisit(page: Page, { street, name, tasks, secondLook = "" }: VisitToPlan): Promise<void> {
  await openProperty(page, street);
  await page.getByRole("link", { name: "Add one visit" }).first().click();
  await expect(page.getByRole("heading", { name: "Add one visit" })).toBeVisible();
  await fill(page, { Name: name, "Opens on": DAYS.work, "Closes on": DAYS.windowEnds, "Second look after": secondLook });
  for (const [row, { use, rate, reason }] of tasks.entries()) {
    if (row > 0) await page.getByText("Second task, if there is one").click();
    await page.getByLabel("Product and use").nth(row).selectOption({ label: use });
    await page.getByLabel("Rate", { exact: true }).nth(row).fill(rate);
    await page.getByLabel("Reason").nth(row).fill(reason);
  }
  await page.getByRole("button", { name: "Plan the visit" }).click();
  await expect(page.getByRole("heading", { name: street, level: 1 })).toBeVisible();
  await expect(page.getByRole("link", { name, exact: true })).toBeVisible();
}

/** The day of the work on the place Today. */
export async function openDay(page: Page): Promise<void> {
  await goTo(page, "Today");
  await page.getByLabel("Another day").fill(DAYS.work);
  await page.getByRole("button", { name: "Go", exact: true }).click();
  await expect(page.getByLabel("Another day")).toHaveValue(DAYS.work);
}

/** Sends the truck out on the day and says where the shop is. */
export async function sendOut(page: Page, truck: string, operator: string): Promise<void> {
  await openDay(page);
  await page.getByRole("link", { name: "Send a truck out" }).click();
  await choose(page, { Truck: truck, "Who applies": operator });
  await page.getByLabel("Back by").fill("18:00");
  await page.getByRole("button", { name: "Send it out" }).click();
  await page.getByRole("link", { name: "Say where the shop is" }).click();
  await page.getByLabel("ZIP code of the shop").fill("60417");
  await page.getByRole("button", { name: "Set the place" }).click();
  await expect(page.getByLabel("Another day")).toBeVisible();
  await openDay(page);
  await expect(page.getByRole("heading", { name: "Truck 3" })).toBeVisible();
}

/** The stops of the truck in their order. */
export function stopsOf(page: Page): Locator {
  return page.getByRole("list", { name: "Stops of Truck 3" }).locator("> li");
}

/** Puts the visits of these streets on the truck and fits them into an order. */
export async function fillDay(page: Page, streets: readonly string[]): Promise<void> {
  for (const [index, street] of streets.entries()) {
    await page.getByRole("button", { name: `Put ${street} on the truck` }).click();
    await expect(stopsOf(page)).toHaveCount(index + 1);
  }
  await page.getByRole("button", { name: "Fit again: Truck 3" }).click();
  await expect(page.getByText("Truck 3 is in order.")).toBeVisible();
}

/** Enters the day's forecast high, or changes it. */
export async function enterForecast(page: Page, high: string): Promise<void> {
  await openDay(page);
  await page.getByRole("link", { name: /^(?:Enter|Change) the forecast$/ }).first().click();
  await page.getByLabel("Forecast high, \u00B0F").fill(high);
  await page.getByLabel("Where it is from").fill("the county airport's forecast, 5 am");
  await page.getByRole("button", { name: "Enter it" }).click();
  await expect(page.getByText(`Forecast high ${high} \u00B0F`)).toBeVisible();
}

/** A visit's page, from its stop on the day. */
export async function openVisit(page: Page, street: string): Promise<void> {
  await openDay(page);
  const stop = stopsOf(page).filter({ hasText: street });
  await stop.getByText(street).first().click();
  await stop.getByRole("link", { name: /^Mix ticket/ }).click();
  await expect(page.getByRole("heading", { name: street, level: 1 })).toBeVisible();
}
