import { afterAll, beforeAll, expect, test } from "vitest";
import { inCompany } from "#adapters/postgres/company-work";
import { dayUnderChange, operatorOf, returnOf, settleOrder, visitUnderChange } from "#application/days/route-day-stops";
import { type Work } from "#application/use-case";
import { aCompany, aPerson, type TestCompany } from "../../support/crew";
import { aDayOf, aShop, aVisit, DAY, stopsOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function working<Answer>(body: (work: Work) => Promise<Answer>): Promise<Answer> {
  const { key } = company.owner;
  const answer = await inCompany(house.client, key, (tx, member, facts) =>
    body({ tx, member, company: facts, sessionVersion: key.sessionVersion, now: house.now(), newId: house.newId, newSecret: house.newSecret }),
  );
  if (answer === "signed-out") throw new Error("The owner is signed out.");
  return answer;
}

test("a day is read with its truck and stops, or is not there", async () => {
  const { routeDayId, visitIds } = await aDayOf(house, company, [{}, {}]);
  const day = await working((work) => dayUnderChange(work, routeDayId));
  expect(day).toMatchObject({ date: DAY, truck: expect.stringMatching(/^Truck \d+$/u) as unknown, stops: visitIds.map((visitId) => ({ visitId })) });
  expect(await working((work) => dayUnderChange(work, house.newId()))).toBeUndefined();
});

test("stops that an order does not name come after those it names, and times are emptied or given with the shop's position", async () => {
  const { routeDayId, visitIds: [one = "", two = "", three = ""] } = await aDayOf(house, company, [{}, {}, { window: { fromMinute: 700, untilMinute: 800 } }]);
  expect(await working((work) => settleOrder(work, routeDayId, [three]))).toMatchObject({ returnsAtMinute: null });
  expect((await stopsOf(house, routeDayId)).map(({ visit_id }) => visit_id)).toEqual([three, one, two]);
  await aShop(house, company);
  const settled = await working((work) => settleOrder(work, routeDayId));
  const [first] = await stopsOf(house, routeDayId);
  // Nobody is on the ground before its window opens.
  expect(first).toMatchObject({ visit_id: three, arrives_at_minute: 700 });
  const day = await working((work) => dayUnderChange(work, routeDayId));
  if (day === undefined) throw new Error("The day is gone.");
  expect(await working((work) => returnOf(work, day))).toBe(settled.returnsAtMinute);
});

test("a visit that was made, and one that is not there, are not changed", async () => {
  const planned = await aVisit(house, company);
  const made = await aVisit(house, company, { state: "not-done" });
  expect(await working((work) => visitUnderChange(work, planned.visitId))).toMatchObject({ ok: true, value: { stop: null } });
  expect(await working((work) => visitUnderChange(work, made.visitId))).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await working((work) => visitUnderChange(work, house.newId()))).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});

test("who applies is of the company and still with it", async () => {
  const personId = await aPerson(house, company, "Robin Vale");
  expect(await working((work) => operatorOf(work, personId))).toEqual({ ok: true, value: { name: "Robin Vale" } });
  await house.ask("update person set left_on = '2026-04-01' where person_id = $1", [personId]);
  expect(await working((work) => operatorOf(work, personId))).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await working((work) => operatorOf(work, house.newId()))).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
