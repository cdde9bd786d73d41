import { expect, test } from "vitest";
import { readDay } from "#application/days/read-day";
import { tanksHeld } from "#application/days/tanks-held";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aCleanOut, aCrewDay, aFedVisit, aFill, aRecord, aSharedFill, CREW_DAY, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

const heldNow = (visitIds: readonly string[] = []) => inWorkOf(house, company, (work) => tanksHeld(work, { date: CREW_DAY as CalendarDate, visitIds }));
const planNow = async () => valueOf(await readDay(house, company.owner.key, { date: CREW_DAY })).trucks[0]?.tankPlan;

const cleanOut = (cleanedAt: string) => aCleanOut(house, company, day, { cleanedAt });

test("a tank with neither a fill nor a clean-out on the books is not among them", async () => {
  expect((await heldNow()).size).toBe(0);
});

test("a tank that was never filled is clean after a clean-out, and its plan holds no more", async () => {
  const neverFilled = await aCompany(house);
  const itsDay = await aCrewDay(house, neverFilled, "not-known");
  await aFedVisit(house, neverFilled, itsDay);
  const rules = async () => valueOf(await readDay(house, neverFilled.owner.key, { date: CREW_DAY })).trucks[0]?.tankPlan.found.map(({ finding }) => finding.rule) ?? [];
  expect(await rules()).toContain("clean-out");
  await aCleanOut(house, neverFilled, itsDay);
  expect(await inWorkOf(house, neverFilled, (work) => tanksHeld(work, { date: CREW_DAY as CalendarDate, visitIds: [] }))).toEqual(new Map([[itsDay.sprayerId, "clean"]]));
  expect(await rules()).not.toContain("clean-out");
});

test("the latest fill is what the tank held, less what was drawn; the day's plan uses what is left first", async () => {
  const { visits, number } = await aSharedFill(house, company, day);
  const [first] = visits;
  if (first === undefined) throw new Error("the fill serves three visits");
  const visitIds = visits.map(({ visitId }) => visitId);
  expect((await heldNow(visitIds)).get(day.sprayerId)).toMatchObject({
    name: `fill ${String(number)}`, finished: of("gal", 40n), left: of("gal", 40n), isUnderWay: false, products: [{ productId: day.ironId, amount: of("fl oz", 30n), label: { form: "liquid" } }],
  });
  await aRecord(house, company.owner, first, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "9.5", fillId: await lastFillId() } } });
  expect((await heldNow(visitIds)).get(day.sprayerId)).toMatchObject({ left: of("gal", "30.5"), isUnderWay: true });
  // For another day: two of the fill's visits are not recorded yet.
  expect((await heldNow()).get(day.sprayerId)).toMatchObject({ left: "unknown" });
  // 30 fl oz in 40 gal is the mix of the plan, and two stops of 12.8 gal are still to come.
  const plan = await planNow();
  expect(plan?.fills).toEqual([]);
  expect(plan?.mixes).toMatchObject([{ name: `fill ${String(number)}`, already: of("gal", "30.5"), begin: { line: "holds-this-mix", cleaning: "none" }, end: { left: of("gal", "4.9") } }]);
  expect(plan?.aboard.map(({ share }) => share)).toEqual([0.305, 0.305, 0.177]);
});

test("a fill of another rate has to go before the tank is filled again", async () => {
  const { number } = await aFill(house, company, day, [], { filledAt: "7:20", products: { [day.ironId]: "20 fl oz" } });
  const plan = await planNow();
  expect(plan?.fills).toMatchObject([{ letter: "A", finished: of("gal", "25.6") }]);
  expect(plan?.mixes[0]?.begin).toMatchObject({ lastName: `fill ${String(number)}`, leftOfLast: of("gal", "70.5"), line: "water" });
  expect(plan?.found.map(({ finding }) => finding.rule)).toContain("last-mix-left");
  expect(plan?.found.map(({ finding }) => finding.rule)).not.toContain("carry-over");
});

test("what was posted away from the tank is left no more", async () => {
  await house.ask("alter table stock_balance disable trigger user");
  await house.ask("update stock_balance set amount = 0 where stock_location_id in (select stock_location_id from stock_location where equipment_id = $1)", [day.sprayerId]);
  expect((await heldNow()).get(day.sprayerId)).toMatchObject({ left: of("gal", 0n) });
});

test("a clean-out before the latest fill changes nothing; after it the tank is clean, until it is filled again", async () => {
  const { number } = await aFill(house, company, day, [], { filledAt: "7:40" });
  await cleanOut("7:30");
  await cleanOut("7:40");
  expect((await heldNow()).get(day.sprayerId)).toMatchObject({ name: `fill ${String(number)}` });
  await cleanOut("7:41");
  expect((await heldNow()).get(day.sprayerId)).toBe("clean");
  expect((await planNow())?.mixes[0]?.begin).toMatchObject({ lastName: null, cleaning: "none", line: "water", leftOfLast: of("gal", 0n) });
  const { number: next } = await aFill(house, company, day, [], { filledAt: "7:50" });
  expect((await heldNow()).get(day.sprayerId)).toMatchObject({ name: `fill ${String(next)}` });
});

async function lastFillId(): Promise<string> {
  const [row] = await house.ask<{ fill_id: string }>("select fill_id from fill order by number desc limit 1");
  return row?.fill_id ?? "";
}

test("what is left while visits are open is left to left-in-fills, and fills of a tank count together, the latest on top", async () => {
  const own = await aCompany(house);
  const itsDay = await aCrewDay(house, own, "not-known");
  await aSharedFill(house, own, itsDay);
  const held = async (date = CREW_DAY) => (await inWorkOf(house, own, (work) => tanksHeld(work, { date: date as CalendarDate, visitIds: [] }))).get(itsDay.sprayerId);
  expect(await held()).toMatchObject({ name: "fill 1", left: "unknown" });
  valueOf(await recordTankReading(house, own.owner.key, tankReadingForm(house, itsDay, own.owner.personId, { readAt: "7:30", volume: "12", missingWent: "count-difference" })));
  expect(await held()).toMatchObject({ name: "fill 1", left: of("gal", 12n) });
  await aFill(house, own, itsDay, [], { filledAt: "7:40" });
  expect(await held()).toMatchObject({ name: "fill 2", left: of("gal", 40n), under: [{ name: "fill 1", left: of("gal", 12n) }] });
  await aFill(house, own, itsDay, [], { filledAt: "7:50", products: { [itsDay.ironId]: "20 fl oz" } });
  expect(await held()).toMatchObject({ name: "fill 3", under: [{ name: "fill 2", left: of("gal", 40n) }, { name: "fill 1" }] });
  // It came into the books after a reading that did not know of it.
  await aFill(house, own, itsDay, [], { filledAt: "7:20" });
  expect(await held()).toMatchObject({ under: [{ name: "fill 2" }, { name: "fill 4", left: "unknown" }, { name: "fill 1" }] });
  await aCleanOut(house, own, itsDay, { cleanedAt: "7:45" });
  expect(await held()).toMatchObject({ name: "fill 3" });
  expect(await held()).not.toHaveProperty("under");
});

test("a used-up fill of another mix keeps what is under it from counting with what is above it", async () => {
  const own = await aCompany(house);
  const itsDay = await aCrewDay(house, own);
  const [one, two] = [await aFedVisit(house, own, itsDay), await aFedVisit(house, own, itsDay)];
  await aFill(house, own, itsDay, [], { filledAt: "6:30" });
  const { fillId } = await aFill(house, own, itsDay, [one.visitId], { filledAt: "7:00", products: { [itsDay.ironId]: "20 fl oz" } });
  await aRecord(house, own.owner, one, { startedAt: "7:05", endedAt: "7:25", mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "40", fillId } } });
  await aFill(house, own, itsDay, [two.visitId], { filledAt: "7:30" });
  const held = await inWorkOf(house, own, (work) => tanksHeld(work, { date: CREW_DAY as CalendarDate, visitIds: [two.visitId] }));
  expect(held.get(itsDay.sprayerId)).toMatchObject({ name: "fill 3", under: [{ name: "fill 2", left: of("gal", 0n) }, { name: "fill 1", left: of("gal", 40n) }] });
  const plan = valueOf(await readDay(house, own.owner.key, { date: CREW_DAY })).trucks[0]?.tankPlan;
  expect(plan?.mixes).toMatchObject([{ already: of("gal", 40n) }]);
  expect(plan?.found.find(({ finding }) => finding.rule === "two-mixes-in-the-tank")?.finding.figure).toContain("40 gal of fill 1");
});

test("a fill on top of what an earlier one left is not asked for again, nor are two fills of one day whose records are open", async () => {
  const own = await aCompany(house);
  const itsDay = await aCrewDay(house, own);
  const [one, two] = [await aFedVisit(house, own, itsDay), await aFedVisit(house, own, itsDay)];
  const plan = async () => valueOf(await readDay(house, own.owner.key, { date: CREW_DAY })).trucks[0]?.tankPlan;
  const fill = (of: readonly string[], filledAt: string, finished: string, ounces: string) => aFill(house, own, itsDay, of, { filledAt, finished: `${finished} gal`, products: { [itsDay.ironId]: `${ounces} fl oz` } });
  await fill([], "6:30", "16", "12");
  expect(await plan()).toMatchObject({ fills: [{ finished: of("gal", "9.6") }], mixes: [{ already: of("gal", 16n) }] });
  await fill([one.visitId, two.visitId], "7:00", "9.6", "7.2");
  expect(await plan()).toMatchObject({ fills: [], mixes: [{ already: of("gal", "25.6") }] });
  await house.ask("update visit_task set rate_amount = rate_amount * 4 / 3 where visit_id = $1 and product_id = $2", [two.visitId, itsDay.ironId]);
  await fill([two.visitId], "7:30", "12.8", "12.8");
  const last = await plan();
  expect(last?.fills).toEqual([]);
  expect(last?.mixes.map(({ already, begin: { restName } }) => [already, restName])).toEqual([[of("gal", "25.6"), "fill 2 and fill 1"], [of("gal", "12.8"), "fill 3"]]);
});

test("what was mixed for one visit alone is what the tank held, until it is cleaned out or something is left of a fill", async () => {
  const own = await aCompany(house);
  const itsDay = await aCrewDay(house, own);
  const [one, two] = [await aFedVisit(house, own, itsDay), await aFedVisit(house, own, itsDay)];
  const held = () => inWorkOf(house, own, (work) => tanksHeld(work, { date: CREW_DAY as CalendarDate, visitIds: [one.visitId, two.visitId] })).then((tanks) => tanks.get(itsDay.sprayerId));
  expect(await held()).toBe("clean");
  await aRecord(house, own.owner, one, { startedAt: "6:00", endedAt: "6:45" });
  const name = expect.stringMatching(/^the mix of \d/u) as string;
  expect(await held()).toMatchObject({ name, finished: "unknown", left: of("gal", 0n), isUnderWay: false, isOfThatDay: true, filledOnto: [], products: [{ productId: itsDay.ironId, label: { form: "liquid" } }] });
  await aFill(house, own, itsDay, [two.visitId], { filledAt: "6:45" });
  expect(await held()).toMatchObject({ name: "fill 1", filledOnto: [{ name }] });
  await aRecord(house, own.owner, two, { startedAt: "6:50", endedAt: "7:15" });
  // Something of the fill is left, whatever was mixed with it.
  expect(await held()).toMatchObject({ name: "fill 1", left: of("gal", 40n), filledOnto: [{ name }] });
  await house.ask("alter table stock_balance disable trigger user");
  await house.ask("update stock_balance set amount = 0 where stock_location_id in (select stock_location_id from stock_location where equipment_id = $1)", [itsDay.sprayerId]);
  expect(await held()).toMatchObject({ name, left: of("gal", 0n), filledOnto: [{ name: "fill 1" }] });
  await aCleanOut(house, own, itsDay, { cleanedAt: "7:15" });
  expect(await held()).toBe("clean");
});

test("what a tank was filled onto is known until a clean-out lies between; a day whose visits are all open begins with its first fill", async () => {
  const own = await aCompany(house);
  const itsDay = await aCrewDay(house, own, "not-known");
  const [one, two] = [await aFedVisit(house, own, itsDay), await aFedVisit(house, own, itsDay)];
  const visitIds = [one.visitId, two.visitId];
  const held = () => inWorkOf(house, own, (work) => tanksHeld(work, { date: CREW_DAY as CalendarDate, visitIds })).then((tanks) => tanks.get(itsDay.sprayerId));
  const fill = (of: readonly string[], filledAt: string, ounces = "30 fl oz") => aFill(house, own, itsDay, of, { filledAt, products: { [itsDay.ironId]: ounces } });
  const { number: first } = await fill([one.visitId], "7:10");
  expect(await held()).toMatchObject({ name: `fill ${String(first)}`, isOfThatDay: true, filledOnto: ["unknown"] });
  const { number: second } = await fill([two.visitId], "7:40", "20 fl oz");
  expect(await held(), "the first visit is open").toMatchObject({ name: `fill ${String(first)}` });
  await house.ask("update visit set state = 'not-done' where visit_id = $1", [one.visitId]);
  expect(await held(), "the first visit is over").toMatchObject({ name: `fill ${String(second)}`, filledOnto: [{ name: `fill ${String(first)}`, finished: of("gal", 40n) }, "unknown"] });
  await aCleanOut(house, own, itsDay, { cleanedAt: "7:30" });
  expect(await held()).toMatchObject({ name: `fill ${String(second)}`, filledOnto: [] });
  const { number: third } = await fill([two.visitId], "7:50", "25 fl oz");
  const { number: fourth } = await fill([two.visitId], "7:55", "20 fl oz");
  expect(await held(), "of one product the latest fill that had it").toMatchObject({ name: `fill ${String(second)}`, later: [{ name: `fill ${String(third)}` }, { name: `fill ${String(fourth)}`, visitIds: [two.visitId], filledOnto: [{ name: `fill ${String(third)}` }] }] });
  const ofNextDay = await inWorkOf(house, own, (work) => tanksHeld(work, { date: "2026-04-15" as CalendarDate, visitIds: [two.visitId] }));
  expect(ofNextDay.get(itsDay.sprayerId), "moved to another day before anything was sprayed of it").toMatchObject({ isOfThatDay: false });
});
