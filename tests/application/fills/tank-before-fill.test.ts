import { expect, test } from "vitest";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { tankBeforeFill } from "#application/fills/tank-before-fill";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { valueOf } from "../../support/crew";
import { aCleanOut, aFill, aRecord, aSharedFill, CREW_DAY, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const books = (minute: number) => inWorkOf(house, company, (work) => tankBeforeFill(work, day.sprayerId, new Date(instantOfMinute(CREW_DAY as CalendarDate, minute, work.company.timeZone))));
const at = async (minute: number) => (await books(minute)).inTheBooks;
const measure = async (readAt: string, volume: string, missingWent: "loss" | "" = "") =>
  valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { readAt, volume, missingWent })));

test("the fills up to that minute and no later one, as they were found the last time before it, and nothing after a clean-out", async () => {
  expect(await at(435)).toEqual(of("gal", 0n));
  await aFill(house, company, day);
  await aFill(house, company, day, [], { filledAt: "7:45", gaugeBefore: "36", gaugeAfter: "56" });
  expect(await at(434)).toEqual(of("gal", 0n));
  expect(await at(435)).toEqual(of("gal", 40n));
  await measure("7:30", "36", "loss");
  expect(await at(449)).toEqual(of("gal", 40n));
  expect(await at(450)).toEqual(of("gal", 36n));
  expect(await at(465)).toEqual(of("gal", 56n));
  await aCleanOut(house, company, day, { cleanedAt: "8:00" });
  expect(await at(479)).toEqual(of("gal", 56n));
  expect(await at(480)).toEqual(of("gal", 0n));
});

test("of a tank without a fill on file what was found in it", async () => {
  await measure("7:00", "12");
  expect(await at(419)).toEqual(of("gal", 0n));
  expect(await at(420)).toEqual(of("gal", 12n));
});

test("the streets of visits of the fills below are named until their records are there", async () => {
  const { visits, fillId } = await aSharedFill(house, company, day);
  expect((await books(434)).openStreets).toEqual([]);
  expect(await books(539)).toMatchObject({ inTheBooks: of("gal", 40n), movedSince: of("gal", 40n) });
  expect((await books(539)).openStreets).toHaveLength(3);
  const [visit] = visits;
  if (visit === undefined) throw new Error("the fill serves three visits");
  await aRecord(house, company.owner, visit, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "9.5", fillId } } });
  expect((await books(539)).openStreets).toHaveLength(2);
});
