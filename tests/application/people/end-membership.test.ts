import { afterEach, beforeEach, expect, test } from "vitest";
import { readCompany } from "#application/companies/read-company";
import { endMembership } from "#application/people/end-membership";
import { aCompany, aMember, aPerson, type TestCompany, trailOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

test("the member's session ends with the next call; the person stays in the books", async () => {
  const member = await aMember(house, company, "office");
  expect(await readCompany(house, member.key, {})).toMatchObject({ ok: true });
  expect(await endMembership(house, company.owner.key, { personId: member.personId })).toEqual({ ok: true, value: null });
  expect(await readCompany(house, member.key, {})).toMatchObject({ refusal: { kind: "signed-out" } });
  expect(await house.ask("select ended_at from membership where person_id = $1", [member.personId])).toEqual([{ ended_at: house.now() }]);
  expect(await house.ask("select name from person where person_id = $1", [member.personId])).toEqual([{ name: "office" }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "membership-ended", subject_id: member.personId, details: { role: "office" } });
});

test("the only owner's membership does not end", async () => {
  const before = await house.books();
  expect(await endMembership(house, company.owner.key, { personId: company.owner.personId })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});

test("two owners who end each other's, or their own, membership at once leave one owner", async () => {
  for (const crosswise of [true, false]) {
    const second = await aMember(house, company, "owner", crosswise ? "Second" : "Third");
    const [one, other] = [company.owner, second];
    const ask = [
      endMembership(house, one.key, { personId: crosswise ? other.personId : one.personId }),
      endMembership(house, other.key, { personId: crosswise ? one.personId : other.personId }),
    ];
    const answers = await Promise.all(ask);
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
    const owners = await house.ask<{ person_id: string; account_id: string }>("select person_id, account_id from membership where role = 'owner' and ended_at is null");
    expect(owners).toHaveLength(1);
    const [left] = owners;
    if (left?.person_id === other.personId) company = { ...company, owner: other };
  }
});

test("of several presses at once one ends it, and someone without an account has none to end", async () => {
  const { personId } = await aMember(house, company, "technician");
  const answers = await Promise.all([1, 2, 3].map(() => endMembership(house, company.owner.key, { personId })));
  expect(answers.map((answer) => (answer.ok ? "ended" : answer.refusal.kind)).sort()).toEqual(["ended", "not-found", "not-found"]);
  const nobody = await aPerson(house, company);
  expect(await endMembership(house, company.owner.key, { personId: nobody })).toMatchObject({ refusal: { kind: "not-found" } });
});
