import { afterAll, beforeAll, expect, test } from "vitest";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany } from "../../support/crew";
import { aCrewDay, aRecord, aSharedFill, type CrewDay, inWorkOf } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";
import { lotOf } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
let day: CrewDay;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  day = await aCrewDay(house, company);
});
afterAll(() => house.close());

test("a fill has what went into its tank, lot by lot, and what was drawn since; an unknown one is left out", async () => {
  const { visits, fillId, number } = await aSharedFill(house, company, day);
  const atHand = async () => inWorkOf(house, company, (work) => fillsAtHand(work, [fillId, house.newId()], house.now()));
  const lotId = await lotOf(house, day.ironId);
  const [tank] = await house.ask<{ id: string }>("select stock_location_id as id from stock_location where kind = 'tank' and equipment_id = $1", [day.sprayerId]);
  const full = {
    ...{ fillId, number, mixingPlace: "Shop yard", isSettledSince: false, sources: [{ stockLocationId: tank?.id, upTo: null }], finished: of("gal", 40n), drawn: of("gal", 0n) },
    lots: [{ lotId, amount: of("fl oz", "30").amount }],
    productOfLot: new Map([[lotId, day.ironId]]),
    numberOfLot: new Map([[lotId, "IR-1"]]),
  };
  expect(await atHand()).toEqual(new Map([[fillId, full]]));
  const [first, second] = visits;
  for (const [visit, amount, hour] of [[first, "13 gal", "5"], [second, "9.5 gal", "6"]] as const) {
    if (visit === undefined) throw new Error("three visits share the fill");
    await aRecord(house, company.owner, visit, { startedAt: `${hour}:00`, endedAt: `${hour}:30`, mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount, fillId } } });
  }
  expect(await atHand()).toEqual(new Map([[fillId, { ...full, drawn: of("gal", "22.5") }]]));
});

test("nothing asked is nothing answered, and another company's fill is not at hand", async () => {
  const { fillId } = await aSharedFill(house, company, day);
  const other = await aCompany(house, "Other Turf");
  expect(await inWorkOf(house, other, (work) => fillsAtHand(work, [fillId], house.now()))).toEqual(new Map());
  expect(await inWorkOf(house, company, (work) => fillsAtHand(work, [], house.now()))).toEqual(new Map());
});
