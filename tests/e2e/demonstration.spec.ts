import { type Page } from "@playwright/test";
import { dayThatIsOver, expect, test } from "./office";

// The demonstration as somebody walks through it who looks and changes nothing: every place has a past and a future,
// and each thing leads to the next. What the browser's console complains of fails a test (see office.ts).

test.use({ storageState: async ({ owner }, use) => { await use(owner.storageState); } });

async function goTo(page: Page, place: string): Promise<void> {
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: place, exact: true }).click();
  // The page before may have fields of the same names.
  await expect(page).toHaveURL(new RegExp(`/${place.toLowerCase()}$`));
}

test("from a day that is over to a visit, its mix ticket, its record, its papers and the chain of the register", async ({ page, demonstration }) => {
  await page.goto(demonstration.address);
  await goTo(page, "Today");
  await page.getByLabel("Another day").fill(dayThatIsOver());
  await page.getByRole("button", { name: "Go", exact: true }).click();
  const stop = page.getByRole("list", { name: "Stops of Truck 1" }).locator("> li").first();
  await stop.locator("summary").first().click();
  await expect(stop.getByText(/Written: record \d+\./)).toBeVisible();
  await stop.getByRole("link", { name: /^Mix ticket/ }).click();

  await expect(page.getByRole("region", { name: "What to put down" }).getByRole("table").first()).toBeVisible();
  await page.getByRole("link", { name: /^Mix ticket \d+$/ }).click();
  await expect(page.getByRole("button", { name: "Print", exact: true })).toBeVisible();
  await page.goBack();
  await page.getByRole("link", { name: /^Record \d+$/ }).click();
  await expect(page.getByText("Yes: its hash is that of what stands here")).toBeVisible();
  await page.getByRole("link", { name: "Print the record" }).click();
  await expect(page.getByRole("button", { name: "Print", exact: true })).toBeVisible();
  await goTo(page, "Register");
  await expect(page.getByText("The last hash is")).toBeVisible();
  expect(await page.getByRole("table").getByRole("row").count()).toBeGreaterThan(10);
  await page.getByRole("link", { name: "Rules on file" }).click();
  await expect(page.getByRole("region", { name: "Illinois" })).toBeVisible();
});

test("the day's papers and its tanks", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/today?date=${dayThatIsOver()}`);
  await page.getByRole("link", { name: "Print Truck 1" }).click();
  await expect(page.getByRole("button", { name: "Print the packet" })).toBeVisible();
  await page.goto(`${demonstration.address}/fills`);
  await expect(page.getByRole("heading", { name: /^Fill \d+$/ }).first()).toBeVisible();
});

test("a property has what was put down and what is to come", async ({ page, demonstration, owner }) => {
  await page.goto(demonstration.address + owner.recordPath);
  await page.getByRole("link", { name: "First feed" }).click();
  await expect(page.getByRole("region", { name: "What and where" })).toBeVisible();
  await page.getByRole("main").getByRole("link").first().click();
  await expect(page.getByRole("region", { name: "Put down" }).getByRole("link").first()).toBeVisible();
  await page.getByRole("region", { name: "Next" }).getByRole("link").first().click();
  await expect(page.getByRole("region", { name: "Findings" })).toBeVisible();
});

test("a program with its rounds, done and still to come, and its counts by property", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/programs`);
  await page.getByRole("link", { name: "Cool-season lawns" }).click();
  await expect(page.getByRole("row", { name: /First feed/ })).toContainText("done");
  await expect(page.getByRole("row", { name: /Third feed/ })).toContainText("waiting");
  await page.getByRole("link", { name: "Third feed" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
});

test("the shed's product has lots and movements in and out, with whom and when", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/shed`);
  await page.getByRole("link", { name: "Greenmere 32-0-0" }).click();
  const movements = page.getByRole("region", { name: "Movements" });
  await expect(movements.getByText("Received").first()).toBeVisible();
  await expect(movements.getByText("Put down").first()).toBeVisible();
});

test("the crew has licenses that stand and that ran out; the gear leads to its calibrations", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/crew`);
  await page.getByRole("link", { name: "Ray Odum" }).first().click();
  await expect(page.getByText("DEMO-IN-2207", { exact: true })).toBeVisible();
  await goTo(page, "Crew");
  await page.getByRole("link", { name: "Trucks and gear" }).first().click();
  await page.getByRole("link", { name: "100 gal tank with hose reel", exact: true }).click();
  const table = page.getByRole("region", { name: "All calibrations" });
  await table.getByRole("link").first().click();
  await expect(page.getByText(/^Measured by /)).toBeVisible();
});

test("no link of the places leads nowhere", async ({ page, demonstration }) => {
  const found = new Set<string>();
  for (const place of ["/today", `/today?date=${dayThatIsOver()}`, "/properties", "/programs", "/shed", "/crew", "/crew/gear", "/fills", "/register", "/settings", "/contents"]) {
    await page.goto(demonstration.address + place);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    const hrefs = await page.getByRole("link").evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
    // Of many rows of one kind a few say what all would.
    const kinds = new Map<string, number>();
    for (const href of hrefs.filter((one) => one.startsWith("/"))) {
      const kind = href.replaceAll(/[0-9a-f-]{36}/g, "id");
      const seen = kinds.get(kind) ?? 0;
      if (seen < 3) found.add(href);
      kinds.set(kind, seen + 1);
    }
  }
  for (const href of found) {
    const answer = await page.request.get(demonstration.address + href);
    expect(answer.status(), href).toBe(200);
  }
});
