import { beforeAll, describe, expect, test } from "vitest";
import { addLicense } from "#application/people/add-license";
import { completeVisitSchema } from "#application/register/complete-visit.schema";
import { type RecordFacts, recordOfVisit } from "#application/register/record-of-visit";
import { recordPlan } from "#application/register/record-plan";
import { usedOfVisit } from "#application/register/used-of-visit";
import { visitOnFile } from "#application/visits/read-visit";
import { gravestFirst } from "#domain/foundation/finding";
import { of } from "#domain/quantities/quantity";
import { licenseForm } from "../../support/attempts-of-company";
import { aPerson, valueOf } from "../../support/crew";
import { aFedVisit, aVisitUnderHold, completeForm, type Ground, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

let visit: Ground & { readonly visitId: string };
beforeAll(async () => {
  visit = await aFedVisit(house, company, day);
});

type Change = Parameters<typeof completeForm>[3];

/** The record of a visit as it would be written; the facts may be changed before. */
async function recordOf(of: Ground & { readonly visitId: string }, change: Change = {}, changed: (facts: RecordFacts) => RecordFacts = (facts) => facts) {
  const form = completeVisitSchema.parse(completeForm(house, company.owner.personId, of, change));
  return inWorkOf(house, company, async (work) => {
    const found = await visitOnFile(work, of.visitId);
    if (found === undefined) throw new Error("the visit was planned");
    const plan = await recordPlan(work, found);
    const reached = new Set(Object.keys(form.lawns).filter((zoneId) => form.lawns[zoneId] !== "not-done"));
    const times = { startedAt: new Date("2026-04-14T12:00:00Z"), endedAt: new Date("2026-04-14T12:45:00Z") };
    const used = valueOf(await usedOfVisit(work, form.mixes, reached, found.visit, plan, times.endedAt));
    return recordOfVisit(work, form, changed({ visit: found.visit, plan, used, ...times }));
  });
}

test("says whose work it was, where, when, and what the form said", async () => {
  const content = await recordOf(visit, { remarks: "Gate was open." });
  expect(content).toMatchObject({
    ...{ form: "application-record-1", startedAt: "2026-04-14T12:00:00.000Z", endedAt: "2026-04-14T12:45:00.000Z", enteredAt: house.now().toISOString() },
    ...{ timeZone: "America/Indiana/Indianapolis", signIsUp: true, noticeWasLeft: true, remarks: "Gate was open.", signature: "A. Owner" },
    company: { name: "Foxtail Turf" },
    site: { propertyId: visit.propertyId, state: "IN" },
    visit: { visitId: visit.visitId, name: "Spring feed", mixTicketNumber: null },
    applicator: { personId: company.owner.personId, name: company.owner.name },
    supervisor: null,
    weather: { kind: "taken", temperatureF: 61, windMph: 4, windFrom: "SW", instrument: "Hand-held meter" },
  });
});

test("what was put down is shared over the lawns that were reached, in words and whole numbers, as its label has it", async () => {
  const lawns = { [visit.frontId]: "part", [visit.backId]: "not-done" } as const;
  const { treatments, lawns: outcomes } = await recordOf(visit, { lawns });
  expect(outcomes.map(({ name, outcome }) => [name, outcome])).toEqual([["Front", "part"], ["Back", "not-done"]]);
  const [feed, iron] = treatments;
  expect(feed).toMatchObject({ formulation: "dry granule", epaRegistrationNumber: null, isRestrictedUse: false, plannedRate: "2.5 lb/1,000 sq ft", measuredBy: "as-planned-not-measured", fill: null });
  expect(feed?.total).toEqual({ dimension: "mass", amount: of("lb", "6").amount.toString(), words: "6 lb" });
  expect(feed?.lots.map(({ number, amount }) => [number, amount.words])).toEqual([["GM-1", "6 lb"]]);
  expect(feed?.lawns.map(({ lawnName, amount, treatedArea }) => [lawnName, amount.words, treatedArea.words])).toEqual([["Front", "6 lb", "2,400 sq ft"]]);
  expect(iron?.precautions).toContain("until dry");
  expect(treatments.map(({ notCountable }) => notCountable)).toEqual([[], []]);
});

test("a product without a label says that it is not on file", async () => {
  const { treatments } = await recordOf(visit, {}, ({ plan, ...facts }) => ({
    ...facts,
    plan: { ...plan, treatments: plan.treatments.map((treatment) => ({ ...treatment, label: "not-on-file" })) },
  }));
  expect(treatments.map(({ formulation, serviceType, activeIngredients, precautions }) => [formulation, serviceType, activeIngredients, precautions])).toEqual([
    ["not on file", "not on file", [], []], ["not on file", "not on file", [], []],
  ]);
  expect(treatments.map(({ notCountable }) => notCountable)).toEqual(["not-read", "not-read"]);
});

test("weather is taken whole or not at all, and an instrument that nobody named is not made up", async () => {
  expect((await recordOf(visit, { instrument: "" })).weather).toMatchObject({ kind: "taken", instrument: "instrument not named" });
  expect((await recordOf(visit, { windFrom: "" })).weather).toEqual({ kind: "not-taken" });
});

describe("the license", () => {
  test("is one of the property's state that stood on the day of the work", async () => {
    const personId = await aPerson(house, company, "Quinn Moss");
    const licenseOn = async (doneOn: string) => (await recordOf(visit, { applicatorId: personId, doneOn })).applicator.license;
    valueOf(await addLicense(house, company.owner.key, { ...licenseForm(personId), state: "IL", number: "IL-77" }));
    expect(await licenseOn("2026-04-14")).toBe(null);
    valueOf(await addLicense(house, company.owner.key, { ...licenseForm(personId), number: "IN-77", issuedOn: "2024-01-02", expiresOn: "2026-04-13" }));
    expect(await licenseOn("2026-04-14")).toBe(null);
    expect(await licenseOn("2026-04-13")).toMatchObject({ state: "IN", number: "IN-77", expiresOn: "2026-04-13" });
  });

  test("is a certified applicator's where there are two, for who did it and for who supervised", async () => {
    const personId = await aPerson(house, company, "Kit Lane");
    valueOf(await addLicense(house, company.owner.key, { ...licenseForm(personId), kind: "registered-technician", number: "T-1" }));
    valueOf(await addLicense(house, company.owner.key, { ...licenseForm(personId), kind: "certified-applicator", number: "C-1" }));
    const { applicator, supervisor } = await recordOf(visit, { applicatorId: personId, supervisorId: personId });
    expect([applicator, supervisor].map((worker) => [worker?.name, worker?.license?.number])).toEqual([["Kit Lane", "C-1"], ["Kit Lane", "C-1"]]);
  });
});

test("all findings stand on it, the gravest first", async () => {
  const held = await aVisitUnderHold(house, company, day);
  const lawns = { [held.frontId]: "done" } as const;
  const { findings } = await recordOf(held, { lawns, windMph: "", mixes: { "1": { measuredBy: "weight", amount: "30 lb" } } });
  expect(findings.map(({ rule }) => rule)).toEqual(expect.arrayContaining([held.rule, "put-down-above-label", "count-it", "weather-not-taken"]));
  expect(findings).toEqual(gravestFirst(findings));
  expect(findings[0]?.level).toBe("hold");
});

test("what was used under no line of the plan is a defect, not a record", async () => {
  const unplanned = ({ used, ...facts }: RecordFacts): RecordFacts => ({ ...facts, used: { ...used, used: used.used.map((one) => ({ ...one, line: 9 })) } });
  await expect(recordOf(visit, {}, unplanned)).rejects.toThrow("treatment 9 of a record is one that was planned");
});
