import { describe, expect, test } from "vitest";
import { changePerson } from "#application/people/change-person";
import { completeVisit } from "#application/register/complete-visit";
import { readRecord } from "#application/register/read-record";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { of } from "#domain/quantities/quantity";
import { rateFrom } from "#domain/quantities/rate";
import { addLicense } from "#application/people/add-license";
import { licenseForm } from "../../support/attempts-of-company";
import { aCompany, aMember, aPerson, type TestMember, trailOf, valueOf } from "../../support/crew";
import {
  aCrewDay, aFedVisit, aFill, aGround, aJug, aRecord, aSharedFill, aVisitUnderHold, aVisitWith, completeForm, feedAndIron, type Ground,
} from "../../support/crew-day";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { aConfirmedLabel, aFeed, aLiquid, balancesOf } from "../../support/shed";

allOnACrewDay();

type Change = Parameters<typeof completeForm>[3];
type Visit = Ground & { readonly visitId: string };

/** What every plan of this day says of state and property; a record's own findings stand beside them. */
const OF_EVERY_PLAN = new Set(["nutrient-law-not-on-file", "mowing-day-missing", "watering-hours-not-on-file", "stains", "hold-up"]);

/** Writes a record and reads what stands in it, without the findings that every plan has. */
async function contentOf(visit: Visit, change?: Change, member: TestMember = company.owner) {
  const { registerEntryId } = await aRecord(house, member, visit, change);
  const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
  return { ...content, findings: content.findings.filter(({ rule }) => !OF_EVERY_PLAN.has(rule)) };
}

async function rulesOf(visit: Visit, change?: Change, member?: TestMember) {
  const { findings } = await contentOf(visit, change, member);
  return findings.map(({ rule }) => rule);
}

const pounds = (value: string) => of("lb", value).amount.toString();
const owed = (value: string) => `-${pounds(value)}`;

describe("what happened", () => {
  test("is written whole: amounts, lots, weather, license, and the visit is done with one deed", async () => {
    const visit = await aFedVisit(house, company, day);
    valueOf(await issueMixTicket(house, company.owner.key, { visitId: visit.visitId }));
    const content = await contentOf(visit);
    expect(content.weather).toEqual({ kind: "taken", temperatureF: 61, windMph: 4, windFrom: "SW", instrument: "Hand-held meter" });
    expect(content.applicator.license).toMatchObject({ state: "IN", kind: "certified-applicator" });
    expect(content.lawns.map(({ name, outcome }) => [name, outcome])).toEqual([["Front", "done"], ["Back", "done"]]);
    const [feed, iron] = content.treatments;
    expect(feed?.total).toEqual({ dimension: "mass", amount: pounds("16"), words: "16 lb" });
    expect(feed?.lots.map(({ number }) => number)).toEqual(["GM-1"]);
    expect(feed?.lawns.map(({ lawnName, amount }) => [lawnName, amount.words])).toEqual([["Front", "6 lb"], ["Back", "10 lb"]]);
    expect(iron?.lots.map(({ number }) => number)).toEqual(["IR-1"]);
    expect(content.visit.mixTicketNumber).toBe(1);
    expect(content.findings).toEqual([]);
    expect(await house.ask("select state from visit where visit_id = $1", [visit.visitId])).toEqual([{ state: "done" }]);
    expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "record-written", subject_id: visit.visitId });
  });

  test("plans the second look three days later on the lawns that were done", async () => {
    const visit = await aFedVisit(house, company, day);
    const { secondLookId } = await aRecord(house, company.owner, visit, { lawns: { [visit.frontId]: "done", [visit.backId]: "not-done" } });
    const look = valueOf(await readVisit(house, company.owner.key, { visitId: secondLookId ?? "" })).visit;
    expect(look).toMatchObject({ opensOn: "2026-04-17", closesOn: "2026-04-18", looksAgainAtId: visit.visitId, treatments: [], looks: [{ zoneIds: [visit.frontId] }] });
  });

  test("as planned counts only the lawns that were reached", async () => {
    const visit = await aFedVisit(house, company, day);
    const content = await contentOf(visit, { startedAt: "0:10", endedAt: "0:30", lawns: { [visit.frontId]: "done", [visit.backId]: "not-done" } });
    expect(content.treatments.map(({ total }) => total.words)).toEqual(["6 lb", "3.56 fl oz"]);
    expect(content.treatments.map(({ lawns }) => lawns.map(({ lawnName }) => lawnName))).toEqual([["Front"], ["Front"]]);
    expect(content.findings.map(({ rule }) => rule)).toEqual([]);
    expect(await house.ask("select state from visit where visit_id = $1", [visit.visitId])).toEqual([{ state: "part-done" }]);
  });

  test("bags, pounds and gallons are taken as they were measured", async () => {
    const visit = await aFedVisit(house, company, day);
    const content = await contentOf(visit, { mixes: { "1": { measuredBy: "bags", amount: "\u00BC bag" }, "2": { measuredBy: "meter", amount: "12.8" } } });
    expect(content.treatments.map(({ total }) => total.words)).toEqual(["12\u00BD lb", "9\u00BD fl oz"]);
    const weighed = await contentOf(await aFedVisit(house, company, day), { mixes: { "1": { measuredBy: "weight", amount: "15.25" }, "2": { measuredBy: "meter", amount: "12.8 gal" } } });
    expect(weighed.treatments.map(({ measuredBy }) => measuredBy)).toEqual(["weight", "meter"]);
  });
});

test("mixes may come as a list with gaps, as the browser's form holds numbered fields", async () => {
  const visit = await aFedVisit(house, company, day);
  const mixes = [undefined, { measuredBy: "weight", amount: "15.25" }, { measuredBy: "meter", amount: "12.8 gal" }] as unknown;
  const content = await contentOf(visit, { mixes });
  expect(content.treatments.map(({ measuredBy }) => measuredBy)).toEqual(["weight", "meter"]);
});

describe("the truth is recorded with its finding", () => {
  test("an expired license, a person who left, and a technician without a supervisor", async () => {
    const leaver = await aPerson(house, company, "Quinn Moss");
    valueOf(await addLicense(house, company.owner.key, { ...licenseForm(leaver), issuedOn: "2024-01-02", expiresOn: "2026-04-13" }));
    valueOf(await changePerson(house, company.owner.key, { personId: leaver, version: 1, name: "Quinn Moss", phone: "", leftOn: "2026-04-01" }));
    const content = await contentOf(await aFedVisit(house, company, day), { applicatorId: leaver });
    expect(content.applicator).toMatchObject({ name: "Quinn Moss", license: null });
    expect(content.findings.map(({ what }) => what)).toEqual(["Quinn Moss had no license on file that stood on that day."]);
    const technician = await aMember(house, company, "technician", "Sal Reed");
    valueOf(await addLicense(house, company.owner.key, licenseForm(technician.personId)));
    expect(await rulesOf(await aFedVisit(house, company, day), {}, technician)).toEqual(["supervisor-missing"]);
    expect(await rulesOf(await aFedVisit(house, company, day), { supervisorId: company.owner.personId, startedAt: "7:00", endedAt: "7:40" }, technician)).toEqual([]);
    expect(await rulesOf(await aFedVisit(house, company, day), { supervisorId: leaver, startedAt: "6:00", endedAt: "6:40" }, technician)).toEqual(["supervisor-without-license"]);
  });

  test("a part of the lawns, above the label, faster than anybody walks, late, and at two places at once", async () => {
    const other = await aMember(house, company, "applicator", "Kit Lane");
    valueOf(await addLicense(house, company.owner.key, { ...licenseForm(other.personId), kind: "certified-applicator" }));
    const visit = await aFedVisit(house, company, day);
    const lawns = { [visit.frontId]: "done", [visit.backId]: "part" } as const;
    expect(await rulesOf(visit, { lawns }, other)).toEqual(["part-of-a-lawn"]);
    const above = await contentOf(await aFedVisit(house, company, day), { startedAt: "7:00", endedAt: "7:02", mixes: { "1": { measuredBy: "weight", amount: "40 lb" }, "2": { measuredBy: "as-planned-not-measured" } } }, other);
    expect(above.findings.map(({ rule }) => rule)).toEqual(["put-down-above-label", "put-down-above-label", "very-fast"]);
    expect(await rulesOf(await aFedVisit(house, company, day), { doneOn: "2026-04-12" }, other)).toEqual(["entered-late"]);
    expect(await rulesOf(await aFedVisit(house, company, day), { startedAt: "8:30", endedAt: "8:50" }, other)).toEqual(["elsewhere-at-that-time"]);
  });

  test("wind and heat at the site that the label of what went down does not allow", async () => {
    const iron = (asked: Awaited<ReturnType<typeof contentOf>>) => asked.findings.filter(({ rule }) => rule === "weather-outside-label").map(({ figure }) => figure);
    const windy = await contentOf(await aFedVisit(house, company, day), { windMph: "25" });
    expect(iron(windy)).toEqual([expect.stringMatching(/The wind is 25 mph; the highest wind for Ironside \d+ is 10 mph\.$/u) as string]);
    expect(iron(await contentOf(await aFedVisit(house, company, day), { windMph: "10", temperatureF: "80", windFrom: "" }))).toEqual([expect.stringContaining("80 °F") as string]);
    // Nothing of the iron went down.
    const notSprayed = { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "0 gal" } } as const;
    expect(iron(await contentOf(await aFedVisit(house, company, day), { windMph: "25", mixes: notSprayed }))).toEqual([]);
  });

  test("more used than the books have is taken off the books all the same and asks for a count", async () => {
    const apart = await aCompany(house, "Small Stock Turf");
    const own = await aCrewDay(house, apart);
    const visit = await aFedVisit(house, apart, own);
    const { registerEntryId } = await aRecord(house, apart.owner, visit, { mixes: { "1": { measuredBy: "weight", amount: "900 lb" }, "2": { measuredBy: "as-planned-not-measured" } } });
    const { content } = valueOf(await readRecord(house, apart.owner.key, { registerEntryId })).record;
    expect(content.findings.map(({ rule }) => rule)).toContain("count-it");
    expect(await balancesOf(house, own.feedId)).toEqual({ lawn: pounds("900"), shop: owed("50"), supplier: owed("850"), truck: "0" });
  });

  test("holds that stand on the plan, and why a license holder said that they don't apply", async () => {
    const visit = await aVisitUnderHold(house, company, day);
    valueOf(await answerHold(house, company.owner.key, { visitId: visit.visitId, hold: visit.hold, licenseId: day.illinoisLicenseId, reason: "The test is in the mail." }));
    const onOneLawn = { lawns: { [visit.frontId]: "done" }, mixes: { "1": { measuredBy: "weight", amount: "6 lb" } } } as const;
    const content = await contentOf(visit, onOneLawn);
    expect(content.findings.map(({ level, rule }) => `${level} ${rule}`)).toContain("hold phosphorus-without-need");
    expect(content.holdAnswers).toMatchObject([{ rule: "phosphorus-without-need", reason: "The test is in the mail.", by: company.owner.name }]);
  });

  test("a look without products has the names of its lawns, and a look at no lawn is written too", async () => {
    const ground = await aGround(house, company);
    const visitId = await aVisitWith(house, company, ground, { "0": { productUse: "look", rate: "", reason: "grubs", lawns: { [ground.frontId]: "yes" } } });
    const content = await contentOf({ ...ground, visitId }, { lawns: { [ground.frontId]: "done" }, mixes: {} });
    expect(content).toMatchObject({ lawns: [{ name: "Front", grasses: ["Kentucky bluegrass", "perennial ryegrass"] }], treatments: [] });
    const nowhere = await aVisitWith(house, company, ground, { "0": { productUse: "look", rate: "", reason: "the gate", lawns: { [ground.frontId]: "yes" } } });
    await house.ask("delete from visit_task_zone where visit_id = $1", [nowhere]);
    expect(await contentOf({ ...ground, visitId: nowhere }, { lawns: {}, mixes: {} })).toMatchObject({ lawns: [], treatments: [] });
  });

  test("work that went past midnight", async () => {
    const visit = await aFedVisit(house, company, day);
    const content = await contentOf(visit, { doneOn: "2026-04-13", startedAt: "23:40", endedAt: "0:25", endedOn: "2026-04-14" });
    expect([content.startedAt, content.endedAt]).toEqual(["2026-04-14T03:40:00.000Z", "2026-04-14T04:25:00.000Z"]);
  });
});

describe("without a mix ticket to work out", () => {
  /** A visit with a product whose label nobody has entered, written straight into the plan. */
  async function unlabeled(counted: "mass" | "volume") {
    const productId = counted === "mass" ? await aFeed(house, company) : await aLiquid(house, company);
    const ground = await aGround(house, company);
    const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, feedAndIron(day, ground));
    const line = counted === "mass" ? 1 : 2;
    await house.ask("update visit_task set product_id = $1 where visit_id = $2 and line = $3", [productId, visitId, line]);
    return { ...ground, visitId, productId, line };
  }
  const asPlanned = { measuredBy: "as-planned-not-measured" } as const;

  test("amounts are written as they were typed, and the other product as its mix has it", async () => {
    const visit = await unlabeled("mass");
    const content = await contentOf(visit, { mixes: { "1": { measuredBy: "weight", amount: "15 lb" }, "2": asPlanned } });
    const typed = content.treatments.find(({ line }) => line === 1);
    expect(typed).toMatchObject({ productId: visit.productId, total: { words: "15 lb" }, formulation: "not on file", measuredBy: "weight", lots: [] });
    expect(typed?.lawns.map(({ amount }) => amount.words)).toEqual(["5.63 lb", "9.38 lb"]);
    expect(content.treatments.find(({ line }) => line === 2)?.lots).toHaveLength(1);
    expect(content.findings.map(({ rule }) => rule)).toEqual(expect.arrayContaining(["label-not-entered", "mix-not-worked-out", "count-it"]));
  });

  test("as planned is the planned rate on the ground; gallons of a fill count too; what was not said is asked for", async () => {
    const planned = await contentOf(await unlabeled("volume"), { mixes: { "1": asPlanned, "2": asPlanned } });
    expect(planned.treatments.find(({ line }) => line === 2)?.total).toMatchObject({ words: "9.6 fl oz" });
    const visit = await unlabeled("volume");
    const { fillId } = await aFill(house, company, day, [visit.visitId]);
    const gallons = await contentOf(visit, { mixes: { "1": asPlanned, "2": { measuredBy: "meter", amount: "10 gal", fillId } } });
    expect(gallons.treatments.find(({ line }) => line === 2)?.fill?.sprayed.words).toBe("10 gal");
    const open = await unlabeled("mass");
    expect(await completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, open, { mixes: { "2": asPlanned } }))).toMatchObject({
      ok: false, refusal: { kind: "bad-input", fields: { "mixes.1.measuredBy": "Say how much was put down, or that it was as planned and not measured." } },
    });
  });

  test("a lawn that was taken off the plan since keeps nothing from being written", async () => {
    const visit = await aFedVisit(house, company, day);
    await house.ask("update zone set removed_at = now() where zone_id = $1", [visit.backId]);
    const content = await contentOf(visit, { mixes: { "1": { measuredBy: "bags", amount: "1/4" }, "2": { measuredBy: "meter", amount: "9.6 fl oz" } } });
    expect(content.treatments.map(({ total }) => total.words)).toEqual(["12\u00BD lb", "9.6 fl oz"]);
    expect(content.lawns.map(({ name }) => name)).toEqual(["Front", "Back"]);
  });
});

describe("fills", () => {
  test("three visits share one fill: their draws add up and the last canonical unit leaves the tank", async () => {
    const apart = await aCompany(house, "Shared Fill Turf");
    const own = await aCrewDay(house, apart);
    const { visits, fillId } = await aSharedFill(house, apart, own);
    const [first, second, third] = visits;
    for (const [visit, gallons, hours] of [[first, "13.3 gal", "5"], [second, "13.4 gal", "6"], [third, "13.3 gal", "7"]] as const) {
      if (visit === undefined) throw new Error("three visits share the fill");
      await aRecord(house, apart.owner, visit, { startedAt: `${hours}:00`, endedAt: `${hours}:30`, mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: gallons, fillId } } });
    }
    expect((await balancesOf(house, own.ironId))["tank"]).toBe("0");
    expect(await house.ask("select count(*)::int as draws, sum(volume)::text as volume, bool_and(is_measured) as measured from fill_draw where fill_id = $1", [fillId])).toEqual([
      { draws: 3, volume: of("gal", "40").amount.toString(), measured: true },
    ]);
  });

  test("more sprayed than filled takes what was left and says so", async () => {
    const visit = await aFedVisit(house, company, day);
    const { fillId } = await aFill(house, company, day, [visit.visitId], { finished: "10 gal", products: { [day.ironId]: "8 fl oz" } });
    const content = await contentOf(visit, { startedAt: "3:00", endedAt: "3:30", mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "12 gal", fillId } } });
    expect(content.treatments.find(({ line }) => line === 2)?.total.words).toBe("8 fl oz");
    expect(content.findings.map(({ rule }) => rule)).toEqual(["more-sprayed-than-filled"]);
  });

  test("what was in the tank beyond the plan is recorded by the same gallons, leaves the tank, and counts toward limits", async () => {
    const visit = await aFedVisit(house, company, day);
    const killerId = await aLiquid(house, company);
    const general = { ...A_WHOLE_IRON_TEXT.general, epaRegistrationNumber: "DEMO-0000-61", activeIngredients: "Oxathrin; 4 lb per gal; Group 4 herbicide" };
    await aConfirmedLabel(house, company, killerId, { ...A_WHOLE_IRON_TEXT, general });
    await aJug(house, company, day, killerId, "WK-1");
    const { fillId } = await aFill(house, company, day, [visit.visitId], { products: { [day.ironId]: "30 fl oz", [killerId]: "40 fl oz" } });
    const content = await contentOf(visit, { startedAt: "2:00", endedAt: "2:30", mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "10 gal", fillId } } });
    expect(content.treatments.map(({ line, total, plannedRate }) => [line, total.words, plannedRate])).toEqual([[1, "16 lb", "2.5 lb/1,000 sq ft"], [2, "7\u00BD fl oz", "1.5 fl oz/1,000 sq ft"], [3, "10 fl oz", "not planned here"]]);
    const killer = content.treatments[2];
    expect(killer).toMatchObject({ productId: killerId, epaRegistrationNumber: "DEMO-0000-61", serviceType: "fertilizer", fill: { fillId }, lots: [{ number: "WK-1" }] });
    // 10 fl oz of 4 lb per gal on 6,400 sq ft.
    const oxathrin = rateFrom("active-ingredient-mass-per-area", of("lb", { numerator: 10n, denominator: 32n }), of("sq ft", 6400n));
    expect(killer?.lawns.map(({ lawnName, activeIngredients }) => [lawnName, activeIngredients])).toEqual(["Front", "Back"].map((name) => [name, [{ name: "Oxathrin", amount: oxathrin.amount.toString(), per: oxathrin.per.toString() }]]));
    expect(content.findings.map(({ level, rule }) => [level, rule])).toEqual([["hold", "product-not-planned"]]);
    expect(content.findings[0]?.figure).toBe("10 fl oz of it came out with what was sprayed. It is a pesticide that is not planned there.");
    expect(await balancesOf(house, killerId)).toMatchObject({ tank: of("fl oz", "30").amount.toString(), lawn: of("fl oz", "10").amount.toString() });
    const past = valueOf(await readVisit(house, company.owner.key, { visitId: await aVisitWith(house, company, { ...visit, routeDayId: day.routeDayId }, feedAndIron(day, visit)) }));
    const history = past.outcome.ok ? past.outcome.value.question.lawns.flatMap((lawn) => lawn.history.filter(({ productId }) => productId === killerId)) : [];
    expect(history.map(({ activeIngredients }) => activeIngredients)).toMatchObject([[{ name: "Oxathrin", rate: oxathrin }], [{ name: "Oxathrin", rate: oxathrin }]]);
  });
});

describe("is refused", () => {
  const complete = async (visit: Visit, change: Change) => completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, visit, change));

  test("only for who, what and when", async () => {
    const visit = await aFedVisit(house, company, day);
    const fields = async (change: Change) => {
      const answer = await complete(visit, change);
      return !answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer;
    };
    expect(await fields({ applicatorId: house.newId() })).toEqual({ applicatorId: "Choose a person of the crew." });
    expect(await fields({ supervisorId: house.newId() })).toEqual({ supervisorId: "Choose a person of the crew." });
    expect(await fields({ endedAt: "7:59" })).toEqual({ endedAt: "It ended before it started." });
    expect(await fields({ endedAt: "9:01" })).toEqual({ endedAt: "This moment has not come yet." });
    expect(await fields({ lawns: { [visit.frontId]: "done" } })).toEqual({ [`lawns.${visit.backId}`]: "Say how Back came out." });
    expect(await fields({ lawns: { [visit.frontId]: "not-done", [visit.backId]: "not-done" } })).toEqual({
      [`lawns.${visit.frontId}`]: "Nothing was done here. Call the visit off instead of writing a record.",
    });
    expect(await fields({ mixes: {} })).toEqual({ "mixes.1.measuredBy": "Say how much was put down, or that it was as planned and not measured." });
    const planned = { measuredBy: "as-planned-not-measured" } as const;
    const neither = "Empty this, because it says as planned and not measured, or say how this amount was measured.";
    expect(await fields({ mixes: { "1": { ...planned, amount: "9 lb" }, "2": { ...planned, amount: " " } } })).toEqual({ "mixes.1.amount": neither });
    expect(await fields({ mixes: { "1": planned, "2": { ...planned, fillId: house.newId() } } })).toEqual({ "mixes.2.fillId": "This fill is not on file. Choose another." });
  });

  test("for another company's visit, and for a form that was sent for another visit", async () => {
    const visit = await aFedVisit(house, company, day);
    const other = await aCompany(house, "Other Turf");
    expect(await completeVisit(house, other.owner.key, completeForm(house, other.owner.personId, visit))).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
    const form = completeForm(house, company.owner.personId, visit);
    const first = valueOf(await completeVisit(house, company.owner.key, form));
    expect(valueOf(await completeVisit(house, company.owner.key, form))).toEqual(first);
    const second = await aFedVisit(house, company, day);
    expect(await completeVisit(house, company.owner.key, { ...completeForm(house, company.owner.personId, second), requestId: form.requestId })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  });
});
