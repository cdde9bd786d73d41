import { afterAll, beforeAll, expect, test } from "vitest";
import { printLoadingList } from "#application/documents/print-loading-list";
import { valueOf } from "../../support/crew";
import { anIllinoisVisit, aPrintedDay, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

test("loads whole containers for the mix tickets that stand, with lots and signs, and names the stops that it leaves out", async () => {
  await anIllinoisVisit(house, at.company, at.day);
  const { issuedPaperId } = valueOf(await printLoadingList(house, at.company.owner.key, { routeDayId: at.day.routeDayId }));
  const { words } = await printed(house, at.company.owner.key, issuedPaperId);
  // 16 lb of feed for 6,400 sq ft at 2.5 lb per 1,000; a second visit would have doubled it.
  expect(words).toMatch(/1 bag of 50 lb Greenmere \d+, 16 lb needed GM-1/u);
  expect(words).toMatch(/1 jug of 2½ gal Ironside \d+, 9½ fl oz needed IR-1/u);
  expect(words).toMatch(/1 Lawn markers/u);
  expect(words).toContain("Nothing is loaded for stop 2: no mix ticket stands there.");
});
