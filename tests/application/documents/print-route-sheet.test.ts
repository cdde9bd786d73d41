import { afterAll, beforeAll, expect, test } from "vitest";
import { printRouteSheet } from "#application/documents/print-route-sheet";
import { aCompany, aMember, valueOf } from "../../support/crew";
import { anIllinoisVisit, aPrintedDay, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
  await anIllinoisVisit(house, at.company, at.day);
  await house.ask("update property set access_note = 'Gate code 4417#, park on the street', dog_note = 'friendly' where property_id = $1", [at.visit.propertyId]);
});
afterAll(() => house.close());

test("names each stop with its amounts from the mix ticket, room to write, and no code; a stop without a ticket says why", async () => {
  const { issuedPaperId } = valueOf(await printRouteSheet(house, at.company.owner.key, { routeDayId: at.day.routeDayId }));
  const { words } = await printed(house, at.company.owner.key, issuedPaperId);
  expect(words).toMatch(/Front 2,400 sq ft 6 lb/u);
  expect(words).toContain("4.8 gal");
  expect(words).toContain("7:30 am");
  expect(words).toContain("Dog: friendly");
  expect(words).toContain("Nothing is put down here: no mix ticket was issued.");
  expect(words).not.toContain("4417");
  const [row] = await house.ask<{ text: string }>("select data::text as text from issued_paper where issued_paper_id = $1", [issuedPaperId]);
  expect(row?.text).not.toContain("4417");
});

test("is for the person of the day and the office, and not found elsewhere", async () => {
  const technician = await aMember(house, at.company, "technician");
  const routeDayId = at.day.routeDayId;
  expect(await printRouteSheet(house, technician.key, { routeDayId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
  await house.ask("update route_day set operator_id = $2 where route_day_id = $1", [routeDayId, technician.personId]);
  expect(await printRouteSheet(house, technician.key, { routeDayId })).toMatchObject({ ok: true });
  const other = await aCompany(house, "Another Turf");
  expect(await printRouteSheet(house, other.owner.key, { routeDayId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
