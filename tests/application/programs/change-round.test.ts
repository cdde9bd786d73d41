import { afterAll, beforeAll, expect, test } from "vitest";
import { changeRound } from "#application/programs/change-round";
import { callOffVisit } from "#application/visits/call-off-visit";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { anEnrollment, aRound, treatmentRow } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const LATER = { version: 1, name: "Late feed", opensOn: "2026-05-01", closesOn: "2026-05-20" };

test("before anybody is on it everything may change, and the treatments are replaced", async () => {
  const { roundId, productId } = await aRound(house, company);
  const answer = await changeRound(house, company.owner.key, { roundId, ...LATER, secondLook: "21", treatments: { "0": treatmentRow(productId, "3 lb/1,000 sq ft") } });
  expect(answer).toMatchObject({ ok: true, value: { version: 2, visitsMoved: 0 } });
  expect(await house.ask("select name, opens_on::text, second_look_after_days, version from round where round_id = $1", [roundId])).toEqual([
    { name: "Late feed", opens_on: "2026-05-01", second_look_after_days: 21, version: 2 },
  ]);
  expect(await house.ask("select line, rate_text from round_treatment where round_id = $1", [roundId])).toEqual([{ line: 1, rate_text: "3 lb/1,000 sq ft" }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "round-changed", details: { before: { name: "Spring feed" }, after: { name: "Late feed" } } });
});

test("with visits its name and window change, and planned visits that go by the window move with it", async () => {
  const { roundId, visitId } = await anEnrollment(house, company);
  expect(await changeRound(house, company.owner.key, { roundId, ...LATER })).toMatchObject({ ok: true, value: { visitsMoved: 1 } });
  expect(await house.ask("select name, opens_on::text, closes_on::text, version from visit where visit_id = $1", [visitId])).toEqual([
    { name: "Late feed", opens_on: "2026-05-01", closes_on: "2026-05-20", version: 2 },
  ]);
});

test("a visit that is called off, or has a window of its own, stays where it is", async () => {
  const first = await anEnrollment(house, company);
  valueOf(await callOffVisit(house, company.owner.key, { visitId: first.visitId, version: 1, reason: "Sold the house" }));
  const second = await anEnrollment(house, company);
  await house.ask("update visit set opens_on = '2026-04-10' where visit_id = $1", [second.visitId]);
  for (const { roundId } of [first, second]) expect(await changeRound(house, company.owner.key, { roundId, ...LATER })).toMatchObject({ ok: true, value: { visitsMoved: 0 } });
  expect(await house.ask("select opens_on::text from visit where visit_id = any($1) order by opens_on", [[first.visitId, second.visitId]])).toEqual([{ opens_on: "2026-04-06" }, { opens_on: "2026-04-10" }]);
});

test("with visits what goes down, and the second look, change no more", async () => {
  const { roundId, productId } = await anEnrollment(house, company);
  const before = await house.books();
  for (const more of [{ treatments: { "0": treatmentRow(productId, "2 lb/1,000 sq ft") } }, { secondLook: "14" }]) {
    expect(await changeRound(house, company.owner.key, { roundId, ...LATER, ...more })).toMatchObject({ refusal: { kind: "conflict" } });
  }
  expect(await house.books()).toEqual(before);
});

test("the loser of a race is told, and nothing above the label comes in by a change", async () => {
  const { roundId, productId } = await aRound(house, company);
  expect(await changeRound(house, company.owner.key, { roundId, ...LATER, version: 2 })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await changeRound(house, company.owner.key, { roundId, ...LATER, treatments: { "0": treatmentRow(productId, "4 lb/1,000 sq ft") } })).toMatchObject({ refusal: { kind: "bad-input" } });
  expect(await house.ask("select rate_text from round_treatment where round_id = $1", [roundId])).toEqual([{ rate_text: "2.5 lb/1,000 sq ft" }]);
});
