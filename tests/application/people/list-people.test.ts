import { afterAll, beforeAll, expect, test } from "vitest";
import { addLicense } from "#application/people/add-license";
import { changePerson } from "#application/people/change-person";
import { endMembership } from "#application/people/end-membership";
import { INVITATION_DAYS } from "#application/people/invite-person";
import { listPeople } from "#application/people/list-people";
import { licenseForm } from "../../support/attempts-of-company";
import { aCompany, aMember, anInvitation, aPerson, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house, "First Crew");
  await aPerson(house, await aCompany(house, "Second Crew"), "Somebody Else");
});
afterAll(() => house.close());

const list = async () => valueOf(await listPeople(house, company.owner.key, {})).people;

test("the crew comes by name, those who left last, each with access", async () => {
  const left = await aPerson(house, company, "Ada Left");
  valueOf(await changePerson(house, company.owner.key, { personId: left, version: 1, name: "Ada Left", phone: "", leftOn: "2026-04-01" }));
  const invited = await anInvitation(house, company, await aPerson(house, company, "Ina Invited"), "ina@vale.example", "office");
  const member = await aMember(house, company, "technician", "Mel Member");
  const former = await aMember(house, company, "office", "Fay Former");
  valueOf(await endMembership(house, company.owner.key, { personId: former.personId }));
  const people = await list();
  expect(people.map(({ name, access }) => [name, access.kind])).toEqual([
    ["Fay Former", "none"], ["Ina Invited", "invited"], ["Mel Member", "member"], ["Owner of First Crew", "member"], ["Ada Left", "none"],
  ]);
  expect(people[1]?.access).toEqual({ kind: "invited", invitationId: invited.invitationId, role: "office", email: "ina@vale.example", expiresAt: invited.expiresAt });
  expect(people[2]?.access).toEqual({ kind: "member", role: "technician", email: member.email });
});

test("licenses stand as of today in the company's time zone", async () => {
  const personId = await aPerson(house, company, "Zed License");
  valueOf(await addLicense(house, company.owner.key, { ...licenseForm(personId), issuedOn: "", expiresOn: "2026-04-14" }));
  const standing = async () => (await list()).find((person) => person.personId === personId)?.licenses[0]?.standing;
  expect(await standing()).toEqual({ kind: "runs-out-soon", daysLeft: 0 });
  // 14 hours and 59 minutes later it is the 15th in universal time, and a minute to midnight in Indianapolis.
  house.pass(14 * 60 + 59);
  expect(await standing()).toEqual({ kind: "runs-out-soon", daysLeft: 0 });
  house.pass(1);
  expect(await standing()).toEqual({ kind: "expired", daysAgo: 1 });
});

test("an invitation that ran out is none", async () => {
  house.pass(INVITATION_DAYS * 1440);
  expect((await list()).find(({ name }) => name === "Ina Invited")?.access).toEqual({ kind: "none" });
});
