import { expect, test } from "vitest";
import { filledMixOf, filledOntoOf } from "#application/fills/filled-onto";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { of } from "#domain/quantities/quantity";
import { aCompany } from "../../support/crew";
import { aCleanOut, aFill, aJug, inWorkOf } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";
import { aLiquid } from "../../support/shed";

eachOnACrewDay("not-known");

const fill = (filledAt: string, products?: Record<string, string>) => aFill(house, company, day, [], { filledAt, ...(products === undefined ? {} : { products }) });
const cleanOut = (cleanedAt: string) => aCleanOut(house, company, day, { cleanedAt });
const ontoOf = async (...fillIds: readonly string[]) => [...(await inWorkOf(house, company, (work) => filledOntoOf(work, fillIds))).values()].map(({ onto }) => onto);

test("a tank's first fill went onto nobody knows what, and so did all that followed it", async () => {
  const [first, second] = [await fill("7:00"), await fill("7:30")];
  const known = { name: `fill ${String(first.number)}`, finished: of("gal", 40n), products: [{ productId: day.ironId, amount: of("fl oz", 30n) }] };
  expect(await ontoOf(first.fillId, second.fillId)).toMatchObject([["unknown"], [known, "unknown"]]);
});

test("a clean-out between two fills, or in the minute of the later one, makes it one onto a clean tank", async () => {
  const [first, second] = [await fill("7:00"), await fill("7:30")];
  await cleanOut("7:00");
  expect(await ontoOf(first.fillId, second.fillId)).toMatchObject([[], [{ name: `fill ${String(first.number)}` }]]);
  await cleanOut("7:30");
  expect(await ontoOf(second.fillId)).toEqual([[]]);
});

test("all fills since the last clean-out count, of each product the latest that had it, the latest first", async () => {
  const dockId = await aLiquid(house, company);
  await aJug(house, company, day, dockId);
  const ofDock = (filledAt: string) => fill(filledAt, { [dockId]: "10 fl oz" });
  await ofDock("6:40");
  await cleanOut("6:50");
  const [dock, iron, again, last] = [await ofDock("7:00"), await fill("7:10"), await fill("7:20"), await fill("7:30")];
  const names = async (fillId: string) => (await ontoOf(fillId)).map((onto) => onto.map((one) => (one === "unknown" ? one : one.name)));
  expect(await names(last.fillId)).toEqual([[`fill ${String(again.number)}`, `fill ${String(dock.number)}`]]);
  expect(await names(iron.fillId)).toEqual([[`fill ${String(dock.number)}`]]);
  await cleanOut("7:15");
  expect(await names(last.fillId)).toEqual([[`fill ${String(again.number)}`]]);
});

test("no fills, and those of another company, are none", async () => {
  const { fillId } = await fill("7:00");
  expect(await ontoOf()).toEqual([]);
  const other = await aCompany(house);
  expect((await inWorkOf(house, other, (work) => filledOntoOf(work, [fillId]))).size).toBe(0);
});

test("a product whose label nobody has read counts as one without a known label", async () => {
  const { fillId } = await fill("7:00");
  const mix = await inWorkOf(house, company, async (work) => {
    const [only] = (await fillsInBooks(work, await work.tx.fill.findMany({ where: { fillId } }))).values();
    if (only === undefined) throw new Error("The fill is on file.");
    return filledMixOf(only, new Map());
  });
  expect(mix.products).toMatchObject([{ productId: day.ironId, label: "unknown" }]);
});
