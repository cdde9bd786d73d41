import { expect, test } from "vitest";
import { filledMixOf, filledOntoOf } from "#application/fills/filled-onto";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { of } from "#domain/quantities/quantity";
import { aCompany } from "../../support/crew";
import { aCleanOut, aFill, inWorkOf } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const fill = (filledAt: string) => aFill(house, company, day, [], { filledAt });
const cleanOut = (cleanedAt: string) => aCleanOut(house, company, day, { cleanedAt });
const ontoOf = async (...fillIds: readonly string[]) => [...(await inWorkOf(house, company, (work) => filledOntoOf(work, fillIds))).values()].map(({ onto }) => onto);

test("a tank's first fill went onto nobody knows what, and the next one onto it", async () => {
  const [first, second] = [await fill("7:00"), await fill("7:30")];
  expect(await ontoOf(first.fillId, second.fillId)).toMatchObject(["unknown", { name: `fill ${String(first.number)}`, finished: of("gal", 40n), products: [{ productId: day.ironId, amount: of("fl oz", 30n) }] }]);
});

test("a clean-out between two fills, or in the minute of the later one, makes it one onto a clean tank", async () => {
  const [first, second] = [await fill("7:00"), await fill("7:30")];
  await cleanOut("7:00");
  expect(await ontoOf(first.fillId, second.fillId)).toMatchObject(["clean", { name: `fill ${String(first.number)}` }]);
  await cleanOut("7:30");
  expect(await ontoOf(second.fillId)).toEqual(["clean"]);
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
