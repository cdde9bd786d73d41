import { afterAll, beforeAll, expect, test } from "vitest";
import { printPacket } from "#application/documents/print-packet";
import { readPacket } from "#application/documents/read-packet";
import { aCompany, valueOf } from "../../support/crew";
import { aPrintedDay, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

test("lists the papers of a day, writes nothing, and shows the packet that was printed", async () => {
  const { routeDayId } = at.day;
  const before = await house.books();
  const preview = valueOf(await readPacket(house, at.company.owner.key, { routeDayId }));
  expect(await house.books()).toEqual(before);
  expect(preview).toMatchObject({ truck: expect.stringMatching(/^Truck \d+, White flatbed$/) as string, leftOut: [], issues: [] });
  valueOf(await printPacket(house, at.company.owner.key, { routeDayId }));
  const { issues } = valueOf(await readPacket(house, at.company.owner.key, { routeDayId }));
  expect(issues.filter(({ packetLeftOut }) => packetLeftOut !== null)).toMatchObject([{ kind: "route-sheet", packetLeftOut: [] }]);
});

test("is not found for another company", async () => {
  const other = await aCompany(house, "Another Turf");
  expect(await readPacket(house, other.owner.key, { routeDayId: at.day.routeDayId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
