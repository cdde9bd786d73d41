import { afterAll, beforeAll, expect, test } from "vitest";
import { addProgram } from "#application/programs/add-program";
import { listPrograms } from "#application/programs/list-programs";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { anEnrollment } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("the latest season comes first, each program with its rounds, its properties and its visits", async () => {
  expect(valueOf(await listPrograms(house, company.owner.key, {}))).toEqual({ programs: [], today: "2026-04-14" });
  const { programId, roundId } = await anEnrollment(house, company);
  valueOf(await addProgram(house, company.owner.key, { name: "Next year", season: "2027" }));
  const { programs } = valueOf(await listPrograms(house, company.owner.key, {}));
  expect(programs.map(({ season, properties }) => [season, properties])).toEqual([[2027, 0], [2026, 1]]);
  expect(programs[1]).toMatchObject({ programId, rounds: [{ roundId, name: "Spring feed", opensOn: "2026-04-06", closesOn: "2026-04-24" }], visits: { open: 1, waiting: 0 } });
  const other = await aCompany(house, "Other Turf");
  expect(valueOf(await listPrograms(house, other.owner.key, {})).programs).toEqual([]);
});
