import { afterAll, beforeAll, expect, test } from "vitest";
import { listPeople } from "#application/people/list-people";
import { readPerson } from "#application/people/read-person";
import { aCompany, anInvitation, aPerson, type TestCompany, valueOf } from "../../support/crew";
import { countedId, openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("reads each person as the list shows them", async () => {
  await anInvitation(house, company, await aPerson(house, company), "robin@vale.example");
  const { people } = valueOf(await listPeople(house, company.owner.key, {}));
  expect(people).toHaveLength(2);
  for (const person of people) {
    expect(valueOf(await readPerson(house, company.owner.key, { personId: person.personId }))).toEqual({ person });
  }
  expect(people.find(({ personId }) => personId === company.owner.personId)?.licenses).toHaveLength(1);
});

test("an unknown id is nobody", async () => {
  expect(await readPerson(house, company.owner.key, { personId: countedId(0xffffff) })).toMatchObject({ refusal: { kind: "not-found" } });
});
