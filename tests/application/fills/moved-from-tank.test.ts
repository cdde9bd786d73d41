import { expect, test } from "vitest";
import { movedByCleanOuts, movedFromTanks } from "#application/fills/moved-from-tank";
import { of } from "#domain/quantities/quantity";
import { aCleanOut, aSharedFill, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

test("a posting says what left a tank and what came into it, lot by lot; a clean-out of an empty tank says nothing", async () => {
  const { fillId } = await aSharedFill(house, company, day);
  const clean = async (cleanedAt: string) => (await aCleanOut(house, company, day, { cleanedAt })).cleanOutId;
  const [first, again] = [await clean("7:30"), await clean("7:40")];
  const left = { productName: expect.any(String) as string, lotNumber: "IR-1", dimension: "volume", leaves: of("fl oz", 30n).amount };
  expect(await inWorkOf(house, company, (work) => movedByCleanOuts(work, [first, again]))).toEqual(new Map([[first, [left]], [again, []]]));
  const [filled] = await house.ask<{ id: string }>("select stock_posting_id as id from fill where fill_id = $1", [fillId]);
  const id = filled?.id ?? "";
  expect(await inWorkOf(house, company, (work) => movedFromTanks(work, [id]))).toEqual(new Map([[id, [{ ...left, leaves: -left.leaves }]]]));
  expect(await inWorkOf(house, company, (work) => movedFromTanks(work, []))).toEqual(new Map());
});
