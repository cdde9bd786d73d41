import { afterAll, beforeAll, expect, test } from "vitest";
import { addPerson } from "#application/people/add-person";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("writes the person into the own company's books, trimmed, and the audit trail says who", async () => {
  const { personId } = valueOf(await addPerson(house, company.owner.key, { name: "  Renée Álvarez ", phone: " " }));
  const [row] = await house.ask("select * from person where person_id = $1", [personId]);
  expect(row).toEqual({
    company_id: company.companyId, person_id: personId, name: "Renée Álvarez", phone: null, created_at: house.now(), left_on: null, version: 1,
  });
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toEqual({
    deed: "person-added", account_id: company.owner.key.accountId, person_name: company.owner.name, subject_id: personId,
    details: { name: "Renée Álvarez" }, at: house.now(),
  });
});

test.each([["name", ""], ["name", "   "], ["name", "x".repeat(201)], ["name", "two\nlines"], ["phone", "x".repeat(41)]])("%s as %j is refused at its field", async (field, value) => {
  const before = await house.books();
  const answer = await addPerson(house, company.owner.key, { name: "Robin Vale", phone: "", [field]: value });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});
