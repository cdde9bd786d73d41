import { afterAll, beforeAll, expect, test } from "vitest";
import { removeRound } from "#application/programs/remove-round";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { anEnrollment, aRound } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a round without visits goes, with what goes down in it", async () => {
  const { roundId, programId } = await aRound(house, company);
  expect(valueOf(await removeRound(house, company.owner.key, { roundId }))).toEqual({ programId });
  expect(await house.ask("select (select count(*)::int from round where round_id = $1) + (select count(*)::int from round_treatment where round_id = $1) as kept", [roundId])).toEqual([{ kept: 0 }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "round-removed", subject_id: roundId, details: { name: "Spring feed" } });
  expect(await removeRound(house, company.owner.key, { roundId })).toMatchObject({ refusal: { kind: "not-found" } });
});

test("a round with visits stays", async () => {
  const { roundId } = await anEnrollment(house, company);
  const before = await house.books();
  expect(await removeRound(house, company.owner.key, { roundId })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});
