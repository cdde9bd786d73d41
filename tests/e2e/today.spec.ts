import { type Page } from "@playwright/test";
import { expect, signIn, test } from "./office";

/** A day of next week, as the address writes it: nobody else plans it. */
function dayAhead(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
}

/** The streets of a truck in their order, as each row names itself. */
async function streetsOf(page: Page, truck: string): Promise<readonly string[]> {
  const rows = page.getByRole("list", { name: `Stops of ${truck}` }).getByRole("group", { name: /^Stop \d+:/u });
  const names = await rows.evaluateAll((groups) => groups.map((group) => group.getAttribute("aria-label") ?? ""));
  return names.map((name) => name.replace(/^Stop \d+: /u, ""));
}

test("a truck goes out with six stops, which are put in order, moved, pinned, taken off and brought back", async ({ page, demonstration }) => {
  const date = dayAhead(5);
  await signIn(page, demonstration);
  await page.goto(`${demonstration.address}/today?date=${date}`);
  await expect(page.getByText(/^Nothing is set for/u)).toBeVisible();
  await page.getByRole("link", { name: "Send a truck out" }).click();
  await page.getByLabel("Who applies").selectOption({ label: "Ray Odum" });
  await page.getByRole("button", { name: "Send it out" }).click();
  await expect(page.getByRole("heading", { name: "Truck 1 Ray Odum" })).toBeVisible();

  for (let stop = 1; stop <= 6; stop += 1) {
    await page.getByRole("button", { name: /^Put .+ on the truck$/u }).first().click();
    await expect(page.getByText(`1 truck, ${stop === 1 ? "1 stop" : `${String(stop)} stops`}.`)).toBeVisible();
  }
  await expect(page.getByRole("status").filter({ hasText: "goes last." })).toBeVisible();

  await page.getByRole("link", { name: "Enter the forecast" }).first().click();
  await page.getByLabel("Forecast high, °F").fill("72");
  await page.getByLabel("Where it is from").fill("National Weather Service, 5 am");
  await page.getByRole("button", { name: "Enter it" }).click();
  await expect(page.getByText("Forecast high 72 °F, National Weather Service, 5 am.")).toBeVisible();

  const asPlaced = await streetsOf(page, "Truck 1");
  expect(asPlaced).toHaveLength(6);
  await page.getByRole("button", { name: "Fit again: Truck 1" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Truck 1 is in order." })).toBeVisible();
  expect([...(await streetsOf(page, "Truck 1"))].sort()).toEqual([...asPlaced].sort());
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByRole("status").filter({ hasText: "It is as it was." })).toBeVisible();
  expect(await streetsOf(page, "Truck 1")).toEqual(asPlaced);

  const [first = "", ...others] = asPlaced;
  const row = page.getByRole("group", { name: `: ${first}` });
  await row.getByText(first).first().click();
  await row.getByLabel("Place in the order").fill("6");
  await row.getByRole("button", { name: "Move", exact: true }).click();
  await expect(page.getByRole("status").filter({ hasText: `${first} is moved.` })).toBeVisible();
  expect(await streetsOf(page, "Truck 1")).toEqual([...others, first]);

  // The row has moved and is still open.
  await row.getByRole("button", { name: "Pin to this place" }).click();
  await expect(row.getByRole("button", { name: "Unpin" })).toBeVisible();
  await row.getByRole("button", { name: "Take off" }).click();
  await expect(page.getByText("1 truck, 5 stops.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("1 truck, 6 stops.")).toBeVisible();
  expect(await streetsOf(page, "Truck 1")).toEqual([...others, first]);
});

test("a row opens in place to what goes down, what stands against it and the way to its mix ticket", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await page.goto(`${demonstration.address}/today`);
  const row = page.getByRole("list", { name: "Stops of Truck 1" }).getByRole("group", { name: /^Stop 1:/u });
  await expect(row.getByRole("link", { name: "Mix ticket" })).toBeHidden();
  await row.getByText(/ (am|pm)$/u).first().click();
  await expect(row.getByRole("link", { name: "Mix ticket" })).toHaveAttribute("href", /^\/visits\//u);
  await expect(row.getByRole("link", { name: "Property" })).toHaveAttribute("href", /^\/properties\//u);
  await page.getByText("Loading list").first().click();
  await expect(page.getByText("Chemical-resistant gloves: as each label says").first()).toBeVisible();
});

test("an applicator reads the day and plans nothing; a date that is none is no page", async ({ page, demonstration }) => {
  await signIn(page, demonstration, "ray@tansyhollow.example");
  await page.goto(`${demonstration.address}/today`);
  await expect(page.getByRole("heading", { name: "Truck 1 Ray Odum" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Fit again: Truck 1" })).toHaveCount(0);
  await expect(page.getByRole("link", { name: "Send a truck out" })).toHaveCount(0);
  await page.goto(`${demonstration.address}/today?date=2026-02-31`);
  await expect(page.getByRole("heading", { name: "Nothing is here" })).toBeVisible();
});
