import { expect, test } from "vitest";
import { type LedgerOfLawn, readNutrientLedger } from "#application/properties/read-nutrient-ledger";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { parseCalendarDate } from "#domain/foundation/calendar-date";
import { wholeNitrogen } from "#domain/mixing/year-nitrogen";
import { type LedgerStanding, poundsPerThousand } from "#domain/scheduling/nutrient-ledger";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aRecord } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { pastedDays, temperaturesForm } from "../../support/temperatures";

allOnACrewDay();

const ledgerOf = async (propertyId: string, visitId?: string) => valueOf(await readNutrientLedger(house, company.owner.key, { propertyId, visitId }));
function pounds(lawn: LedgerOfLawn | undefined, standing: LedgerStanding): number {
  const nitrogen = lawn?.ledger.nutrients.find(({ nutrient }) => nutrient === "nitrogen");
  if (nitrogen === undefined) throw new Error("A lawn has its nitrogen.");
  // To a thousandth: what is written was measured to the marks of a cup, what is planned was not.
  return Number(poundsPerThousand(wholeNitrogen(nitrogen.sums[standing])).toFixed(3));
}
const march = valueOf(parseCalendarDate("date", "2026-03-01"));
const STANDINGS = ["put-down", "this-visit", "planned"] as const;
const all = (lawn: LedgerOfLawn | undefined) => STANDINGS.map((standing) => pounds(lawn, standing));

test("a visit ahead is planned; in view it is this visit; done it is put down, as the register has it", async () => {
  const fed = await aFedVisit(house, company, day);
  const ahead = await ledgerOf(fed.propertyId);
  expect([ahead.year, ahead.lawns.map(({ letter }) => letter)]).toEqual([2026, ["A", "B"]]);
  const [, , planned = 0] = all(ahead.lawns[0]);
  expect(planned).toBeGreaterThan(0.7);
  expect(all((await ledgerOf(fed.propertyId, fed.visitId)).lawns[0])).toEqual([0, planned, 0]);
  await aRecord(house, company.owner, fed);
  const done = await ledgerOf(fed.propertyId, fed.visitId);
  expect(all(done.lawns[0])).toEqual([planned, 0, 0]);
  const nitrogen = done.lawns[0]?.ledger.nutrients[0];
  expect(new Set(nitrogen?.parts.map(({ id }) => id)).size).toBe(nitrogen?.parts.length);
  expect(nitrogen?.parts.map(({ productName }) => productName)).toEqual([expect.stringMatching(/^Greenmere/u) as string, expect.stringMatching(/^Ironside/u) as string]);
});

test("a visit past its window is not counted, and is named", async () => {
  const fed = await aFedVisit(house, company, day);
  await house.ask("delete from stop where visit_id = $1", [fed.visitId]);
  await house.ask("update visit set opens_on = '2026-03-01', closes_on = '2026-03-10' where visit_id = $1", [fed.visitId]);
  const ledger = await ledgerOf(fed.propertyId);
  expect(all(ledger.lawns[0])).toEqual([0, 0, 0]);
  expect(ledger.notCounted).toHaveLength(1);
  const inView = await ledgerOf(fed.propertyId, fed.visitId);
  expect(inView.notCounted).toEqual([]);
  expect(pounds(inView.lawns[0], "this-visit")).toBeGreaterThan(0.7);
});

test("the year is that of the visit in view, and growth is not drawn from nothing", async () => {
  const fed = await aFedVisit(house, company, day);
  await house.ask("delete from stop where visit_id = $1", [fed.visitId]);
  await house.ask("update visit set opens_on = '2027-04-01', closes_on = '2027-04-10' where visit_id = $1", [fed.visitId]);
  expect((await ledgerOf(fed.propertyId)).year).toBe(2026);
  const next = await ledgerOf(fed.propertyId, fed.visitId);
  expect(next.year).toBe(2027);
  expect(pounds(next.lawns[0], "this-visit")).toBeGreaterThan(0.7);
  expect(next.lawns[0]?.growth).toMatchObject({ ok: false, refusal: { kind: "missing-fact" } });
});

test("growth is drawn from the year's kept days of the source in use, each lawn by its own grass", async () => {
  const fed = await aFedVisit(house, company, day);
  await house.ask("update zone set grasses = '{bermudagrass}', grasses_assumed = true where zone_id = $1", [fed.backId]);
  await house.ask("update zone set grasses = '{tall fescue}', grasses_assumed = false where zone_id = $1", [fed.frontId]);
  const keep = (source: string, days: string) => keepTemperatures(house, company.owner.key, temperaturesForm(house, { source, days }));
  valueOf(await keep("Airfield", pastedDays(march, 27, "72", "64")));
  valueOf(await keep("Campus", pastedDays(march, 31, "20", "10")));
  const few = await ledgerOf(fed.propertyId);
  expect(few.lawns[0]?.growth).toMatchObject({ ok: false, refusal: { sentence: expect.stringContaining("Of no month of the year") as string } });
  valueOf(await keep("Airfield", pastedDays(march, 28, "72", "64")));
  const { lawns } = await ledgerOf(fed.propertyId);
  expect(lawns[0]?.growth).toMatchObject({ ok: true, value: { season: "cool-season", isGrassAssumed: false, source: "Airfield" } });
  expect(lawns[1]?.growth).toMatchObject({ ok: true, value: { season: "warm-season", isGrassAssumed: true } });
  const months = lawns.map(({ growth }) => valueOf(growth).months);
  // A mean of 68 °F is 20 °C, at which cool-season grass grows best; warm-season grass does not yet.
  expect(months[0]?.[2]).toMatchObject({ kind: "growth", daysKept: 28, potential: expect.closeTo(1, 12) as number });
  expect(months[1]?.[2]).toMatchObject({ kind: "growth", potential: expect.closeTo(0.2909, 4) as number });
  expect(months[0]?.filter(({ kind }) => kind === "growth")).toHaveLength(1);
  await house.ask("update zone set grasses = '{bermudagrass,perennial ryegrass}' where zone_id = $1", [fed.backId]);
  expect((await ledgerOf(fed.propertyId)).lawns[1]?.growth).toMatchObject({ ok: false, refusal: { field: "grasses" } });
});

test("lawns off the plan are left out, and another company's property is not found", async () => {
  const fed = await aFedVisit(house, company, day);
  await house.ask("update zone set removed_at = now() where zone_id = $1", [fed.backId]);
  expect((await ledgerOf(fed.propertyId)).lawns.map(({ letter }) => letter)).toEqual(["A"]);
  const other = await aCompany(house, "Other Turf");
  expect(await readNutrientLedger(house, other.owner.key, { propertyId: fed.propertyId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
