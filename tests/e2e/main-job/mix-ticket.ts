import { expect, type Page } from "@playwright/test";
import { LISTED, listedSquareFeet, streetOf } from "./customers";
import { BACK_SPRAYED_SQ_FT, BACK_SPREAD_SQ_FT, feedPounds, finishedGallons, FRONT_SQ_FT, ironFluidOunces, minutesForQuarterInch, NITROGEN_POUNDS, STATIONS } from "./figures";
import { POND_STREET } from "./ground";
import { enterForecast, openVisit } from "./plan";
import { FEED, IRON, receive } from "./shed";

const FRACTIONS: Readonly<Record<string, string>> = { "0": "", "0.25": "\u00BC", "0.5": "\u00BD", "0.75": "\u00BE" };

/** 3.25 as it is written: 3¼. */
function written(amount: number): string {
  const whole = Math.floor(amount);
  return `${whole === 0 ? "" : String(whole)}${FRACTIONS[String(amount - whole)] ?? `.${String(amount).split(".")[1] ?? ""}`}`;
}

/** At a forecast of 84 °F the label's limit holds and the mix ticket can't be issued; at 72 it can, but for the stock. */
export async function judgeHeat(page: Page): Promise<void> {
  await enterForecast(page, "84");
  await openVisit(page, POND_STREET);
  await expect(page.getByText(`Too hot for ${IRON} that day.`).first()).toBeVisible();
  await expect(page.getByRole("button", { name: "Issue the mix ticket" })).toHaveAttribute("aria-disabled", "true");
  await enterForecast(page, "72");
  await openVisit(page, POND_STREET);
  await expect(page.getByText(`Too hot for ${IRON} that day.`)).toHaveCount(0);
}

/** One bag is not enough: the hold says so, more is received, the hold is gone. */
export async function receiveMore(page: Page): Promise<void> {
  const short = `Not enough ${FEED} is on hand.`;
  await openVisit(page, POND_STREET);
  await expect(page.getByText(short).first()).toBeVisible();
  await receive(page, { product: FEED, count: "12", container: "bag", size: "10 lb", lot: "MG-2" });
  await openVisit(page, POND_STREET);
  await expect(page.getByText(short)).toHaveCount(0);
}

/** The quantities on the page are those of the arithmetic, and Illinois's distance to water is in them. */
export async function checkQuantities(page: Page): Promise<void> {
  await openVisit(page, POND_STREET);
  const spread = page.getByRole("table", { name: `${FEED} by lawn` });
  const [front, back] = [feedPounds(FRONT_SQ_FT), feedPounds(BACK_SPREAD_SQ_FT)];
  await expect(spread.getByRole("row", { name: /A Front/ })).toContainText(`${written(front)} lb`);
  await expect(spread.getByRole("row", { name: /B Back/ })).toContainText(`${BACK_SPREAD_SQ_FT.toLocaleString("en-US")} sq ft`);
  await expect(spread.getByRole("row", { name: /B Back/ })).toContainText(`${written(back)} lb`);
  const sprayed = FRONT_SQ_FT + BACK_SPRAYED_SQ_FT;
  const spray = page.getByRole("table", { name: "Finished spray by lawn" });
  await expect(spray.getByRole("row", { name: /B Back/ })).toContainText(`${BACK_SPRAYED_SQ_FT.toLocaleString("en-US")} sq ft`);
  await expect(page.getByText(`${written(ironFluidOunces(sprayed))} fl oz in all`)).toBeVisible();
  await expect(page.getByText(`${written(finishedGallons(sprayed))} gal`, { exact: true }).filter({ visible: true }).first()).toBeVisible();
  await page.getByText(/^\d+ notes?$/).click();
  await expect(page.getByText("Keep 15 ft clear of Pond.")).toBeVisible();
}

/** The leaf stays dry for 12 hours; then each station runs the minutes that its tested rate makes of a quarter inch. */
export async function checkAftercare(page: Page): Promise<void> {
  const aftercare = page.getByRole("region", { name: "Aftercare" });
  await expect(aftercare.getByText(/12 hours/).first()).toBeVisible();
  for (const [index, { name, depths, ranMinutes }] of STATIONS.entries()) {
    await expect(aftercare.getByText(`${String(index + 1)} ${name}: ${String(minutesForQuarterInch(depths, ranMinutes))} min`).first()).toBeVisible();
  }
}

/** Issues the mix ticket of a visit and answers with what it says of itself. */
export async function issueMixTicket(page: Page, street: string, number: number): Promise<void> {
  await openVisit(page, street);
  await page.getByRole("button", { name: "Issue the mix ticket" }).click();
  await expect(page.getByText(`Mix ticket ${String(number)}`).first()).toBeVisible();
  await expect(page.getByText("It still says what would be issued now.")).toBeVisible();
}

/** 2.5 lb per 1,000 sq ft of a product of 32 % bring 0.8 lb of nitrogen. */
export async function checkNitrogen(page: Page): Promise<void> {
  await openVisit(page, streetOf(LISTED.feed));
  const nutrients = page.getByRole("table", { name: "Nutrients per 1,000 sq ft treated" });
  await expect(nutrients.getByRole("row").nth(1)).toContainText(`${String(NITROGEN_POUNDS)} lb`);
  await expect(page.getByRole("table", { name: `${FEED} by lawn` }).getByRole("row").nth(1)).toContainText(`${written(feedPounds(listedSquareFeet(LISTED.feed)))} lb`);
}
