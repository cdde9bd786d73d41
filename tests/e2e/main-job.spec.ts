import { type Page } from "@playwright/test";
import { beginCompany, COMPANY, OWNER } from "./main-job/begin";
import { importCustomers, LISTED, streetOf } from "./main-job/customers";
import { checkRegister, checkSecondLook, checkTank, completeVisit, measureTank, recordCleanOut, recordFill, recordFirstCleanOut } from "./main-job/desk";
import { fitOut } from "./main-job/gear";
import { measureGround, POND_STREET, sayNoWater } from "./main-job/ground";
import { checkAftercare, checkNitrogen, checkQuantities, issueMixTicket, judgeHeat, receiveMore } from "./main-job/mix-ticket";
import { printed } from "./main-job/papers";
import { fillDay, openDay, openVisit, planVisit, sendOut, stopsOf, TASKS } from "./main-job/plan";
import { FEED, fillShed, IRON, openProduct, PREVENTER } from "./main-job/shed";
import { expect, type Office, test } from "./office";

// The test is as long as the job. A control that is missing ends it sooner than its own limit would.
test.use({ actionTimeout: 20_000 });

const STREETS = {
  longIron: streetOf(LISTED.longIron), shortIron: streetOf(LISTED.shortIron), preventer: streetOf(LISTED.preventer), feed: streetOf(LISTED.feed), largeFeed: streetOf(LISTED.largeFeed),
} as const;

async function planTheDay(page: Page): Promise<void> {
  await planVisit(page, { street: POND_STREET, name: "Feed and iron", tasks: [TASKS.feed, TASKS.iron], secondLook: "3" });
  for (const street of [STREETS.longIron, STREETS.shortIron]) await planVisit(page, { street, name: "Iron", tasks: [TASKS.iron] });
  await planVisit(page, { street: STREETS.preventer, name: "Preventer", tasks: [TASKS.preventer] });
  for (const street of [STREETS.feed, STREETS.largeFeed]) await planVisit(page, { street, name: "Feed", tasks: [TASKS.feed] });
  await sendOut(page, "Truck 3, Brown pickup", OWNER.name);
  await fillDay(page, [POND_STREET, ...Object.values(STREETS)]);
}

/** Iron wants a dry leaf for 12 hours and the preventer water within 8: the labels leave no time in common, whatever the hours. */
async function planWhatCannotBe(page: Page): Promise<void> {
  await planVisit(page, { street: POND_STREET, name: "Preventer with iron", tasks: [TASKS.preventer, TASKS.iron] });
  await page.getByRole("link", { name: "Preventer with iron", exact: true }).click();
  await expect(page.getByText(new RegExp(`${IRON}.* must stay dry longer than ${PREVENTER}.* can wait for water\\.`)).first()).toBeVisible();
  await expect(page.getByRole("button", { name: "Issue the mix ticket" })).toHaveAttribute("aria-disabled", "true");
}

async function workAtTheDesk(page: Page): Promise<void> {
  const fill = /^Fill 1 of /;
  await recordFill(page, "38 gal", "38 fl oz");
  await completeVisit(page, OWNER.name, {
    street: POND_STREET, from: "08:00", until: "08:45", lawns: 2,
    mixes: [{ mix: FEED, how: "Weighed", amount: "16.25 lb" }, { mix: IRON, how: "By the meter", amount: "9.2", fill }],
  });
  await completeVisit(page, OWNER.name, { street: STREETS.longIron, from: "09:10", until: "09:50", lawns: 1, mixes: [{ mix: IRON, how: "By the meter", amount: "16.5 gal", fill }] });
  await completeVisit(page, OWNER.name, { street: STREETS.shortIron, from: "10:10", until: "10:35", lawns: 1, mixes: [{ mix: IRON, how: "As planned, not measured", fill }] });
  await completeVisit(page, OWNER.name, { street: STREETS.feed, from: "11:00", until: "11:20", lawns: 1, mixes: [{ mix: FEED, how: "In bags", amount: "1\u00BC bags" }] });
  await checkRegister(page, 4);
  // As planned is what the ground takes: 6,560 sq ft at 1.5 gal per 1,000 are 9.84 gal, whatever the gauge's marks.
  await checkTank(page, "2.46 gal", "2.46 fl oz");
  await openProduct(page, FEED);
  const lots = page.getByRole("table", { name: "Lots on hand, the first to expire first" });
  await expect(lots.getByRole("row", { name: /MG-1/ })).toHaveCount(0);
  await expect(lots.getByRole("row", { name: /MG-2/ })).toContainText("10 bags of 10 lb and 1\u00BC lb");
  await checkSecondLook(page, POND_STREET);
}

async function printPapers(page: Page, office: Office): Promise<void> {
  await openDay(page);
  await page.getByRole("link", { name: "Print Truck 3" }).click();
  const sheet = await printed(page, office, "Route sheet only");
  for (const street of [POND_STREET, ...Object.values(STREETS)]) expect(sheet).toContain(street);
  const paperOf = async (link: RegExp | string) => {
    await openVisit(page, POND_STREET);
    await page.getByRole("link", { name: link }).last().click();
    return await printed(page, office, "Print");
  };
  const ticket = await paperOf(/^Mix ticket \d+$/);
  for (const words of [FEED, IRON, "3\u00BC lb", "13 lb", OWNER.name]) expect(ticket).toContain(words);
  const notice = await paperOf("Notice for the customer");
  for (const words of [COMPANY.name, COMPANY.phone, POND_STREET, FEED, IRON]) expect(notice).toContain(words);
  const sign = await paperOf("Posting sign");
  for (const words of ["LAWN CARE APPLICATION", "STAY OFF GRASS UNTIL DRY", COMPANY.name.toUpperCase(), COMPANY.phone]) expect(sign).toContain(words);
  await openVisit(page, POND_STREET);
  await page.getByRole("link", { name: /^Record \d+$/ }).click();
  await page.getByRole("link", { name: "Print the record" }).click();
  const record = await printed(page, office, "Print");
  for (const words of [POND_STREET, FEED, "16\u00BC lb", "DEMO-IL-7001"]) expect(record).toContain(words);
}

test("the whole job of a season's day, from an empty company to the printed record", async ({ page, emptyOffice }) => {
  test.setTimeout(900_000);
  await test.step("the company is created and its owner signs in", () => beginCompany(page, emptyOffice));
  await test.step("a customer list is brought and mended", () => importCustomers(page));
  await test.step("a property at a pond is measured", () => measureGround(page));
  await test.step("three labels are typed and confirmed, stock comes in lots", () => fillShed(page, OWNER.name));
  await test.step("truck, sprayer, spreader and tools, calibrated by name", () => fitOut(page, OWNER.name));
  await test.step("six visits are planned and stand on one day in order", () => planTheDay(page));
  await test.step("the loading list stands under the day", async () => {
    await expect(stopsOf(page)).toHaveCount(6);
    await page.getByText("Loading list", { exact: true }).click();
    await expect(page.getByRole("listitem").filter({ hasText: PREVENTER }).filter({ hasText: "lot HW-1" }).first()).toBeVisible();
  });
  await test.step("the forecast's heat holds, and a cooler day does not", () => judgeHeat(page));
  await test.step("short stock holds until more is received", () => receiveMore(page));
  await test.step("the quantities are those of the arithmetic", async () => {
    await checkQuantities(page);
    await checkAftercare(page);
    await checkNitrogen(page);
  });
  await test.step("what two labels leave no time for is held by both names", () => planWhatCannotBe(page));
  await test.step("a tank of which nobody knows what it held is cleaned out first", () => recordFirstCleanOut(page, OWNER.name, STREETS.longIron));
  await test.step("somebody looked: no water beside the lawns of the list", () => sayNoWater(page, [STREETS.longIron, STREETS.shortIron, STREETS.feed]));
  await test.step("mix tickets are issued", async () => {
    for (const [index, street] of [POND_STREET, STREETS.longIron, STREETS.shortIron, STREETS.feed].entries()) await issueMixTicket(page, street, index + 1);
  });
  await test.step("one fill, four records, stock down by lot", () => workAtTheDesk(page));
  await test.step("its tank is dipped, and the books follow what was found", () => measureTank(page, OWNER.name));
  await test.step("the sprayer is cleaned out, which its tank says from then on", () => recordCleanOut(page, OWNER.name));
  await test.step("papers are printed", () => printPapers(page, emptyOffice));
});
