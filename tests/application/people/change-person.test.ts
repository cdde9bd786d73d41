import { afterEach, beforeEach, expect, test } from "vitest";
import { changePerson } from "#application/people/change-person";
import { aCompany, aPerson, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let personId: string;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
  personId = await aPerson(house, company);
});
afterEach(() => house.close());

const change = (version: number | string, name: string, leftOn = "") => changePerson(house, company.owner.key, { personId, version, name, phone: "317 555 0101", leftOn });

test("writes the fields, counts the version, and the audit trail keeps before and after", async () => {
  expect(await change("1", "Robin Dale", "2026-04-13")).toEqual({ ok: true, value: { version: 2 } });
  const [row] = await house.ask("select name, phone, left_on::text, version from person where person_id = $1", [personId]);
  expect(row).toEqual({ name: "Robin Dale", phone: "317 555 0101", left_on: "2026-04-13", version: 2 });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "person-changed",
    subject_id: personId,
    details: {
      before: { name: "Robin Vale", phone: null, leftOn: null },
      after: { name: "Robin Dale", phone: "317 555 0101", leftOn: "2026-04-13" },
    },
  });
  valueOf(await change(2, "Robin Dale"));
  expect(await house.ask("select left_on from person where person_id = $1", [personId])).toEqual([{ left_on: null }]);
});

test("whoever filled the form from an older version is told, and nothing is overwritten", async () => {
  valueOf(await change(1, "Robin Dale"));
  const before = await house.books();
  for (const version of [1, 3, 2_147_483_647]) expect(await change(version, "Overwritten")).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});

test("of two changes at once one is made and the other is told", async () => {
  const answers = await Promise.all([change(1, "One"), change(1, "Other")]);
  expect(answers.map((answer) => (answer.ok ? "changed" : answer.refusal.kind)).sort()).toEqual(["changed", "conflict"]);
  expect((await trailOf(house, company.companyId)).filter(({ deed }) => deed === "person-changed")).toHaveLength(1);
});

test.each(["2026-02-30", "04/13/2026", "1899-12-31", "2200-01-01"])("%j is no day to have left on", async (leftOn) => {
  expect(await change(1, "Robin Dale", leftOn)).toMatchObject({ refusal: { kind: "bad-input", fields: { leftOn: A_SENTENCE } } });
});

test("whoever can still sign in has not left: access ends first, and nothing is written until then", async () => {
  const before = await house.books();
  const ownerLeft = { personId: company.owner.personId, version: 1, name: "Dana Vale", phone: "", leftOn: "2026-04-13" };
  expect(await changePerson(house, company.owner.key, ownerLeft)).toMatchObject({ refusal: { kind: "bad-input", fields: { leftOn: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});
