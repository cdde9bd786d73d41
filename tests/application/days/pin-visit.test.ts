import { afterAll, beforeAll, expect, test } from "vitest";
import { pinVisit } from "#application/days/pin-visit";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aVisit, stopsOf, versionOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a visit is pinned and let go; the day's version counts both", async () => {
  const { routeDayId, visitIds: [visitId = ""] } = await aDayOf(house, company, [{}]);
  const before = await versionOf(house, routeDayId);
  expect(valueOf(await pinVisit(house, company.owner.key, { visitId, pin: "pin" })).isPinned).toBe(true);
  expect((await stopsOf(house, routeDayId))[0]?.is_pinned).toBe(true);
  valueOf(await pinVisit(house, company.owner.key, { visitId, pin: "unpin" }));
  expect((await stopsOf(house, routeDayId))[0]?.is_pinned).toBe(false);
  expect(await versionOf(house, routeDayId)).toBe(before + 2);
});

test("a visit on no day has no place to be pinned to", async () => {
  const { visitId } = await aVisit(house, company);
  expect(await pinVisit(house, company.owner.key, { visitId, pin: "pin" })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});
