import { expect, test } from "vitest";
import { fillsRead, leftNow, openVisits } from "#application/days/left-in-fills";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aCleanOut, aFill, aRecord, aSharedFill, CREW_DAY, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const MARK = of("gal", "0.1");
const read = (visitIds: readonly string[] = []) => inWorkOf(house, company, (work) => fillsRead(work, visitIds, MARK));
const dip = async (readAt: string, volume: string) => valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { readAt, volume, missingWent: "count-difference" })));

/** What is left of a fill when a day is planned that none of its visits is on, unless they are named. */
const left = (fillId: string, date = "2026-04-16", visitIds: readonly string[] = []) =>
  inWorkOf(house, company, async (work) => {
    const fill = (await fillsInBooks(work, await work.tx.fill.findMany({ where: { fillId } }))).get(fillId);
    if (fill === undefined) throw new Error("The fill is on file.");
    return leftNow(fill, { timeZone: work.company.timeZone, day: { date: date as CalendarDate, visitIds }, open: await openVisits(work, fill.row.plannedVisitIds), isBesideReading: false, mark: MARK });
  });

test("a visit that nobody has recorded may have taken something, unless it is of the day itself or of a later one", async () => {
  const { visits, fillId } = await aSharedFill(house, company, day);
  const visitIds = visits.map(({ visitId }) => visitId);
  expect(await left(fillId)).toBe("unknown");
  expect(await left(fillId, CREW_DAY, visitIds)).toEqual(of("gal", 40n));
  // Rain: they were moved to Friday, and Wednesday is planned.
  await house.ask("update route_day set date = '2026-04-17' where route_day_id = $1", [day.routeDayId]);
  expect(await left(fillId, "2026-04-15")).toEqual(of("gal", 40n));
  expect(await left(fillId, "2026-04-18")).toBe("unknown");
  await house.ask("delete from stop where visit_id = any($1)", [visitIds]);
  expect(await left(fillId, "2026-04-15"), "on no day nobody knows").toBe("unknown");
  await house.ask("update visit set state = 'not-done' where visit_id = any($1)", [visitIds]);
  expect(await left(fillId, "2026-04-15")).toEqual(of("gal", 40n));
});

test("less than a mark of the gauge is what the books have, whoever is still to be recorded", async () => {
  const { visits: [first], fillId } = await aSharedFill(house, company, day);
  if (first === undefined) throw new Error("The fill serves three visits.");
  await aRecord(house, company.owner, first, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "39.95", fillId } } });
  expect(await left(fillId)).toEqual(of("gal", "0.05"));
  expect((await read()).map((one) => one.fill_id)).toEqual([fillId]);
  const { fillId: onTop } = await aFill(house, company, day, [], { filledAt: "7:50" });
  expect((await read()).map((one) => one.fill_id)).toEqual([onTop]);
});

test("a reading says what is left while visits are open: those of its day and earlier, and those of no day, gave it", async () => {
  const { visits, fillId } = await aSharedFill(house, company, day);
  await dip("7:30", "12");
  expect(await left(fillId)).toEqual(of("gal", 12n));
  await house.ask("update route_day set date = '2026-04-15' where route_day_id = $1", [day.routeDayId]);
  expect(await left(fillId), "of the day before the planned one").toBe("unknown");
  expect(await left(fillId, CREW_DAY), "still to come").toEqual(of("gal", 12n));
  await house.ask("delete from stop where visit_id = any($1)", [visits.map(({ visitId }) => visitId)]);
  expect(await left(fillId)).toEqual(of("gal", 12n));
});

test("nothing is left of an empty tank, whoever is still to be recorded, and a fill beside a reading is not known", async () => {
  const { fillId } = await aSharedFill(house, company, day);
  await dip("7:30", "0");
  await house.ask("update route_day set date = '2026-04-15' where route_day_id = $1", [day.routeDayId]);
  expect(await left(fillId)).toEqual(of("gal", 0n));
  const { fillId: beside } = await aFill(house, company, day, [], { filledAt: "7:20" });
  expect((await read()).map((one) => [one.fill_id, one.is_last, one.is_beside_reading])).toEqual([[beside, true, true]]);
});

test("the latest fill is read, those of the day, and those of which something may be left since the clean-out before them", async () => {
  const { fillId: gone } = await aFill(house, company, day, [], { filledAt: "6:00" });
  await aCleanOut(house, company, day, { cleanedAt: "6:10" });
  const { fillId: under } = await aFill(house, company, day, [], { filledAt: "6:20" });
  const { visits, fillId: ofDay } = await aSharedFill(house, company, day);
  const { fillId: last } = await aFill(house, company, day, [], { filledAt: "7:20" });
  const [first] = visits;
  if (first === undefined) throw new Error("The fill serves three visits.");
  const ids = async () => (await read([first.visitId])).map((one) => [one.fill_id, one.is_last, one.is_of_day, one.is_beside_reading]);
  expect(await ids()).toEqual([[under, false, false, false], [ofDay, false, true, false], [last, true, false, false]]);
  expect((await read()).map((one) => one.fill_id)).not.toContain(gone);
  await aRecord(house, company.owner, first, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "40", fillId: under } } });
  expect((await ids()).map(([fillId]) => fillId), "used up").toEqual([ofDay, last]);
  const { fillId: lowest } = await aFill(house, company, day, [], { filledAt: "6:15" });
  expect((await ids()).map(([fillId]) => fillId), "used up on top of one that is not").toEqual([lowest, under, ofDay, last]);
  const other = await aCompany(house);
  expect(await inWorkOf(house, other, (work) => fillsRead(work, [first.visitId], MARK))).toEqual([]);
});

test("visits that are recorded are open no more, and the others have their day or none", async () => {
  const { visits } = await aSharedFill(house, company, day);
  const [one, two, three] = visits;
  if (one === undefined || two === undefined || three === undefined) throw new Error("The fill serves three visits.");
  await aRecord(house, company.owner, one);
  await house.ask("delete from stop where visit_id = $1", [three.visitId]);
  const open = await inWorkOf(house, company, (work) => openVisits(work, visits.map(({ visitId }) => visitId)));
  expect([...open].toSorted(([left], [right]) => visits.findIndex(({ visitId }) => visitId === left) - visits.findIndex(({ visitId }) => visitId === right))).toEqual([[two.visitId, { date: CREW_DAY }], [three.visitId, { date: null }]]);
  expect((await inWorkOf(house, company, (work) => openVisits(work, []))).size).toBe(0);
});
