import { expect, test } from "vitest";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aCrewDay, aRecord, aSharedFill, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { lotOf } from "../../support/shed";

allOnACrewDay();

test("a fill has what went into its tank, lot by lot, and what was drawn since; an unknown one is left out", async () => {
  const { visits, fillId, number } = await aSharedFill(house, company, day);
  const atHand = async () => inWorkOf(house, company, (work) => fillsAtHand(work, [fillId, house.newId()], house.now()));
  const lotId = await lotOf(house, day.ironId);
  const [tank] = await house.ask<{ id: string }>("select stock_location_id as id from stock_location where kind = 'tank' and equipment_id = $1", [day.sprayerId]);
  const full = {
    ...{ fillId, number, mixingPlace: "Shop yard", fillRestId: null, sources: [{ stockLocationId: tank?.id, upTo: null }], finished: of("gal", 40n), drawn: of("gal", 0n) },
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

test("for a visit from before a reading a fill gives what was missing then; for one from after it what was found", async () => {
  const own = await aCompany(house, "Measured Turf");
  const itsDay = await aCrewDay(house, own);
  const { fillId } = await aSharedFill(house, own, itsDay);
  const atHand = async (endedAt: string) => (await inWorkOf(house, own, (work) => fillsAtHand(work, [fillId], new Date(endedAt)))).get(fillId);
  const read = async (readAt: string, volume: string, missingWent: "loss" | "count-difference") => valueOf(await recordTankReading(house, own.owner.key, tankReadingForm(house, itsDay, own.owner.personId, { readAt, volume, missingWent })));
  const locations = await house.ask<{ kind: string; id: string }>("select kind, stock_location_id as id from stock_location where company_id = $1", [own.companyId]);
  const idOf = async (kind: string) => locations.find((one) => one.kind === kind)?.id ?? (await house.ask<{ id: string }>("select stock_location_id as id from stock_location where company_id = $1 and kind = $2", [own.companyId, kind]))[0]?.id;
  await read("7:30", "34", "loss");
  expect(await atHand("2026-04-14T11:30:00Z")).toMatchObject({ fillRestId: expect.any(String) as string, drawn: of("gal", 0n), sources: [{ stockLocationId: await idOf("loss"), upTo: of("gal", 6n) }, { stockLocationId: await idOf("count-difference"), upTo: null }] });
  expect(await atHand("2026-04-14T11:31:00Z")).toMatchObject({ fillRestId: null, drawn: of("gal", 6n), sources: [{ stockLocationId: await idOf("tank"), upTo: null }] });
  await read("7:40", "30", "count-difference");
  // The first reading after the visit is the one that it explains.
  expect((await atHand("2026-04-14T11:20:00Z"))?.sources[0]).toEqual({ stockLocationId: await idOf("loss"), upTo: of("gal", 6n) });
  expect((await atHand("2026-04-14T11:40:00Z"))?.sources).toEqual([{ stockLocationId: await idOf("count-difference"), upTo: null }]);
});
