import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { completeVisitSchema } from "#application/register/complete-visit.schema";
import { findingsOfRecord, type RecordAtHand } from "#application/register/findings-of-record";
import { type RecordPlan } from "#application/register/record-plan";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { type RecordedLicense } from "#domain/register/record-content";
import { aCompany, aPerson, type TestCompany, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, aRecord, completeForm, inWorkOf, lookForm } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";
import { FEED } from "../../support/ticket";

let house: TestHouse;
let company: TestCompany;
const FRONT = "00000000-0000-4000-8000-00000000f001";
const BACK = "00000000-0000-4000-8000-00000000f002";
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const LICENSE: RecordedLicense = { kind: "certified-applicator", state: "IN", number: "C-1", category: "3b Turf", expiresOn: "2026-12-31" as CalendarDate };
const someone = (license: RecordedLicense | null, name = "Rowan Ash") => ({ personId: "rowan", name, license });

/** A feed on a front lawn of so many square feet, and a back lawn that the plan has nothing for. */
function planOf(squareFeet: bigint): RecordPlan {
  const [area, none] = [of("sq ft", squareFeet), of("sq ft", 0n)];
  const { line, productId, label, use, rate, rateText, reason, gear } = FEED;
  return {
    treatments: [
      {
        ...{ line, productId, productName: label.productName, countedBy: "mass", rate, rateText, reason, equipmentName: gear.name, label: { label, use } },
        lawns: [{ zoneId: FRONT, letter: "A", name: "Front", lawnArea: area, keptClear: none, treatedArea: area }],
      },
    ],
    lawns: [{ zoneId: FRONT, name: "Front", grasses: [] }, { zoneId: BACK, name: "Back", grasses: [] }],
    ...{ mixes: [], mixTicketNumber: null, findings: [], holdAnswers: [] },
  };
}

/** Work on a small lawn from 8:00 to 8:45, entered at 9:00: nothing is to be said of it. */
async function findings(at: Partial<RecordAtHand> = {}, form: Parameters<typeof completeForm>[3] = {}) {
  const [startedAt, endedAt] = [new Date("2026-04-14T12:00:00Z"), new Date("2026-04-14T12:45:00Z")];
  const visit = { propertyId: "", frontId: FRONT, backId: BACK, visitId: house.newId() };
  const parsed = completeVisitSchema.parse(completeForm(house, company.owner.personId, visit, form));
  return inWorkOf(house, company, (work) => findingsOfRecord(work, parsed, { plan: planOf(2000n), unplanned: [], startedAt, endedAt, applicator: someone(LICENSE), supervisor: null, ...at }));
}
const rules = async (...asked: Parameters<typeof findings>) => (await findings(...asked)).map(({ level, rule }) => `${level} ${rule}`);

test("of work that was entered at once, whole and by a license holder nothing is said", async () => {
  expect(await findings()).toEqual([]);
});

describe("times", () => {
  test("a day after the end is in time, a minute more is late", async () => {
    const ended = (endedAt: string) => findings({ startedAt: new Date("2026-04-13T12:00:00Z"), endedAt: new Date(endedAt) });
    expect(await ended("2026-04-13T13:00:00Z")).toEqual([]);
    expect((await ended("2026-04-13T12:59:00Z")).map(({ level, rule }) => [level, rule])).toEqual([["note", "entered-late"]]);
  });

  test("two thousand square feet a minute is a pace, a foot more is none; only lawns that were done count", async () => {
    const inOneMinute = { startedAt: new Date("2026-04-14T12:00:00Z"), endedAt: new Date("2026-04-14T12:01:00Z") };
    expect(await findings({ ...inOneMinute, plan: planOf(2000n) })).toEqual([]);
    expect((await findings({ ...inOneMinute, plan: planOf(2001n) })).map(({ rule, figure }) => [rule, figure])).toEqual([["very-fast", "2,001 sq ft in 1 min."]]);
    expect(await findings({ ...inOneMinute, plan: planOf(2001n) }, { lawns: { [FRONT]: "not-done", [BACK]: "done" } })).toEqual([]);
  });

  test("the same person on record elsewhere at the same time, by the number of that record", async () => {
    const apart = await aCompany(house, "Two Places Turf");
    const { number } = await aRecord(house, apart.owner, await aFedVisit(house, apart, await aCrewDay(house, apart)));
    const between = async (from: string, until: string, applicatorId = apart.owner.personId) => {
      const form = completeVisitSchema.parse(completeForm(house, applicatorId, { propertyId: "", frontId: FRONT, backId: BACK, visitId: house.newId() }));
      const at = { plan: planOf(2000n), unplanned: [], applicator: someone(LICENSE), supervisor: null, startedAt: new Date(`2026-04-14T${from}Z`), endedAt: new Date(`2026-04-14T${until}Z`) };
      return (await inWorkOf(house, apart, (work) => findingsOfRecord(work, form, at))).map(({ rule, figure }) => [rule, figure]);
    };
    expect(await between("12:44:00", "13:00:00")).toEqual([["elsewhere-at-that-time", `Record ${String(number)} has hours of this one.`]]);
    expect(await between("12:45:00", "13:00:00")).toEqual([]);
    expect(await between("12:10:00", "12:20:00", await aPerson(house, apart))).toEqual([]);
  });
});

test("licenses: none, a technician alone, and a supervisor without a certified applicator's", async () => {
  const technician = someone({ ...LICENSE, kind: "registered-technician" });
  expect(await rules({ applicator: someone(null) })).toEqual(["take-care license-missing"]);
  expect(await rules({ applicator: technician })).toEqual(["take-care supervisor-missing"]);
  expect(await rules({ applicator: technician, supervisor: someone(LICENSE, "Kit Lane") })).toEqual([]);
  expect(await rules({ applicator: technician, supervisor: technician })).toEqual(["take-care supervisor-without-license"]);
  expect((await findings({ supervisor: someone(null, "Kit Lane") })).map(({ what }) => what)).toEqual(["Kit Lane had no certified applicator's license on file that stood on that day."]);
});

test("weather that nobody took, and weather of which a part was read", async () => {
  const figures = async (form: Parameters<typeof completeForm>[3]) => (await findings({}, form)).map(({ rule, figure }) => [rule, figure]);
  expect(await figures({ temperatureF: "", windMph: "", windFrom: "", instrument: "" })).toEqual([["weather-not-taken", "Nothing was read."]]);
  expect(await figures({ windMph: "" })).toEqual([["weather-not-taken", "Only this was read: 61 \u00B0F, from SW (Hand-held meter)."]]);
  expect(await figures({ temperatureF: "", instrument: "" })).toEqual([["weather-not-taken", "Only this was read: wind 4 mph, from SW."]]);
  expect(await figures({ windMph: "0" })).toEqual([]);
});

test("a part of a lawn is said by its name, where something was put down on it", async () => {
  expect((await findings({}, { lawns: { [FRONT]: "part", [BACK]: "part" } })).map(({ rule, what }) => [rule, what])).toEqual([["part-of-a-lawn", "Only a part of Front was done."]]);
});

describe("flowers", () => {
  /** A feed whose label keeps it off what blooms, on a front lawn that stands in the company's books. */
  function barredOn(frontId: string): RecordPlan {
    const plan = planOf(2000n);
    const [treatment] = plan.treatments;
    if (treatment === undefined || treatment.label === "not-on-file") throw new Error("the plan has a label");
    if (treatment.label.use === "not-known") throw new Error("the plan has a use");
    const use = { ...treatment.label.use, bloomAndBees: { labelWords: "Do not apply to blooming weeds.", basis: "label", source: "label of a feed" } as const };
    const lawns = treatment.lawns.map((lawn) => ({ ...lawn, zoneId: frontId }));
    return { ...plan, treatments: [{ ...treatment, label: { ...treatment.label, use }, lawns }], lawns: [{ zoneId: frontId, name: "Front", grasses: [] }] };
  }

  test("what is on file of the day it was really done belongs to the record, on the lawns that were reached", async () => {
    const day = await aCrewDay(house, company);
    const fed = await aFedVisit(house, company, day);
    const [plan, onFront] = [barredOn(fed.frontId), (outcome: "done" | "part" | "not-done") => ({ lawns: { [fed.frontId]: outcome } })];
    const seen = async (change: Parameters<typeof lookForm>[3]) => valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId, change)));
    expect(await rules({ plan }, onFront("done"))).toEqual(["take-care bloom-not-looked-at"]);
    await seen({});
    expect(await rules({ plan }, onFront("done"))).toEqual(["hold in-bloom"]);
    expect(await rules({ plan }, onFront("not-done"))).toEqual([]);
    expect(await rules({ plan }, { ...onFront("done"), doneOn: "2026-04-13" })).toEqual(["take-care bloom-not-looked-at"]);
    await seen({ seenAt: "7:40", lawns: { [fed.frontId]: "no" }, said: {} });
    expect((await rules({ plan }, onFront("part"))).filter((rule) => rule.includes("bloom"))).toEqual([]);
  });

  test("a label that nobody has read, or that is not on file, says nothing twice", async () => {
    const plan = planOf(2000n);
    const treatments = plan.treatments.map((treatment) => ({ ...treatment, label: "not-on-file" as const }));
    expect(await rules({ plan: { ...plan, treatments } })).toEqual([]);
  });
});
