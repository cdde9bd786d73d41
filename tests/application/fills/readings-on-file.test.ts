import { expect, test } from "vitest";
import { listFills } from "#application/fills/list-fills";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { readingsOnFile } from "#application/fills/readings-on-file";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aCleanOut, aFill, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

const read = async (readAt: string, volume: string, missingWent: "loss" | "" = "") =>
  valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { readAt, volume, missingWent }))).tankReadingId;

test("no reading on file is none", async () => {
  expect(await inWorkOf(house, company, (work) => readingsOnFile(work, []))).toEqual(new Map());
});

test("the newest stands first, each with the gallons since the one before it; a clean-out begins anew", async () => {
  const first = await read("7:00", "2");
  // A fill of the reading's minute came after it.
  await aFill(house, company, day, [], { filledAt: "7:00" });
  const second = await read("7:10", "30", "loss");
  const third = await read("7:20", "31");
  await aCleanOut(house, company, day);
  const fourth = await read("7:40", "0");
  const { tanks } = valueOf(await listFills(house, company.owner.key, {}));
  const readings = tanks.find(({ equipmentId }) => equipmentId === day.sprayerId)?.readings;
  expect(readings?.map(({ tankReadingId, sinceLast }) => [tankReadingId, sinceLast])).toEqual([
    [fourth, null],
    [third, { byReading: "more than before", byRecords: of("gal", 0n) }],
    [second, { byReading: of("gal", 12n), byRecords: of("gal", 0n) }],
    [first, null],
  ]);
  expect(readings?.[2]).toMatchObject({ readOn: "2026-04-14", readBy: company.owner.name, how: "Dipstick", missingWent: "loss", volume: of("gal", 30n), inTheBooks: of("gal", 40n), moved: [{ leaves: of("fl oz", "7.5").amount }] });
});
