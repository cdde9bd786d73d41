import { afterAll, beforeAll, expect, test } from "vitest";
import { measureZone } from "#application/properties/measure-zone";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aZone, RECTANGLE } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


const BED = { use: "cut-out", shape: "rectangle", name: "Rose bed", length: "12", width: "10", x: "5", y: "5" } as const;
const POND = { use: "water", shape: "circle", name: "Pond", radius: "15", x: "60", y: "20" } as const;

async function areaOf(zoneId: string): Promise<unknown> {
  const [row] = await house.ask<{ area: string; area_origin: string; pieces: unknown[] }>("select area, area_origin, pieces from zone where zone_id = $1", [zoneId]);
  return row === undefined ? undefined : { squareFeet: Number(BigInt(row.area) / of("sq ft", 1n).amount), origin: row.area_origin, pieces: row.pieces.length };
}

test("pieces are put in, measured again and taken out, and the area is always that of all of them", async () => {
  const { zoneId } = await aZone(house, company);
  const change = async (version: number, what: Parameters<typeof measureZone>[2]["change"]) => valueOf(await measureZone(house, company.owner.key, { zoneId, version, change: what }));
  await change(1, { kind: "put-piece", at: "new", piece: BED });
  expect(await areaOf(zoneId)).toEqual({ squareFeet: 2280, origin: "measured", pieces: 2 });
  await change(2, { kind: "put-piece", at: "new", piece: POND });
  expect(await areaOf(zoneId)).toEqual({ squareFeet: 2280, origin: "measured", pieces: 3 });
  await change(3, { kind: "put-piece", at: "0", piece: { ...RECTANGLE, shape: "offsets", step: "10", widths: "40, 44, 40, 36", ends: "widths", line: "edge" } });
  expect(await areaOf(zoneId)).toEqual({ squareFeet: 1100, origin: "measured", pieces: 3 });
  await change(4, { kind: "remove-piece", at: "1" });
  expect(await areaOf(zoneId)).toEqual({ squareFeet: 1220, origin: "measured", pieces: 2 });
  await change(5, { kind: "enter-area", area: "1,000 sq ft" });
  expect(await areaOf(zoneId)).toEqual({ squareFeet: 1000, origin: "entered", pieces: 0 });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "zone-measured", details: { before: { area: "1,220 sq ft" }, after: { area: "1,000 sq ft", areaOrigin: "entered" } } });
});

test("what leaves no lawn, a piece that is not there and an old version are refused, and nothing is written", async () => {
  const { zoneId } = await aZone(house, company);
  const before = await house.books();
  const measure = (version: number, change: Parameters<typeof measureZone>[2]["change"]) => measureZone(house, company.owner.key, { zoneId, version, change });
  expect(await measure(1, { kind: "put-piece", at: "new", piece: { ...BED, length: "400" } })).toMatchObject({ refusal: { fields: { "change.piece.use": A_SENTENCE } } });
  expect(await measure(1, { kind: "put-piece", at: "new", piece: { ...BED, length: "" } })).toMatchObject({ refusal: { fields: { "change.piece.length": A_SENTENCE } } });
  expect(await measure(1, { kind: "put-piece", at: "0", piece: BED })).toMatchObject({ refusal: { fields: { "change.piece.use": A_SENTENCE } } });
  expect(await measure(1, { kind: "remove-piece", at: "0" })).toMatchObject({ refusal: { fields: { "change.at": A_SENTENCE } } });
  expect(await measure(1, { kind: "remove-piece", at: "1" })).toMatchObject({ refusal: { kind: "not-found" } });
  expect(await measure(1, { kind: "put-piece", at: "7", piece: BED })).toMatchObject({ refusal: { kind: "not-found" } });
  expect(await measure(2, { kind: "enter-area", area: "900" })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});
