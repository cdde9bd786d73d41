// Many at once, through two pools, as two copies of the server would.
import { afterAll, beforeAll, expect, test } from "vitest";
import { openClient } from "#adapters/postgres/client";
import { recordFill } from "#application/fills/record-fill";
import { completeVisit } from "#application/register/complete-visit";
import { of } from "#domain/quantities/quantity";
import { aCompany, aMember, type TestCompany, type TestMember, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, aSharedFill, completeForm, type CrewDay, fillForm } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";
import { firstBroken, unbalanced } from "../../support/ledger";

let house: TestHouse;
let copy: TestHouse;
let company: TestCompany;
let other: TestMember;
let day: CrewDay;
beforeAll(async () => {
  house = await openHouse();
  copy = { ...house, client: openClient(house.database.appUrl, 8) };
  company = await aCompany(house);
  other = await aMember(house, company, "applicator", "Kit Lane");
  day = await aCrewDay(house, company);
});
afterAll(async () => {
  await copy.client.$disconnect();
  await house.close();
});

const count = async (sql: string, values: readonly unknown[] = []) => (await house.ask<{ n: number }>(`select count(*)::int as n from ${sql}`, values))[0]?.n;

test("the same form by eight at once through two copies writes one record, one deduction and one draw", async () => {
  const visit = await aFedVisit(house, company, day);
  const fill = fillForm(house, day, [visit.visitId]);
  const fills = (await Promise.all(Array.from({ length: 8 }, (_unused, index) => recordFill(index % 2 === 0 ? house : copy, company.owner.key, fill)))).map(valueOf);
  expect(new Set(fills.map(({ fillId }) => fillId)).size).toBe(1);
  expect(await count("stock_posting where kind = 'fill'")).toBe(1);
  const fillId = fills[0]?.fillId ?? "";
  const mixes = { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "12 gal", fillId } } as const;
  const form = completeForm(house, company.owner.personId, visit, { mixes });
  const answers = (await Promise.all(Array.from({ length: 8 }, (_unused, index) => completeVisit(index % 2 === 0 ? house : copy, company.owner.key, form)))).map(valueOf);
  expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
  expect(await count("register_entry where visit_id = $1", [visit.visitId])).toBe(1);
  expect(await count("stock_posting where request_id = $1", [form.requestId])).toBe(1);
  expect(await count("fill_draw where fill_id = $1", [fillId])).toBe(1);
  expect(await count("visit where looks_again_at_id = $1", [visit.visitId])).toBe(1);
  expect(await count("audit_event where subject_id = $1 and deed = 'record-written'", [visit.visitId])).toBe(1);
  expect(await unbalanced(house)).toEqual([]);
});

test("two people at once write one record, and the other is told of it", async () => {
  const visit = await aFedVisit(house, company, day);
  const answers = await Promise.all([
    completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, visit)),
    completeVisit(copy, other.key, completeForm(house, other.personId, visit)),
  ]);
  expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  expect(answers.find(({ ok }) => !ok)).toMatchObject({ refusal: { kind: "conflict", sentence: expect.stringMatching(/^Record \d+ of this visit is written already/u) as string } });
  expect(await count("register_entry where visit_id = $1", [visit.visitId])).toBe(1);
  expect(await unbalanced(house)).toEqual([]);
});

test("three visits of one fill at once: the draws add up, the tank is empty to the last unit, the chain holds", async () => {
  const apart = await aCompany(house, "At Once Turf");
  const own = await aCrewDay(house, apart);
  const { visits, fillId } = await aSharedFill(house, apart, own);
  const gallons = ["13.3 gal", "13.4 gal", "13.3 gal"];
  const answers = await Promise.all(
    visits.map((visit, index) => {
      const mixes = { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: gallons[index] ?? "", fillId } } as const;
      return completeVisit(index % 2 === 0 ? house : copy, apart.owner.key, completeForm(house, apart.owner.personId, visit, { mixes }));
    }),
  );
  expect(answers.map(valueOf).map(({ number }) => number).toSorted()).toEqual([1, 2, 3]);
  expect(await house.ask("select sum(volume)::text as volume from fill_draw where fill_id = $1", [fillId])).toEqual([{ volume: of("gal", "40").amount.toString() }]);
  expect(await house.ask("select b.amount::text from stock_balance b join stock_location s using (company_id, stock_location_id) where s.kind = 'tank' and b.company_id = $1", [apart.companyId])).toEqual([{ amount: "0" }]);
  expect(await unbalanced(house)).toEqual([]);
  expect(await firstBroken(house, apart.companyId)).toBe(null);
});
