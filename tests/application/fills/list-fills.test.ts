import { expect, test } from "vitest";
import { listFills } from "#application/fills/list-fills";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aCleanOut, aRecord, aSharedFill } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

async function tankOfDay() {
  const { tanks } = valueOf(await listFills(house, company.owner.key, {}));
  const tank = tanks.find(({ equipmentId }) => equipmentId === day.sprayerId);
  if (tank === undefined) throw new Error("the tank of the day is among the tanks");
  return tank;
}

test("a fill says what went in, who drew what, and what is left of it", async () => {
  const { visits, fillId, number } = await aSharedFill(house, company, day);
  const [visit] = visits;
  if (visit === undefined) throw new Error("the fill serves three visits");
  const mixes = { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "9.5", fillId } } as const;
  const record = await aRecord(house, company.owner, visit, { mixes });
  const tank = await tankOfDay();
  const [fill] = tank.fills;
  expect(fill).toMatchObject({ fillId, number, filledOn: "2026-04-14", mixingPlace: "Shop yard", finished: of("gal", 40n), left: of("gal", "30.5"), findings: [] });
  expect(fill?.products.map(({ productId, amount }) => [productId, amount])).toEqual([[day.ironId, of("fl oz", 30n)]]);
  expect(fill?.draws).toMatchObject([{ visitId: visit.visitId, registerEntryId: record.registerEntryId, recordNumber: record.number, volume: of("gal", "9.5"), isMeasured: true }]);
  // 9.5 of 40 gal are 7.125 of 30 fl oz.
  expect(fill?.draws[0]?.products).toMatchObject([{ productId: day.ironId, amount: of("fl oz", "7.125") }]);
  expect(tank.left).toEqual(of("gal", "30.5"));
  // The other two visits of the fill are not recorded.
  expect(tank.openStreets).toHaveLength(2);
});

test("more drawn than went in is said with what to do about it, and nothing is left", async () => {
  const { visits, fillId } = await aSharedFill(house, company, day);
  const [visit] = visits;
  if (visit === undefined) throw new Error("the fill serves three visits");
  await aRecord(house, company.owner, visit, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "43", fillId } } });
  const fill = (await tankOfDay()).fills.find((one) => one.fillId === fillId);
  expect(fill).toMatchObject({ left: of("gal", 0n), findings: [{ rule: "fill-does-not-add-up", figure: "The difference is 3 gal." }] });
});

test("the newest fill stands first, and only the tanks of the truck asked for", async () => {
  const { fills } = await tankOfDay();
  expect(fills.map(({ number }) => number)).toEqual(fills.map(({ number }) => number).toSorted((one, other) => other - one));
  expect(valueOf(await listFills(house, company.owner.key, { vehicleId: day.vehicleId })).tanks.map(({ equipmentId }) => equipmentId)).toEqual([day.sprayerId]);
  expect(valueOf(await listFills(house, company.owner.key, { vehicleId: house.newId() })).tanks).toEqual([]);
});

test("a tank says when it was cleaned out, and whether it was filled since", async () => {
  const cleanOut = (cleanedAt: string) => aCleanOut(house, company, day, { cleanedAt });
  const { fills } = await tankOfDay();
  expect(await tankOfDay()).toMatchObject({ cleanOut: null, isClean: false, lastFillNumber: fills[0]?.number });
  const earlier = await cleanOut("7:00");
  expect(await tankOfDay()).toMatchObject({ cleanOut: earlier, isClean: false });
  const later = await cleanOut("7:30");
  expect(await tankOfDay()).toMatchObject({ cleanOut: { ...later, doneBy: company.owner.name, rinsate: "into the shop's rinsate tank" }, isClean: true });
});

test("another company sees none of it", async () => {
  const other = await aCompany(house);
  expect(valueOf(await listFills(house, other.owner.key, {})).tanks).toEqual([]);
});
