import { expect, test } from "vitest";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { labelsOfProducts } from "#application/products/stored-label";
import { historyOfZones, productsOfRecords, putDownOnZones, recordsOfProperties, usesOfRecords } from "#application/register/zone-history";
import { readVisit } from "#application/visits/read-visit";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aGround, aRecord, aVisitWith, type Ground, inWorkOf, preventer } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { A_PREVENTER_TEXT } from "../../support/label-texts";
import { aFeed, labelForm } from "../../support/shed";

allOnACrewDay();

type Change = Parameters<typeof aRecord>[3];

/** A record of a preventer on both lawns of a property. */
async function prevented(ground: Ground, pounds: string, change: Change) {
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground, "4 lb/1,000 sq ft"));
  await aRecord(house, company.owner, { ...ground, visitId }, { mixes: { "1": { measuredBy: "weight", amount: `${pounds} lb` } }, ...change });
}

const historyOf = (...propertyIds: string[]) => historyIn(company, ...propertyIds);

function historyIn(of: TestCompany, ...propertyIds: string[]) {
  return inWorkOf(house, of, async (work) => {
    const records = await recordsOfProperties(work, propertyIds);
    return historyOfZones(work, records, await labelsOfProducts(work.tx, of.companyId, productsOfRecords(records)), await usesOfRecords(work, records));
  });
}

test("what really went on each lawn, on the local day, with its active ingredient per area", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "16", { doneOn: "2026-04-13", startedAt: "23:40", endedAt: "23:55" });
  const history = await historyOf(ground.propertyId, (await aGround(house, company)).propertyId);
  expect([...history.keys()].toSorted()).toEqual([ground.frontId, ground.backId].toSorted());
  const [past, ...others] = history.get(ground.frontId) ?? [];
  expect(others).toEqual([]);
  expect(past).toMatchObject({ on: "2026-04-13", productId: day.preventerId, productName: expect.stringMatching(/^Greenmere/u) as string, activeIngredients: [{ name: "Prodiamine", modeOfAction: { group: "Group 3 herbicide" } }] });
  // 2.5 lb per 1,000 sq ft of 19 % is 0.475 lb of nitrogen, 5 % of the product slow.
  const brought = past?.nutrients.ok === true ? past.nutrients.value : undefined;
  expect(brought && compareRates(brought.nitrogen, rateOf("nutrient-mass-per-area", "0.475", "lb per 1,000 sq ft"))).toBe(0);
  expect(brought && brought.slowNitrogen !== "not-stated" && compareRates(brought.slowNitrogen, rateOf("nutrient-mass-per-area", "0.125", "lb per 1,000 sq ft"))).toBe(0);
  // 16 lb on 6,400 sq ft are 2.5 lb per 1,000; 0.37 % of that on 43,560 sq ft.
  expect(past?.activeIngredients).toMatchObject([{ rate: rateOf("active-ingredient-mass-per-area", "0.40293", "lb per acre") }]);
});

test("records of one lawn stand one after the other, and what was not reached has none", async () => {
  const ground = await aGround(house, company);
  const onlyFront = { lawns: { [ground.frontId]: "done", [ground.backId]: "not-done" } } as const;
  await prevented(ground, "6", { ...onlyFront, doneOn: "2026-04-11", startedAt: "1:00", endedAt: "1:30" });
  await prevented(ground, "6", { ...onlyFront, doneOn: "2026-04-12", startedAt: "1:00", endedAt: "1:30" });
  const history = await historyOf(ground.propertyId);
  expect(history.get(ground.frontId)?.map(({ on }) => on)).toEqual(["2026-04-11", "2026-04-12"]);
  expect(history.has(ground.backId)).toBe(false);
});

test("the season's limit counts what the register says: the next ticket of the same lawns is held, and no other lawn's", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "60", { startedAt: "1:00", endedAt: "1:30" });
  const again = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
  const held = valueOf(await readVisit(house, company.owner.key, { visitId: again })).openHolds.map(({ rule }) => rule);
  const elsewhere = await aGround(house, company);
  const free = await aVisitWith(house, company, { ...elsewhere, routeDayId: day.routeDayId }, preventer(day, elsewhere));
  const open = valueOf(await readVisit(house, company.owner.key, { visitId: free })).openHolds.map(({ rule }) => rule);
  expect(held.filter((rule) => !open.includes(rule)).toSorted()).toEqual(["season-limit-passed", "season-limit-passed", "too-soon-again", "too-soon-again"]);
});

test("without a label on file neither group nor nutrients are known, and both say so", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "16", { doneOn: "2026-04-10", startedAt: "1:00", endedAt: "1:30" });
  const bareId = await aFeed(house, company);
  const visits = await house.ask("select visit_id from visit where property_id = $1", [ground.propertyId]);
  const [past] = (await historyOf(ground.propertyId)).get(ground.frontId) ?? [];
  expect([visits.length, past?.visitId === visits[0]?.["visit_id"]]).toEqual([1, true]);
  const bare = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
  await house.ask("update visit_task set product_id = $2 where visit_id = $1", [bare, bareId]);
  await aRecord(house, company.owner, { ...ground, visitId: bare }, { mixes: { "1": { measuredBy: "weight", amount: "10 lb" } }, startedAt: "4:00", endedAt: "4:30" });
  const unlabeled = (await historyOf(ground.propertyId)).get(ground.frontId)?.find(({ productId }) => productId === bareId);
  expect(unlabeled).toMatchObject({ activeIngredients: "unknown", serviceType: "not on file", label: "unknown", putDownAs: [] });
  expect(unlabeled?.nutrients).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "label" } });
});

/** What aftercare asks of the past of some properties. */
function putDownOn(...propertyIds: string[]) {
  return inWorkOf(house, company, async (work) => {
    const records = await recordsOfProperties(work, propertyIds);
    const labels = await labelsOfProducts(work.tx, company.companyId, productsOfRecords(records));
    return putDownOnZones(records, labels, await usesOfRecords(work, records));
  });
}

test("what aftercare asks of the past: the planned use's facts as the label is on file, at the record's real times, lawn by lawn", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "6", { lawns: { [ground.frontId]: "done", [ground.backId]: "not-done" }, doneOn: "2026-04-13", startedAt: "9:00", endedAt: "9:20" });
  const putDown = await putDownOn(ground.propertyId);
  expect([...putDown.keys()]).toEqual([ground.frontId]);
  const [only, ...others] = putDown.get(ground.frontId) ?? [];
  expect(others).toEqual([]);
  expect(only).toMatchObject({
    line: 1,
    application: { startsAtEpochMilliseconds: Date.parse("2026-04-13T13:00Z"), endsAtEpochMilliseconds: Date.parse("2026-04-13T13:20Z"), postedAtEpochMilliseconds: "not-posted" },
    label: { facts: { "people-and-pets": { labelWords: "Keep people and pets off until watered in and dry." } } },
  });
});

test("where the use that was planned is no longer on the label, nobody has read what it asks for", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "6", { doneOn: "2026-04-13" });
  await house.ask("update visit_task set label_use = 'A use of last year' where company_id = $1 and visit_id in (select visit_id from visit where property_id = $2)", [company.companyId, ground.propertyId]);
  const [only] = (await putDownOn(ground.propertyId)).get(ground.frontId) ?? [];
  expect(only?.label.productName).toMatch(/^Greenmere/u);
  expect([...new Set(Object.values(only?.label.facts ?? {}))]).toEqual(["unknown"]);
});

test("what its label says of the product, and the use under which it was put down: all of the label's where that is not known", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "6", { doneOn: "2026-04-13" });
  const [spring] = A_PREVENTER_TEXT.uses;
  if (spring === undefined) throw new Error("The preventer has a use.");
  const fall = { ...spring, useName: "Grubs, fall", serviceType: "insect control", keptApart: "Lime; 14 days" } as const;
  const { labelEntryId } = valueOf(await enterLabel(house, company.owner.key, { ...labelForm(day.preventerId, { ...A_PREVENTER_TEXT, uses: [fall] }), basedOnNumber: 1, useIndex: 1 }));
  valueOf(await confirmLabel(house, company.owner.key, { labelEntryId }));
  const pastOf = async () => (await historyOf(ground.propertyId)).get(ground.frontId)?.[0];
  expect(await pastOf()).toMatchObject({
    label: { form: "granular", formulation: "dry granule", epaRegistrationNumber: { number: "DEMO-0000-19" }, serviceTypes: ["grassy weed control", "insect control"] },
    putDownAs: [{ useName: "Crabgrass, spring", keptApart: "none" }],
  });
  await house.ask("update visit_task set label_use = 'A use of last year' where company_id = $1 and visit_id in (select visit_id from visit where property_id = $2)", [company.companyId, ground.propertyId]);
  expect((await pastOf())?.putDownAs).toMatchObject([{ useName: "Crabgrass, spring", keptApart: "none" }, { useName: "Grubs, fall", keptApart: { from: [{ from: "Lime", apart: { days: 14 } }] } }]);
});

test("no further back than 732 days, and no other company's", async () => {
  const ground = await aGround(house, company);
  await prevented(ground, "16", { startedAt: "5:00", endedAt: "5:30" });
  const other = await aCompany(house, "Other Turf");
  expect(await historyIn(other, ground.propertyId)).toEqual(new Map());
  // The house opens at 9:00; 732 days later, at 5:00, the record is as old as it may be.
  house.pass(732 * 1440 - 240);
  expect((await historyOf(ground.propertyId)).size).toBe(2);
  house.pass(1);
  expect((await historyOf(ground.propertyId)).size).toBe(0);
});
