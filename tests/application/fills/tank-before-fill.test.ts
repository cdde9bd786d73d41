import { expect, test } from "vitest";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { tankBeforeFill } from "#application/fills/tank-before-fill";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { valueOf } from "../../support/crew";
import { aCleanOut, aFill, CREW_DAY, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const at = (minute: number) => inWorkOf(house, company, (work) => tankBeforeFill(work, day.sprayerId, new Date(instantOfMinute(CREW_DAY as CalendarDate, minute, work.company.timeZone))));
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
