import { expect, type Page } from "@playwright/test";
import { POND_ROW, streetOf } from "./customers";
import { DAYS } from "./days";
import { BACK_SQ_FT, FRONT_SQ_FT, OFFSETS, POND_FT, STATIONS } from "./figures";
import { fill, openProperty } from "./form";

export const POND_STREET = streetOf(POND_ROW);

function squareFeet(area: number): string {
  return `${area.toLocaleString("en-US")} sq ft`;
}

/** Measures the property at the pond: two lawns, a bed, the water, when water may run, and two tested stations. */
export async function measureGround(page: Page): Promise<void> {
  await openProperty(page, POND_STREET);
  await measureFront(page);
  await measureBack(page);
  await page.getByRole("link", { name: "Change", exact: true }).first().click();
  await fill(page, { "Water may run from": "04:00", "Water may run until": "09:00" });
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByRole("heading", { name: POND_STREET })).toBeVisible();
  for (const station of STATIONS) await addStation(page, station);
}

async function measureFront(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Type its sides" }).click();
  await page.getByRole("link", { name: "Widths along a line" }).click();
  await expect(page.getByLabel("From one width to the next")).toBeVisible();
  await page.getByLabel("Name of the lawn").fill("Front");
  await page.getByLabel("Grass, most of it").selectOption("tall fescue");
  await page.getByLabel("None: somebody looked").check();
  await page.getByLabel("From one width to the next").fill(`${String(OFFSETS.step)} ft`);
  await page.getByLabel("Widths, in their order").fill(OFFSETS.widths.join(", "));
  await page.getByRole("button", { name: "Add the lawn" }).click();
  await expect(page.getByText(`${squareFeet(FRONT_SQ_FT)}, measured in one piece`).first()).toBeVisible();
  await page.getByRole("link", { name: "All lawns" }).click();
}

async function measureBack(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Measure a lawn" }).click();
  await page.getByLabel("Name of the lawn").fill("Back");
  await page.getByLabel("Grass, most of it").selectOption("tall fescue");
  await page.getByLabel("Length", { exact: true }).fill("100 ft");
  await page.getByLabel("Width", { exact: true }).fill("60 ft");
  await page.getByRole("button", { name: "Add the lawn" }).click();
  await page.getByRole("link", { name: "Cut out a bed or drive" }).click();
  await page.getByLabel("Name").fill("hydrangeas");
  await page.getByLabel("Length", { exact: true }).fill("20");
  await page.getByLabel("Width", { exact: true }).fill("10");
  await page.getByRole("button", { name: "Cut it out" }).click();
  await expect(page.getByText(`${squareFeet(BACK_SQ_FT)}, measured in 2 pieces`).first()).toBeVisible();
  await page.getByRole("link", { name: "Add water" }).click();
  await fill(page, { "What water it is": "Pond", "Kept clear": "10" });
  await page.getByLabel("Length along the lawn").fill(`${String(POND_FT)} ft`);
  await page.getByRole("button", { name: "Add the water" }).click();
  await expect(page.getByText(`Pond: 10 ft kept clear along ${String(POND_FT)} ft`).first()).toBeVisible();
  await page.getByRole("link", { name: "All lawns" }).click();
}

async function addStation(page: Page, { name, lawn, depths, ranMinutes }: (typeof STATIONS)[number]): Promise<void> {
  await page.getByRole("link", { name: "Add a station" }).click();
  await page.getByLabel("Name").fill(name);
  await page.getByText(lawn, { exact: true }).click();
  await page.getByLabel("Depth in each can").fill(depths.join(", "));
  await page.getByLabel("Minutes it ran").fill(String(ranMinutes));
  await page.getByLabel("Tested on").fill(DAYS.measured);
  await page.getByRole("button", { name: "Add the station" }).click();
  await expect(page.getByRole("cell", { name: /in per hour/ })).toHaveCount(STATIONS.findIndex((one) => one.name === name) + 1);
}

/** The lawns of a brought list came without a word on water, which holds where label or law keep a product clear of it. */
export async function sayNoWater(page: Page, streets: readonly string[]): Promise<void> {
  for (const street of streets) {
    await openProperty(page, street);
    await page.getByRole("button", { name: "Somebody looked: no water beside them" }).click();
    await expect(page.getByRole("cell", { name: /no water/ }).first()).toBeVisible();
  }
}
