import { afterEach, beforeEach, expect, test } from "vitest";
import { addPerson } from "#application/people/add-person";
import { changeRole } from "#application/people/change-role";
import { endMembership } from "#application/people/end-membership";
import { aCompany, aMember, aPerson, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

const owners = () => house.ask("select person_id from membership where role = 'owner' and ended_at is null");

test("a member may more, and then less, from the next call on", async () => {
  const member = await aMember(house, company, "technician");
  const add = () => addPerson(house, member.key, { name: "Robin Vale", phone: "" });
  expect(await add()).toMatchObject({ refusal: { kind: "not-allowed" } });
  valueOf(await changeRole(house, company.owner.key, { personId: member.personId, role: "owner" }));
  expect(await add()).toMatchObject({ ok: true });
  valueOf(await changeRole(house, company.owner.key, { personId: member.personId, role: "inspector" }));
  expect(await add()).toMatchObject({ refusal: { kind: "not-allowed" } });
  const changes = (await trailOf(house, company.companyId)).filter(({ deed }) => deed === "role-changed");
  expect(changes.map(({ details }) => details)).toEqual([{ before: "technician", after: "owner" }, { before: "owner", after: "inspector" }]);
});

test("the only owner stays one, an ended owner not counted", async () => {
  const second = await aMember(house, company, "owner");
  valueOf(await endMembership(house, company.owner.key, { personId: second.personId }));
  const before = await house.books();
  const { personId, key } = company.owner;
  expect(await changeRole(house, key, { personId, role: "office" })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
  expect(await changeRole(house, key, { personId, role: "owner" })).toMatchObject({ ok: true });
});

test("two owners who step down, or put each other down, at once leave one owner", async () => {
  const second = await aMember(house, company, "owner");
  const [one, other] = [company.owner, second];
  const answers = await Promise.all([
    changeRole(house, one.key, { personId: one.personId, role: "office" }),
    changeRole(house, other.key, { personId: other.personId, role: "office" }),
  ]);
  expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  expect(await owners()).toHaveLength(1);
});

test("a person without an account, or whose membership has ended, has no role to change", async () => {
  const member = await aMember(house, company, "technician");
  valueOf(await endMembership(house, company.owner.key, { personId: member.personId }));
  for (const personId of [member.personId, await aPerson(house, company)]) {
    expect(await changeRole(house, company.owner.key, { personId, role: "office" })).toMatchObject({ refusal: { kind: "not-found" } });
  }
});
