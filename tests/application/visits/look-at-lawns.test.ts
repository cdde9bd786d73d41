import { beforeAll, expect, test } from "vitest";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { completeVisit } from "#application/register/complete-visit";
import { readRecord } from "#application/register/read-record";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { readVisit } from "#application/visits/read-visit";
import { of } from "#domain/quantities/quantity";
import { aCompany, aMember, trailOf, valueOf } from "../../support/crew";
import { aFedVisit, aGround, aRecord, aVisitWith, completeForm, feedAndIron, type Ground, lookForm, preventer } from "../../support/crew-day";
import { A_PREVENTER_TEXT } from "../../support/label-texts";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { labelForm } from "../../support/shed";

allOnACrewDay();

let fed: Awaited<ReturnType<typeof aFedVisit>>;
beforeAll(async () => {
  fed = await aFedVisit(house, company, day);
  const barred = { ...labelForm(day.preventerId, A_PREVENTER_TEXT), basedOnNumber: 1, bloomAndBees: "not in bloom", grasses: "any turfgrass" };
  const { labelEntryId } = valueOf(await enterLabel(house, company.owner.key, barred));
  valueOf(await confirmLabel(house, company.owner.key, { labelEntryId }));
});

type On = Ground & { readonly visitId: string };
type Change = Parameters<typeof lookForm>[3];
const form = (change: Change = {}, on: On = fed) => lookForm(house, on, company.owner.personId, change);
const look = (change: Change = {}, on: On = fed) => lookAtLawns(house, company.owner.key, form(change, on));
const rows = () => house.ask<{ zone_id: string; blooms: string; said: string | null; seen_at: Date }>("select * from lawn_look where company_id = $1 order by entered_at, seen_at, blooms", [company.companyId]);
const fieldsOf = async (change: Change) => {
  const answer = await look(change);
  return answer.ok || answer.refusal.kind !== "bad-input" ? [] : Object.keys(answer.refusal.fields);
};

test("each lawn looked at is one row and all of them one deed; pressed twice, and twice at once, they stay", async () => {
  const pressed = form();
  expect(valueOf(await lookAtLawns(house, company.owner.key, pressed))).toEqual({ lawns: 2 });
  expect(valueOf(await lookAtLawns(house, company.owner.key, pressed))).toEqual({ lawns: 2 });
  expect(await rows()).toMatchObject([
    { zone_id: fed.backId, blooms: "no", said: null, seen_at: new Date("2026-04-14T11:15:00Z"), seen_by_id: company.owner.personId },
    { zone_id: fed.frontId, blooms: "yes", said: "Clover along the walk", seen_at: new Date("2026-04-14T11:15:00Z"), person_id: company.owner.personId },
  ]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "lawns-looked-at", subject_id: fed.visitId });
  const atOnce = form({ seenAt: "7:20" });
  const both = await Promise.all([lookAtLawns(house, company.owner.key, atOnce), lookAtLawns(house, company.owner.key, atOnce)]);
  expect(both.map(({ ok }) => ok)).toEqual([true, true]);
  expect(await rows()).toHaveLength(4);
});

test("the same form with something else in it writes nothing and says so", async () => {
  const pressed = form();
  valueOf(await lookAtLawns(house, company.owner.key, pressed));
  const before = await rows();
  const { personId } = await aMember(house, company, "technician");
  const { frontId, backId } = fed;
  const others: readonly Change[] = [
    { seenAt: "7:16" }, { seenById: personId }, { lawns: { [frontId]: "no", [backId]: "no" } }, { said: { [frontId]: "Dandelions" } },
    { lawns: { [frontId]: "yes" } }, { lawns: { [frontId]: "yes", [backId]: "not-looked" } },
  ];
  for (const change of others) expect(await lookAtLawns(house, company.owner.key, { ...pressed, ...change })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await rows()).toEqual(before);
});

test("a lawn that nobody looked at writes nothing, but what is said of it stays said", async () => {
  const before = (await rows()).length;
  const { frontId, backId } = fed;
  expect(valueOf(await look({ lawns: { [frontId]: "no", [backId]: "not-looked" }, said: {} }))).toEqual({ lawns: 1 });
  expect(valueOf(await look({ seenAt: "7:50", lawns: { [frontId]: "no", [backId]: "not-looked" }, said: { [backId]: "The gate was locked" } }))).toEqual({ lawns: 2 });
  expect(await rows()).toHaveLength(before + 3);
  expect(await fieldsOf({ lawns: { [frontId]: "not-looked", [backId]: "not-looked" }, said: { [frontId]: " " } })).toEqual([`lawns.${frontId}`]);
  expect(await fieldsOf({ lawns: {} })).toEqual([`lawns.${frontId}`]);
});

test("is refused for what can't have been seen: another visit's lawn, the future, nobody, another company's visit", async () => {
  const elsewhere = await aGround(house, company);
  const other = await aCompany(house, "Other Turf");
  const before = await rows();
  expect(await fieldsOf({ lawns: { [elsewhere.frontId]: "yes" } })).toEqual([`lawns.${elsewhere.frontId}`]);
  expect(await fieldsOf({ seenAt: "23:59" })).toEqual(["seenAt"]);
  expect(await fieldsOf({ seenOn: "2026-04-15" })).toEqual(["seenAt"]);
  expect(await fieldsOf({ seenById: other.owner.personId })).toEqual(["seenById"]);
  expect(await fieldsOf({ seenOn: "" })).toEqual(["seenOn"]);
  expect(await fieldsOf({ seenAt: "soon" })).toEqual(["seenAt"]);
  expect(await lookAtLawns(house, other.owner.key, form())).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await look({ visitId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await rows()).toEqual(before);
});

test("what was seen is never changed, emptied or taken out", async () => {
  valueOf(await look());
  await expect(house.ask("update lawn_look set blooms = 'no'")).rejects.toThrow();
  await expect(house.ask("delete from lawn_look")).rejects.toThrow();
  await expect(house.ask("truncate lawn_look")).rejects.toThrow();
});

/** A visit of a preventer whose label keeps it off what blooms, on both lawns. */
async function aVisitBarred(): Promise<On> {
  const ground = await aGround(house, company);
  return { ...ground, visitId: await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground)) };
}

async function ofFlowers(visitId: string): Promise<readonly string[]> {
  const { outcome } = valueOf(await readVisit(house, company.owner.key, { visitId }));
  return (outcome.ok ? outcome.value.findings : outcome.refusal.findings).filter(({ rule }) => rule.includes("bloom")).map(({ level, rule, about }) => `${level} ${rule} ${about.at(-1) ?? ""}`);
}

test("the visit's findings follow: not looked at wants care, in bloom holds, looked at and bare says nothing", async () => {
  const on = await aVisitBarred();
  expect(await ofFlowers(on.visitId)).toEqual(["take-care bloom-not-looked-at Front", "take-care bloom-not-looked-at Back"]);
  valueOf(await look({}, on));
  expect(await ofFlowers(on.visitId)).toEqual(["hold in-bloom Front"]);
  expect(await issueMixTicket(house, company.owner.key, { visitId: on.visitId })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  valueOf(await look({ seenAt: "7:45", lawns: { [on.frontId]: "no" }, said: { [on.frontId]: "Mowed off" } }, on));
  expect(await ofFlowers(on.visitId)).toEqual([]);
});

test("a look after the mix ticket was issued shows in the visit's findings and stands in the record, which it does not keep from being written", async () => {
  const on = await aVisitBarred();
  valueOf(await issueMixTicket(house, company.owner.key, { visitId: on.visitId }));
  valueOf(await look({}, on));
  expect(await ofFlowers(on.visitId)).toEqual(["hold in-bloom Front"]);
  const { registerEntryId } = valueOf(await completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, on, { mixes: { "1": { measuredBy: "as-planned-not-measured" } } })));
  const { record } = valueOf(await readRecord(house, company.owner.key, { registerEntryId }));
  const found = record.content.findings.filter(({ rule }) => rule.includes("bloom"));
  expect(found.map(({ level, rule, figure }) => [level, rule, figure])).toEqual([
    ["hold", "in-bloom", `The label: not in bloom. Seen in bloom on Apr 14, 2026, 7:15 am, by ${company.owner.name}: Clover along the walk.`],
  ]);
  // A visit that is over may still be looked at.
  expect(valueOf(await look({ seenAt: "7:55" }, on))).toEqual({ lawns: 2 });
});

const WATER = { wateredOn: "2026-04-14", wateredAt: "6:40", wateredBy: "sprinklers", waterToldBy: "customer", waterDepth: "0.25" } as const;
const wateredRows = () =>
  house.ask("select zone_id, blooms, watered_at, watered_by, water_told_by, water_depth::text from lawn_look where company_id = $1 and watered_at is not null order by entered_at, zone_id = $2", [company.companyId, fed.backId]);

test("water is one statement for the lawns that are ticked, also for one that nobody looked at; the deed tells of it", async () => {
  const { frontId, backId } = fed;
  const pressed = form({ ...WATER, lawns: { [frontId]: "no", [backId]: "not-looked" }, said: {}, watered: { [frontId]: "yes", [backId]: "yes" } });
  expect(valueOf(await lookAtLawns(house, company.owner.key, pressed))).toEqual({ lawns: 2 });
  expect(valueOf(await lookAtLawns(house, company.owner.key, pressed))).toEqual({ lawns: 2 });
  const told = { watered_at: new Date("2026-04-14T10:40:00Z"), watered_by: "sprinklers", water_told_by: "customer", water_depth: of("in", "0.25").amount.toString() };
  expect(await wateredRows()).toEqual([{ zone_id: frontId, blooms: "no", ...told }, { zone_id: backId, blooms: "not-looked", ...told }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { lawns: [{ lawn: "A Front", watered: { at: "2026-04-14T10:40:00.000Z", by: "sprinklers", toldBy: "customer", depth: "¼ in" } }, { lawn: "B Back" }] } });
  for (const change of [{ waterDepth: "" }, { wateredAt: "6:41" }, { wateredBy: "rain" }, { waterToldBy: "crew" }, { watered: { [frontId]: "yes" } }] as const) {
    expect(await lookAtLawns(house, company.owner.key, { ...pressed, ...change })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  }
  expect(await wateredRows()).toHaveLength(2);
});

test("of lawns whose flowers are not asked at all, water alone is enough", async () => {
  const { frontId } = fed;
  expect(valueOf(await look({ ...WATER, waterDepth: "", lawns: {}, said: {}, watered: { [frontId]: "yes" } }))).toEqual({ lawns: 1 });
  expect(await wateredRows()).toContainEqual(expect.objectContaining({ zone_id: frontId, blooms: "not-looked", water_depth: null }));
});

test("water that is not told whole, has not come yet, is too much or of a strange lawn is refused at its field", async () => {
  const { frontId } = fed;
  const watered = { [frontId]: "yes" } as const;
  const before = (await wateredRows()).length;
  expect(await fieldsOf({ watered })).toEqual(["wateredOn", "wateredAt", "wateredBy", "waterToldBy"]);
  expect(await fieldsOf({ ...WATER })).toEqual(["watered"]);
  expect(await fieldsOf({ ...WATER, watered, waterDepth: "0" })).toEqual(["waterDepth"]);
  expect(await fieldsOf({ ...WATER, watered, waterDepth: "7 in" })).toEqual(["waterDepth"]);
  expect(await fieldsOf({ ...WATER, watered, wateredAt: "23:50" })).toEqual(["wateredAt"]);
  expect(await fieldsOf({ ...WATER, watered: { [fed.visitId]: "yes" } })).toEqual(["watered"]);
  expect((await wateredRows()).length).toBe(before);
});

test("the table takes no half a statement about water, and none of water to come", async () => {
  const row = (water: string, blooms = "no") =>
    house.ask(
      `insert into lawn_look (company_id, lawn_look_id, request_id, zone_id, seen_at, entered_at, seen_by_id, person_id, blooms, watered_at, watered_by, water_told_by, water_depth)
       select company_id, gen_random_uuid(), gen_random_uuid(), zone_id, seen_at, entered_at, seen_by_id, person_id, '${blooms}', ${water} from lawn_look where company_id = $1 limit 1`,
      [company.companyId],
    );
  for (const water of ["seen_at, null, 'crew', null", "seen_at, 'rain', null, null", "null, 'rain', 'crew', null", "seen_at, 'dew', 'crew', null"]) {
    await expect(row(water)).rejects.toThrow("lawn_look_tells_of_water_whole");
  }
  await expect(row("null, null, null, null", "not-looked")).rejects.toThrow("lawn_look_says_something");
  await expect(row("entered_at + interval '1 minute', 'rain', 'crew', null")).rejects.toThrow("lawn_look_water_has_come");
  await expect(row("seen_at, 'rain', 'crew', 0")).rejects.toThrow("lawn_look_water_has_come");
});

test("what was put down the day before and must be watered in asks the next visit for it, until somebody says that it was", async () => {
  const ground = await aGround(house, company);
  const past = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
  await aRecord(house, company.owner, { ...ground, visitId: past }, { doneOn: "2026-04-06", mixes: { "1": { measuredBy: "weight", amount: "16 lb" } } });
  const next = { ...ground, visitId: await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, feedAndIron(day, ground)) };
  const overdue = async () => {
    const { outcome } = valueOf(await readVisit(house, company.owner.key, { visitId: next.visitId }));
    return outcome.ok ? outcome.value.findings.filter(({ rule }) => rule === "watering-in-overdue").map(({ what }) => what) : ["refused"];
  };
  expect(await overdue()).toEqual([expect.stringMatching(/^Greenmere \d+ \(put down Monday, Apr 6, 2026\) was to be watered in before this visit/u)]);
  valueOf(await look({ ...WATER, lawns: {}, said: {}, wateredOn: "2026-04-07", waterDepth: "0.25", watered: { [next.frontId]: "yes", [next.backId]: "yes" } }, next));
  // A quarter of an inch is less than its label asks for.
  expect(await overdue()).toHaveLength(1);
  valueOf(await look({ ...WATER, lawns: {}, said: {}, wateredOn: "2026-04-08", waterDepth: "0.5", watered: { [next.frontId]: "yes" } }, next));
  expect(await overdue()).toHaveLength(1);
  valueOf(await look({ ...WATER, lawns: {}, said: {}, wateredOn: "2026-04-08", waterDepth: "", watered: { [next.backId]: "yes" } }, next));
  expect(await overdue()).toEqual([]);
});
