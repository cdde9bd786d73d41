import { describe, expect, test } from "vitest";
import { listFills } from "#application/fills/list-fills";
import { recordFill } from "#application/fills/record-fill";
import { of } from "#domain/quantities/quantity";
import { trailOf, valueOf } from "../../support/crew";
import { aCleanOut, aFedVisit, aFill, aRecord, fillForm, tankReadingForm } from "../../support/crew-day";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { unbalanced } from "../../support/ledger";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";
import { balancesOf } from "../../support/shed";

eachOnACrewDay();

const record = (change: Parameters<typeof fillForm>[3] = {}, visitIds: readonly string[] = []) => recordFill(house, company.owner.key, fillForm(house, day, visitIds, change));
const rulesOf = async (...form: Parameters<typeof record>) => valueOf(await record(...form)).findings.map(({ level, rule }) => `${level} ${rule}`);
const onFile = async () => valueOf(await listFills(house, company.owner.key, {})).tanks.flatMap(({ fills }) => fills);

test("product goes from the truck into the tank, with one deed; pressed twice the first fill is answered", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const form = fillForm(house, day, [visitId]);
  const fill = valueOf(await recordFill(house, company.owner.key, form));
  expect(fill).toMatchObject({ number: 1, findings: [] });
  expect(valueOf(await recordFill(house, company.owner.key, form))).toEqual(fill);
  expect((await balancesOf(house, day.ironId))["tank"]).toBe(of("fl oz", "30").amount.toString());
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "fill-recorded", subject_id: fill.fillId });
  expect(await unbalanced(house)).toEqual([]);
});

test("more than the books have goes in all the same and asks for a count by the product's name", async () => {
  const form = fillForm(house, day, [], { products: { [day.ironId]: "6 gal" } });
  const { findings } = valueOf(await recordFill(house, company.owner.key, form));
  expect(findings).toMatchObject([{ rule: "count-it", what: expect.stringMatching(/^More Ironside \d+ was used than the books had/u) as string }, { rule: "fill-strength-not-checked" }]);
  expect(valueOf(await recordFill(house, company.owner.key, form)).findings).toEqual(findings);
  expect(await unbalanced(house)).toEqual([]);
});

describe("the gauge", () => {
  test("before and after make the fill: on top of a rest only what went in counts, and its product is as strong as it was mixed", async () => {
    const visit = await aFedVisit(house, company, day);
    await aFill(house, company, day);
    const { fillId, findings } = valueOf(await record({ filledAt: "7:40", gaugeBefore: "40 gal", gaugeAfter: "90 gal", products: { [day.ironId]: "50 fl oz" } }));
    expect(findings.map(({ rule }) => rule)).toEqual(["fill-strength-not-checked"]);
    expect(await onFile()).toMatchObject([
      { number: 2, finished: of("gal", 50n), gauge: { before: of("gal", 40n), after: of("gal", 90n), inTheBooks: of("gal", 40n) } },
      { number: 1, finished: of("gal", 40n), gauge: { before: of("gal", 0n), after: of("gal", 40n), inTheBooks: of("gal", 0n) } },
    ]);
    await aRecord(house, company.owner, visit, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "45 gal", fillId } } });
    expect((await onFile())[0]?.draws).toMatchObject([{ volume: of("gal", 45n), products: [{ amount: of("fl oz", 45n) }] }]);
  });

  test("that stood otherwise than the books is said and keeps nothing from being recorded", async () => {
    await aFill(house, company, day);
    const answer = valueOf(await record({ filledAt: "7:40", gaugeBefore: "38", gaugeAfter: "88" }));
    expect(answer.findings[0]).toMatchObject({ level: "take-care", rule: "gauge-not-as-books", figure: "38 gal were read; the books have 40 gal." });
    const [last] = await onFile();
    expect(last).toMatchObject({ finished: of("gal", 50n), whenRecorded: answer.findings });
  });

  test("below the books of a fill whose visits are not recorded is a note with their streets", async () => {
    const { visitId } = await aFedVisit(house, company, day);
    await aFill(house, company, day, [visitId]);
    expect(await rulesOf({ filledAt: "7:40", gaugeBefore: "0.5", gaugeAfter: "40.5" })).toEqual(["note gauge-before-records", "note fill-strength-not-checked"]);
  });

  test("that in words is what the books have means the books to the last drop", async () => {
    await aFill(house, company, day, [], { finished: "40.00443 gal" });
    valueOf(await record({ filledAt: "7:40", gaugeBefore: "40 gal", gaugeAfter: "90 gal" }));
    expect((await onFile())[0]).toMatchObject({ finished: of("gal", "49.99557"), gauge: { before: of("gal", "40.00443"), after: of("gal", 90n) } });
  });

  test("is held against the books after a reading, and after a clean-out in the same minute", async () => {
    await aFill(house, company, day);
    valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { readAt: "7:40", volume: "38", missingWent: "loss" })));
    expect(await rulesOf({ filledAt: "7:40", gaugeBefore: "38", gaugeAfter: "48" })).toEqual(["note fill-strength-not-checked"]);
    await aCleanOut(house, company, day, { cleanedAt: "7:50" });
    expect(await rulesOf({ filledAt: "7:50" })).toEqual(["note fill-strength-not-checked"]);
  });

  test("that did not go up is refused at its field", async () => {
    const answer = await record({ gaugeBefore: "40", gaugeAfter: "40" });
    expect(answer).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { gaugeAfter: "The tank held 40 gal before and after: nothing was filled in." } } });
    expect(await record({ gaugeBefore: "40", gaugeAfter: "30" })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  });
});

describe("what was recorded is held against what is on file", () => {
  test("six hundred gallons are more than the tank holds", async () => {
    expect(await rulesOf({ finished: "600 gal" })).toEqual(["take-care fill-above-tank", "note fill-strength-not-checked"]);
  });

  test("ten times the plan is stronger than planned and than the label allows", async () => {
    const { visitId } = await aFedVisit(house, company, day);
    const { findings } = valueOf(await record({ products: { [day.ironId]: "300 fl oz" } }, [visitId]));
    expect(findings).toMatchObject([
      { level: "hold", rule: "fill-above-label", source: "label", figure: "Sprayed at 2 gal per 1,000 sq ft it comes to 15 fl oz per 1,000 sq ft; the label's highest is 2 fl oz per 1,000 sq ft." },
      { level: "take-care", rule: "fill-strength-not-as-planned", figure: "It came to 7½ fl oz per gal; the plan is ¾ fl oz per gal." },
    ]);
    expect((await onFile())[0]?.whenRecorded).toEqual(findings);
  });
});

test("is refused for what is no fill", async () => {
  const fields = async (change: Parameters<typeof fillForm>[3]) => {
    const answer = await record(change);
    return !answer.ok && answer.refusal.kind === "bad-input" ? Object.keys(answer.refusal.fields) : answer;
  };
  expect(await fields({ equipmentId: day.spreaderId })).toEqual(["equipmentId"]);
  expect(await fields({ filledAt: "9:01" })).toEqual(["filledAt"]);
  expect(await fields({ gaugeBefore: "" })).toEqual(["gaugeBefore"]);
  expect(await fields({ gaugeAfter: "full" })).toEqual(["gaugeAfter"]);
  expect(await fields({ products: {} })).toEqual(["products"]);
  expect(await fields({ products: { [day.ironId]: "3 lb" } })).toEqual([`products.${day.ironId}`]);
  expect(await fields({ visitIds: [house.newId()] })).toEqual(["visitIds"]);
  expect(await fields({ from: `vehicle:${house.newId()}` })).toEqual(["from"]);
  expect(await record({ equipmentId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
