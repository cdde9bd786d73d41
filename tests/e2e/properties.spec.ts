import { type Browser } from "@playwright/test";
import { expect, expectAccessible, type Office, type SignedIn, test } from "./office";

test.use({ storageState: async ({ owner }, use) => { await use(owner.storageState); } });

const HEADS = "Customer,Phone,Street,City,State,ZIP,Lawn size,Grass,Mowing day,Gate,Dog";

/** A list with three faults: a size of two meanings, a ZIP code that lost a digit, a grass that could be two. */
function listOf(road: string): string {
  return [
    HEADS,
    `Wanda Perl,219-555-0171,1 ${road},Tansy Hollow,IN,46307,"8,500 sq ft",KBG,Tue,36 in,no`,
    `Wanda Perl,219-555-0171,3 ${road},Tansy Hollow,IN,46307,1/4 acre,KBG,Tue,,no`,
    `Otis Grange,219-555-0172,5 ${road},Tansy Hollow,IN,4630,8500,tall fescue,Wed,,Rex`,
    `Petra Lund,219-555-0173,7 ${road},Tansy Hollow,IN,46307,12k sq ft?,fescue,,,`,
  ].join("\n");
}

test("a list is brought: its columns are offered, its faults shown by cell, edited row by row, and all of it imported once", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/properties`);
  await page.getByRole("link", { name: "Import a list" }).click();
  await page.getByLabel("Or paste the list").fill(listOf("Cinder Path"));
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByLabel("Lawn size", { exact: false })).toHaveValue("6");
  await page.getByRole("button", { name: "Read the rows" }).click();

  await expect(page.getByText("3 rows need another look.")).toBeVisible();
  const lot = page.getByRole("region", { name: "Row 3: Wanda Perl, 3 Cinder Path" });
  await expect(lot.getByText("Is that the whole lot, or the turf alone?")).toBeVisible();
  await lot.getByText("The whole lot", { exact: true }).click();
  await lot.getByRole("button", { name: "Check row 3" }).click();
  await expect(lot).toHaveCount(0);

  const zip = page.getByRole("region", { name: "Row 4: Otis Grange, 5 Cinder Path" });
  await zip.getByLabel("ZIP").fill("46307");
  const size = page.getByRole("region", { name: "Row 5: Petra Lund, 7 Cinder Path" });
  await size.getByLabel("Grass").fill("tall fescue?");
  await zip.getByRole("button", { name: "Check row 4" }).click();
  await expect(zip).toHaveCount(0);
  await expect(size.getByLabel("Grass")).toHaveValue("tall fescue?");
  await size.getByLabel("Lawn size").fill("12,000 sq ft");
  await size.getByRole("button", { name: "Check row 5" }).click();

  await expect(page.getByText("All 4 rows are ready.")).toBeVisible();
  await expectAccessible(page);
  await page.getByRole("button", { name: "Import all 4" }).click();
  await page.getByLabel("Find by name, street or phone").fill("Cinder Path");
  await expect(page.getByText("4 of")).toBeVisible();
  await page.getByRole("link", { name: "3 Cinder Path" }).click();
  await expect(page.getByText("No lawn is measured yet. Draw it, or type its sides.")).toBeVisible();
  await expect(page.getByText(/The lot is 10,890 sq ft/)).toBeVisible();
  await expect(page.getByRole("link", { name: "1 Cinder Path, Tansy Hollow" })).toBeVisible();
});

test("a lawn is measured by widths along a line, a bed is cut out, water and a tested station are added, and the page narrows to the lawn", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/properties/add-client`);
  await page.getByLabel("Customer").fill("Bram Osgood");
  await page.getByLabel("Street").fill("40 Kiln Yard");
  await page.getByLabel("Town").fill("Tansy Hollow");
  await page.getByLabel("ZIP code").fill("46307");
  await page.getByRole("button", { name: "Add the customer" }).click();
  await expect(page.getByRole("heading", { name: "40 Kiln Yard" })).toBeVisible();

  await page.getByRole("link", { name: "Type its sides" }).click();
  await page.getByRole("link", { name: "Widths along a line" }).click();
  await expect(page.getByLabel("From one width to the next")).toBeVisible();
  await page.getByLabel("Name of the lawn").fill("Back");
  await page.getByLabel("Grass, most of it").selectOption("tall fescue");
  await page.getByLabel("From one width to the next").fill("10 ft");
  await page.getByLabel("Widths, in their order").fill("20, 24");
  await page.getByRole("button", { name: "Add the lawn" }).click();
  await expect(page.getByText("220 sq ft, measured in one piece").first()).toBeVisible();

  await page.getByRole("link", { name: "Measure again" }).click();
  await page.getByLabel("Widths, in their order").fill("20, 24, 20, wide");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByRole("link", { name: /wide/ })).toBeVisible();
  await page.getByLabel("Widths, in their order").fill("20, 24, 20");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByText("440 sq ft, measured in one piece").first()).toBeVisible();

  await page.getByRole("link", { name: "Cut out a bed or drive" }).click();
  await page.getByLabel("Name").fill("asters");
  await page.getByLabel("Length").fill("8");
  await page.getByLabel("Width").fill("5");
  await page.getByRole("button", { name: "Cut it out" }).click();
  await expect(page.getByText("400 sq ft, measured in 2 pieces").first()).toBeVisible();
  await expect(page.getByRole("cell", { name: "less 40 sq ft" })).toBeVisible();

  await page.getByRole("link", { name: "Add water" }).click();
  await page.getByLabel("What water it is").fill("Pond");
  await page.getByLabel("Length along the lawn").fill("12 ft");
  await page.getByLabel("Kept clear").fill("10");
  await page.getByRole("button", { name: "Add the water" }).click();
  await expect(page.getByText("Pond: 10 ft kept clear along 12 ft").first()).toBeVisible();

  await page.getByRole("link", { name: "All lawns" }).click();
  await page.getByRole("link", { name: "Add a station" }).click();
  await page.getByLabel("Name").fill("Back rotors");
  await page.getByText("A Back", { exact: true }).click();
  await page.getByLabel("Depth in each can").fill("0.2, 0.24, 0.28, 0.24");
  await page.getByRole("button", { name: "Add the station" }).click();
  await expect(page.getByRole("link", { name: "Give how many whole minutes the station ran." })).toBeVisible();
  await page.getByLabel("Minutes it ran").fill("20");
  await page.getByLabel("Tested on").fill("2026-04-02");
  await page.getByRole("button", { name: "Add the station" }).click();
  await expect(page.getByRole("cell", { name: "0.72 in per hour" })).toBeVisible();
  await expect(page.getByRole("cell", { name: "DU 83%, CU 92%" })).toBeVisible();
  await expect(page.getByText("The wind was not taken during the can test of station 1 Back rotors.")).toBeVisible();
  await page.getByRole("link", { name: "A Back" }).click();
  await expect(page.getByText("Only A Back is shown.")).toBeVisible();

  await page.getByRole("link", { name: "Add seed or sod" }).click();
  await page.getByText("Overseeding of a lawn that stands").click();
  await page.getByText("Slit seeded").click();
  await page.getByLabel("On", { exact: true }).fill("2026-04-03");
  await page.getByText("Done", { exact: true }).click();
  await page.getByRole("button", { name: "Add it" }).click();
  await expect(page.getByRole("cell", { name: "Overseeding of a lawn that stands, slit seeded" })).toBeVisible();
  await page.getByRole("link", { name: "Apr 3, 2026" }).click();
  await page.getByText("Broadcast", { exact: true }).click();
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByRole("cell", { name: "Overseeding of a lawn that stands, broadcast" })).toBeVisible();
  await expectAccessible(page);
});

test("the property at the pond shows its plan, its gate code behind one press, and its stations", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/properties`);
  await page.getByRole("link", { name: "7 Heron Court" }).click();
  await expect(page.getByText("4471")).toBeHidden();
  await page.getByText("Show gate code").click();
  await expect(page.getByText("4471")).toBeVisible();
  await expect(page.getByRole("figure").filter({ hasText: "along the water are kept clear" })).toBeVisible();
  await expect(page.getByRole("cell", { name: /in per hour/ })).toHaveCount(2);
  await page.getByRole("link", { name: "B Back, to the pond" }).click();
  await expect(page.getByText("Only B Back, to the pond is shown.")).toBeVisible();
});

async function withoutScripts(browser: Browser, owner: SignedIn) {
  const context = await browser.newContext({ javaScriptEnabled: false, storageState: owner.storageState });
  return { page: await context.newPage(), close: () => context.close() };
}

async function importWithoutScripts(browser: Browser, owner: SignedIn, { address }: Office) {
  const { page, close } = await withoutScripts(browser, owner);
  await page.goto(`${address}/properties/import-customers`);
  await page.getByLabel("Or paste the list").fill(`${HEADS}\nNell Ferris,219-555-0181,9 Tollgate,Tansy Hollow,IN,4630,,,,,`);
  await page.getByRole("button", { name: "Read the list" }).click();
  await page.getByRole("button", { name: "Read the rows" }).click();
  await page.getByRole("region", { name: "Row 2: Nell Ferris, 9 Tollgate" }).getByLabel("ZIP").fill("46307");
  await page.getByRole("button", { name: "Check row 2" }).click();
  await page.getByRole("button", { name: "Import this row" }).click();
  await expect(page.getByRole("link", { name: "9 Tollgate" })).toBeVisible();
  await close();
}

test("the import works without scripts", async ({ browser, owner, demonstration }) => {
  await importWithoutScripts(browser, owner, demonstration);
});
