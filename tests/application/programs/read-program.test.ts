import { afterAll, beforeAll, expect, test } from "vitest";
import { addRound } from "#application/programs/add-round";
import { readProgram } from "#application/programs/read-program";
import { enterLabel } from "#application/products/enter-label";
import { confirmLabel } from "#application/products/confirm-label";
import { rateIn } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aFeedText } from "../../support/label-texts";
import { anEnrollment, aRound, roundForm } from "../../support/season";
import { labelForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const read = async (programId: string) => valueOf(await readProgram(house, company.owner.key, { programId }));
const pounds = (rate: Parameters<typeof rateIn<"nutrient-mass-per-area">>[0]) => toNumber(rateIn(rate, "lb per 1,000 sq ft"));

test("rounds stand in the order in which they open, with nitrogen by round and summed", async () => {
  const { programId, productId } = await aRound(house, company);
  valueOf(await addRound(house, company.owner.key, { ...roundForm(programId, productId, "2 lb/1,000 sq ft"), name: "Early", opensOn: "2026-03-01", closesOn: "2026-03-20" }));
  const { program, roundsOfProperty } = await read(programId);
  expect(program.rounds.map(({ name, visitCount }) => [name, visitCount])).toEqual([["Early", 0], ["Spring feed", 0]]);
  expect(program.rounds.map(({ nitrogen, nitrogenSoFar }) => [pounds(nitrogen.known), pounds(nitrogenSoFar.known)])).toEqual([[0.64, 0.64], [0.8, 1.44]]);
  expect(pounds(program.nitrogen.known)).toBe(1.44);
  expect(program.rounds[1]?.treatments).toMatchObject([{ rateText: "2.5 lb/1,000 sq ft", standing: "within", labelUse: "Established lawns" }]);
  expect(roundsOfProperty.size).toBe(0);
});

test("properties and visits are counted by where they stand today", async () => {
  const { programId, propertyId, roundId } = await anEnrollment(house, company);
  const { program, roundsOfProperty, today } = await read(programId);
  expect([program.properties, today, program.rounds[0]?.visits.open, program.rounds[0]?.visitCount]).toEqual([1, "2026-04-14", 1, 1]);
  expect([...roundsOfProperty]).toEqual([[propertyId, [roundId]]]);
});

test("a label that was confirmed anew is held against the rate that was planned before", async () => {
  const { programId, productId } = await aRound(house, company);
  const form = labelForm(productId, aFeedText({}, { rates: "1 to 2 lb per 1,000 sq ft" }));
  const { labelEntryId } = valueOf(await enterLabel(house, company.owner.key, { ...form, basedOnNumber: 1 }));
  valueOf(await confirmLabel(house, company.owner.key, { labelEntryId }));
  const { program } = await read(programId);
  expect(program.rounds[0]?.treatments[0]?.standing).toBe("above-highest");
  // The new entry says nothing of the grade.
  expect(program.nitrogen.missing).toHaveLength(1);
});

test("a program that the company does not have is none", async () => {
  const other = await aCompany(house, "Other Turf");
  const { programId } = await aRound(house, other);
  expect(await readProgram(house, company.owner.key, { programId })).toMatchObject({ refusal: { kind: "not-found" } });
});
