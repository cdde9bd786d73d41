import { afterAll, beforeAll, expect, test } from "vitest";
import { addRound, treatmentWords } from "#application/programs/add-round";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";
import { aLabeledFeed, aProgram, roundForm, treatmentRow } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
let programId: string;
let productId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  programId = await aProgram(house, company);
  productId = await aLabeledFeed(house, company);
});
afterAll(() => house.close());

const add = (change: Partial<ReturnType<typeof roundForm>>) => addRound(house, company.owner.key, { ...roundForm(programId, productId), ...change });

test("a round is written with its treatments: the rate exactly, and as it was typed", async () => {
  const { roundId } = valueOf(await add({ secondLook: "14" }));
  const [round] = await house.ask("select name, opens_on::text, closes_on::text, second_look_after_days, position from round where round_id = $1", [roundId]);
  expect(round).toEqual({ name: "Spring feed", opens_on: "2026-04-06", closes_on: "2026-04-24", second_look_after_days: 14, position: 1 });
  const [treatment] = await house.ask("select line, label_use, rate_basis, rate_text, reason, rate_amount > 0 as rated from round_treatment where round_id = $1", [roundId]);
  expect(treatment).toEqual({ line: 1, label_use: "Established lawns", rate_basis: "product-mass-per-area", rate_text: "2.5 lb/1,000 sq ft", reason: "feed", rated: true });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "round-added", details: { treatments: ["Established lawns, 2.5 lb/1,000 sq ft, for feed"] } });
  const next = valueOf(await add({ name: "Late spring" }));
  expect(await house.ask("select position from round where round_id = $1", [next.roundId])).toEqual([{ position: 2 }]);
});

test("nothing above the label is planned: the refusal stands at the rate, with the figures; below the lowest is written", async () => {
  const before = await house.books();
  const answer = await add({ treatments: { "0": treatmentRow(productId, "3.5 lb/1,000 sq ft"), "1": { productUse: "", rate: "", reason: "" } } });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { "treatments.0.rate": expect.stringContaining("3 lb per 1,000 sq ft") as string } } });
  expect(await house.books()).toEqual(before);
  expect(await add({ treatments: { "0": treatmentRow(productId, "1 lb/1,000 sq ft"), "1": { productUse: "", rate: "", reason: "" } } })).toMatchObject({ ok: true });
});

test("a round without a product, a half-filled row, and a window that closes before it opens are refused at their fields", async () => {
  const empty = { productUse: "", rate: "", reason: "" };
  expect(await add({ treatments: { "0": empty, "1": empty } })).toMatchObject({ refusal: { fields: { "treatments.0.productUse": A_SENTENCE } } });
  expect(await add({ treatments: { "0": treatmentRow(productId), "1": { ...empty, rate: "2 lb/1,000 sq ft" } } })).toMatchObject({
    refusal: { fields: { "treatments.1.productUse": A_SENTENCE, "treatments.1.reason": A_SENTENCE } },
  });
  expect(await add({ closesOn: "2026-04-05" })).toMatchObject({ refusal: { fields: { closesOn: A_SENTENCE } } });
});

test("a list of rows, as the browser's form holds numbered fields, is read as the server reads the form", async () => {
  const rows = [treatmentRow(productId), { productUse: "", rate: "", reason: "" }];
  expect(await addRound(house, company.owner.key, { ...roundForm(programId, productId), treatments: rows })).toMatchObject({ ok: true });
  const tooMuch = [{ productUse: "", rate: "", reason: "" }, treatmentRow(productId, "9 lb/1,000 sq ft")];
  expect(await addRound(house, company.owner.key, { ...roundForm(programId, productId), treatments: tooMuch })).toMatchObject({ refusal: { fields: { "treatments.1.rate": A_SENTENCE } } });
});

test.each(["0", "61", "two weeks", "-1"])("%j is no time for a second look", async (secondLook) => {
  expect(await add({ secondLook })).toMatchObject({ refusal: { fields: { secondLook: A_SENTENCE } } });
});

test("a round needs a program that the company has", async () => {
  expect(await add({ programId: house.newId() })).toMatchObject({ refusal: { kind: "not-found" } });
});

test("what goes down is told by use, rate and reason", () => {
  expect(treatmentWords([])).toEqual([]);
});
