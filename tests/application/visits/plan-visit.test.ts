import { afterAll, beforeAll, expect, test } from "vitest";
import { planVisit } from "#application/visits/plan-visit";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aZone } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";
import { aLabeledFeed, treatmentRow, visitForm } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
let on: { zoneId: string; propertyId: string; productId: string };
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  on = { ...(await aZone(house, company)), productId: await aLabeledFeed(house, company) };
});
afterAll(() => house.close());

type Form = ReturnType<typeof visitForm>;
const plan = (change: Partial<Omit<Form, "tasks">> & { tasks?: Record<string, object> } = {}) => planVisit(house, company.owner.key, { ...visitForm(house, on), ...change });

test("a visit by hand is written with its tasks, its customer's hours and a second look", async () => {
  const tasks = { "0": { ...treatmentRow(on.productId), lawns: { [on.zoneId]: "yes" } }, "1": { productUse: "look", rate: "", reason: "grubs", lawns: { [on.zoneId]: "yes" } } };
  const { visitId } = valueOf(await plan({ customerFrom: "09:30", customerUntil: "16:00", secondLook: "10", tasks }));
  const [visit] = await house.ask("select round_id, name, window_from_minute, window_until_minute, second_look_after_days, service_minutes from visit where visit_id = $1", [visitId]);
  expect(visit).toEqual({ round_id: null, name: "Call-back", window_from_minute: 570, window_until_minute: 960, second_look_after_days: 10, service_minutes: 18 });
  expect(await house.ask("select line, kind, rate_text, reason from visit_task where visit_id = $1 order by line", [visitId])).toEqual([
    { line: 1, kind: "treatment", rate_text: "2.5 lb/1,000 sq ft", reason: "feed" },
    { line: 2, kind: "look", rate_text: null, reason: "grubs" },
  ]);
  expect(await house.ask("select line, zone_id from visit_task_zone where visit_id = $1 order by line", [visitId])).toEqual([1, 2].map((line) => ({ line, zone_id: on.zoneId })));
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "visit-planned", subject_id: visitId, details: { tasks: ["Established lawns, 2.5 lb/1,000 sq ft, for feed", "look: grubs"] },
  });
});

test("sent twice, also at once, it is planned once; for another property the same form is refused", async () => {
  const form = visitForm(house, on);
  const answers = await Promise.all([planVisit(house, company.owner.key, form), planVisit(house, company.owner.key, form)]);
  expect(answers.map(valueOf)).toEqual(Array.from({ length: 2 }, () => ({ visitId: form.requestId, propertyId: on.propertyId })));
  expect(await house.ask("select count(*)::int from visit where visit_id = $1", [form.requestId])).toEqual([{ count: 1 }]);
  const { propertyId } = await aZone(house, company);
  expect(await planVisit(house, company.owner.key, { ...form, propertyId })).toMatchObject({ refusal: { kind: "conflict" } });
});

test("what does not fit is refused at its field and nothing is written", async () => {
  const before = await house.books();
  const lawns = { [on.zoneId]: "yes" };
  const strange = await aCompany(house, "Other Turf").then((other) => aZone(house, other));
  const withoutStranger = await house.books();
  expect(Object.keys(before)).toEqual(Object.keys(withoutStranger));
  const refusals: [Parameters<typeof plan>[0], string][] = [
    [{ tasks: { "0": { ...treatmentRow(on.productId), lawns: {} } } }, "tasks.0.lawns"],
    [{ tasks: { "0": { ...treatmentRow(on.productId), lawns: { [strange.zoneId]: "yes" } } } }, "tasks.0.lawns"],
    [{ tasks: { "2": { ...treatmentRow(on.productId, "9 lb/1,000 sq ft"), lawns } } }, "tasks.2.rate"],
    [{ tasks: { "0": { productUse: "look", rate: "2 lb/1,000 sq ft", reason: "grubs", lawns } } }, "tasks.0.rate"],
    [{ tasks: { "0": { productUse: "look", rate: "", spotShare: "5%", reason: "grubs", lawns } } }, "tasks.0.spotShare"],
    [{ tasks: { "0": { ...treatmentRow(on.productId), spotShare: "0", lawns } } }, "tasks.0.spotShare"],
    [{ tasks: { "0": { ...treatmentRow(on.productId), spotShare: "101 %", lawns } } }, "tasks.0.spotShare"],
    [{ tasks: { "0": { productUse: "", rate: "", spotShare: "5%", reason: "", lawns } } }, "tasks.0.productUse"],
    [{ tasks: { "0": { productUse: "", rate: "", reason: "", lawns } } }, "tasks.0.productUse"],
    [{ customerFrom: "09:00" }, "customerUntil"],
    [{ customerFrom: "09:00", customerUntil: "09:00" }, "customerUntil"],
    [{ customerFrom: "25:00", customerUntil: "26:00" }, "customerFrom"],
    [{ closesOn: "2026-04-13" }, "closesOn"],
  ];
  for (const [change, field] of refusals) expect(await plan(change), field).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await plan({ propertyId: house.newId() })).toMatchObject({ refusal: { kind: "not-found" } });
  expect(await house.books()).toEqual(withoutStranger);
});

test("spot work is written with its share, and stands in the trail", async () => {
  const tasks = { "0": { ...treatmentRow(on.productId), spotShare: "2.5 %", lawns: { [on.zoneId]: "yes" } } };
  const { visitId } = valueOf(await plan({ tasks }));
  expect(await house.ask("select spot_share_basis_points from visit_task where visit_id = $1", [visitId])).toEqual([{ spot_share_basis_points: 250 }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { tasks: ["Established lawns, 2.5 lb/1,000 sq ft on spots, 2.5% of the lawn, for feed"] } });
});
