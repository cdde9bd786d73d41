import { expect, test } from "vitest";
import { readDay } from "#application/days/read-day";
import { visitOnItsDay, withTankFindings } from "#application/days/tank-findings";
import { completeVisit } from "#application/register/complete-visit";
import { readRecord } from "#application/register/read-record";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { type WorkedVisit } from "#application/visits/visit-ticket";
import { hold, note } from "#domain/foundation/finding";
import { aCompany, valueOf } from "../../support/crew";
import { aCleanOut, aFedVisit, aGround, aVisitWith, completeForm, CREW_DAY, feedAndIron, inWorkOf } from "../../support/crew-day";
import { countingHouse } from "../../support/counted-queries";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const truck = async () => {
  const [only] = valueOf(await readDay(house, company.owner.key, { date: CREW_DAY })).trucks;
  if (only === undefined) throw new Error("A truck is out.");
  return only;
};
const cleanOutHolds = async (visitId: string) => valueOf(await readVisit(house, company.owner.key, { visitId })).openHolds.filter(({ rule }) => rule === "clean-out").length;

test("a tank of which nobody knows what it held keeps every visit's mix ticket from being issued until its clean-out is on file", async () => {
  const [one, two] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  for (const { visitId } of [one, two]) {
    expect(await cleanOutHolds(visitId)).toBe(1);
    expect(await issueMixTicket(house, company.owner.key, { visitId })).toMatchObject({
      ok: false,
      refusal: { kind: "conflict", sentence: "No mix ticket while a hold stands. What the tank of 100 gal tank held last is not on file." },
    });
  }
  const held = await truck();
  expect(held.stops.map(({ isHeld }) => isHeld)).toEqual([true, true]);
  expect(held.found.filter(({ finding }) => finding.rule === "clean-out").map(({ at }) => at)).toEqual([one.visitId, two.visitId]);
  await aCleanOut(house, company, day);
  expect((await truck()).stops.map(({ isHeld }) => isHeld)).toEqual([false, false]);
  for (const { visitId } of [one, two]) valueOf(await issueMixTicket(house, company.owner.key, { visitId }));
});

test("a hold that nobody resolved stands with the record of what was done all the same", async () => {
  const visit = await aFedVisit(house, company, day);
  const { registerEntryId } = valueOf(await completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, visit)));
  const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
  expect(content.findings.filter(({ rule }) => rule === "clean-out")).toMatchObject([{ level: "hold", what: "What the tank of 100 gal tank held last is not on file." }]);
});

test("a truck that would carry too much holds all that it carries something for, and is said once of the truck", async () => {
  await aCleanOut(house, company, day);
  const [one, two] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  await house.ask("update vehicle set payload = 1 where vehicle_id = $1", [day.vehicleId]);
  const { stops, found, routeDayId } = await truck();
  expect(stops.map(({ isHeld }) => isHeld)).toEqual([true, true]);
  expect(found.filter(({ finding }) => finding.rule === "above-payload").map(({ at }) => at)).toEqual([routeDayId]);
  for (const { visitId } of [one, two]) expect(valueOf(await readVisit(house, company.owner.key, { visitId })).openHolds.map(({ rule }) => rule)).toContain("above-payload");
});

test("a visit on no day, one that is over and another company's are worked out without a tank plan", async () => {
  const ground = await aGround(house, company);
  const free = await aVisitWith(house, company, ground, feedAndIron(day, ground));
  const over = await aFedVisit(house, company, day);
  await house.ask("update visit set state = 'done' where visit_id = $1", [over.visitId]);
  for (const visitId of [free, over.visitId]) expect(await cleanOutHolds(visitId)).toBe(0);
  const other = await aCompany(house);
  expect(await inWorkOf(house, other, (work) => visitOnItsDay(work, free))).toBeUndefined();
});

test("what is said twice is said once, and what is said of another visit or of the truck without a hold is left to them", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const worked = await inWorkOf(house, company, (work) => visitOnItsDay(work, visitId));
  if (worked?.outcome.ok !== true) throw new Error("The visit can be worked out.");
  const words = { source: "house", about: [] } as const;
  const found = [
    { visitId, finding: hold("office", { ...words, rule: "one", what: "One." }) },
    { visitId, finding: hold("office", { ...words, rule: "one", what: "One." }) },
    { visitId: "another", finding: hold("office", { ...words, rule: "two", what: "Two." }) },
    { visitId: null, finding: note({ ...words, rule: "three", what: "Three." }) },
  ];
  const [folded] = withTankFindings<WorkedVisit>([worked], [], { found });
  const rules = folded?.outcome.ok === true ? folded.outcome.value.findings.map(({ rule }) => rule) : [];
  expect(rules.filter((rule) => ["one", "two", "three"].includes(rule))).toEqual(["one"]);
  // Gravest first, so before every care.
  expect(folded?.outcome.ok === true && folded.outcome.value.findings.findIndex(({ rule }) => rule === "one")).toBeLessThan(2);
});

test("the number of queries for one visit does not hang on the stops of its day", async () => {
  const first = await aFedVisit(house, company, day);
  const queries = async () => {
    const counted = countingHouse(house);
    valueOf(await readVisit(counted.house, company.owner.key, { visitId: first.visitId }));
    return counted.count();
  };
  await aFedVisit(house, company, day);
  const ofTwo = await queries();
  for (let more = 0; more < 3; more += 1) await aFedVisit(house, company, day);
  expect(await queries()).toEqual(ofTwo);
});
