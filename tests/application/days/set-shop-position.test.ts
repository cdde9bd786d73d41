import { afterAll, beforeAll, expect, test } from "vitest";
import { setShopPosition } from "#application/days/set-shop-position";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, SHOP, stopsOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("by latitude and longitude; the days from today on get their times, those of the past keep what they had", async () => {
  const today = await aDayOf(house, company, [{}]);
  const past = await aDayOf(house, company, [{}], "2026-04-13");
  expect(valueOf(await setShopPosition(house, company.owner.key, { zip: "", ...SHOP }))).toEqual({ latitude: 41.54, longitude: -87.06 });
  expect((await stopsOf(house, today.routeDayId))[0]?.arrives_at_minute).toBe(484);
  expect((await stopsOf(house, past.routeDayId))[0]?.arrives_at_minute).toBeNull();
});

test("by ZIP code: the middle of its area; typed degrees win over it, and the shop stays one", async () => {
  const { latitude, longitude } = valueOf(await setShopPosition(house, company.owner.key, { zip: "46304", latitude: "", longitude: "" }));
  expect([Math.round(latitude), Math.round(longitude)]).toEqual([42, -87]);
  expect(valueOf(await setShopPosition(house, company.owner.key, { zip: "46304", ...SHOP }))).toEqual({ latitude: 41.54, longitude: -87.06 });
  expect(await house.ask("select latitude from stock_location where kind = 'shop'")).toEqual([{ latitude: 41.54 }]);
});

test("nothing, half of it, a code without an area and degrees off the earth are told at their fields", async () => {
  const tries: readonly (readonly [string, string, string, string])[] = [
    ["", "", "", "zip"], ["", "41.5", "", "longitude"], ["00001", "", "", "zip"], ["463", "", "", "zip"], ["", "91", "0", "latitude"], ["", "41", "-181", "longitude"],
  ];
  for (const [zip, latitude, longitude, field] of tries) {
    const answer = await setShopPosition(house, company.owner.key, { zip, latitude, longitude });
    expect(answer, field).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { [field]: expect.any(String) as unknown } } });
  }
});
