import { afterAll, beforeAll, expect, test } from "vitest";
import { readProgram } from "#application/programs/read-program";
import { NO_VISITS, sumCounts, todayOf } from "#application/programs/visits-of-rounds";
import { type Work } from "#application/use-case";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { anEnrollment, putOnDay } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const countsOf = async (programId: string) => valueOf(await readProgram(house, company.owner.key, { programId })).program.rounds[0]?.visits;

test("a visit is counted where it stands: on a day while that day has not passed", async () => {
  const today = await anEnrollment(house, company);
  await putOnDay(house, company, today.visitId, "2026-04-14");
  expect(await countsOf(today.programId)).toEqual({ ...NO_VISITS, "on-a-day": 1 });
  const yesterday = await anEnrollment(house, company);
  await putOnDay(house, company, yesterday.visitId, "2026-04-13");
  expect(await countsOf(yesterday.programId)).toEqual({ ...NO_VISITS, open: 1 });
});

test("counts of several rounds add up", () => {
  expect(sumCounts([])).toEqual(NO_VISITS);
  expect(sumCounts([{ ...NO_VISITS, open: 2 }, { ...NO_VISITS, open: 1, done: 4 }])).toEqual({ ...NO_VISITS, open: 3, done: 4 });
});

test("today is the day at the company's place", () => {
  const at = (timeZone: string) => todayOf({ company: { timeZone }, now: new Date("2026-04-14T02:00:00Z") } as Work);
  expect([at("America/Chicago"), at("UTC")]).toEqual(["2026-04-13", "2026-04-14"]);
});
