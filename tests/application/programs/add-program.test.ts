import { afterAll, beforeAll, expect, test } from "vitest";
import { addProgram } from "#application/programs/add-program";
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

test("a program is written with its season and said in the audit trail", async () => {
  const { programId } = valueOf(await addProgram(house, company.owner.key, { name: " Cool-season lawns ", season: "2026" }));
  expect(await house.ask("select name, season, version from program where program_id = $1", [programId])).toEqual([{ name: "Cool-season lawns", season: 2026, version: 1 }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "program-added", subject_id: programId, details: { name: "Cool-season lawns", season: 2026 } });
});

test("one name stands once in a season, whatever its capitals, and again in the next season", async () => {
  valueOf(await addProgram(house, company.owner.key, { name: "Shade", season: "2026" }));
  expect(await addProgram(house, company.owner.key, { name: "SHADE", season: "2026" })).toMatchObject({ refusal: { kind: "bad-input", fields: { name: A_SENTENCE } } });
  expect(await addProgram(house, company.owner.key, { name: "Shade", season: "2027" })).toMatchObject({ ok: true });
});

test.each(["", "26", "1999", "this year", "3000"])("%j is no season", async (season) => {
  expect(await addProgram(house, company.owner.key, { name: "Any", season })).toMatchObject({ refusal: { kind: "bad-input", fields: { season: A_SENTENCE } } });
});
