import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest } from "#adapters/postgres/company-work";
import { answeredHold, textOfAnsweredHold } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";
import { readDay } from "#application/days/read-day";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aFeedOnHand, aShop, aSpreaderOn, DAY, type VisitMore } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function truckOf(visits: readonly VisitMore[]) {
  const { routeDayId, visitIds } = await aDayOf(house, company, visits);
  const read = async () => {
    const truck = valueOf(await readDay(house, company.owner.key, { date: DAY })).trucks.find((one) => one.routeDayId === routeDayId);
    if (truck === undefined) throw new Error("The truck is not out.");
    return truck;
  };
  return { read, visitIds, routeDayId };
}

test("a truck whose shop has no place says what is missing and promises no times", async () => {
  const { read } = await truckOf([{}]);
  expect(await read()).toMatchObject({ returnsAtMinute: null, driveMeters: null, missing: ["Where the shop is is not on file."] });
});

test("a look puts nothing down and is not held for it", async () => {
  const { read } = await truckOf([{}]);
  expect((await read()).stops[0]).toMatchObject({ puts: [], findings: [], isHeld: false });
});

test("a treatment without a label is held, with that alone as its reason", async () => {
  const { read, visitIds } = await truckOf([{ productId: await aFeedOnHand(house, company), labelUse: "Golf greens" }]);
  const truck = await read();
  expect(truck.stops[0]).toMatchObject({ isHeld: true });
  expect(truck.stops[0]?.findings.map(({ finding }) => finding.rule)).toEqual(["label-not-entered"]);
  expect(truck.found.filter(({ at }) => at === visitIds[0])).toHaveLength(1);
});

test("the customer's hours that are missed hold a stop, and a day that is too long wants care", async () => {
  await aShop(house, company);
  const { read } = await truckOf([{ serviceMinutes: 520 }, { window: { fromMinute: 480, untilMinute: 540 } }]);
  const truck = await read();
  expect(truck.stops.map(({ isHeld }) => isHeld)).toEqual([false, true]);
  expect(truck.found.map(({ finding }) => finding.rule)).toEqual(["back-after-the-day", "customers-hours-missed"]);
});

test("a license holder's answer stands beside its hold, which then keeps nothing; a hold of the office can't be answered", async () => {
  const productId = await aFeedOnHand(house, company, "18-24-12");
  const { read, visitIds: [visitId = ""], routeDayId } = await truckOf([{ productId }]);
  await aSpreaderOn(house, company, routeDayId);
  await house.ask("update property set state = 'IL' where property_id = (select property_id from visit where visit_id = $1)", [visitId]);
  const holds = ((await read()).stops[0]?.findings ?? []).flatMap(({ finding }) => (finding.level === "hold" ? [finding] : []));
  const answer = (hold: Finding, on: string) =>
    asGuest(house.client, company.companyId, (tx) =>
      tx.holdAnswer.create({
        data: { companyId: company.companyId, holdAnswerId: house.newId(), visitId, rule: hold.rule, answeredHold: textOfAnsweredHold(answeredHold(hold, on as CalendarDate)), reason: "A new lawn.", personId: company.owner.personId, licenseId: company.licenseId, answeredAt: house.now() },
      }),
    );
  for (const hold of holds) await answer(hold, "2026-04-13");
  expect((await read()).stops[0]?.findings.filter((shown) => shown.answer !== null)).toEqual([]);
  for (const hold of holds) await answer(hold, DAY);
  const { found, stops } = await read();
  const answered = (stops[0]?.findings ?? []).filter(({ answer }) => answer !== null);
  expect(answered).toMatchObject([{ finding: { level: "hold", answerableBy: "license-holder" }, answer: { reason: "A new lawn.", by: company.owner.name, license: "license IN C-foxtail-turf" } }]);
  expect(found.map(({ finding }) => finding.rule)).not.toContain(answered[0]?.finding.rule);
  // No license for Illinois is on file: that hold is the office's and stays.
  expect(stops[0]?.isHeld).toBe(true);
});

test("what somebody made is loaded no more and has nothing against it", async () => {
  const productId = await aFeedOnHand(house, company);
  const { read, visitIds, routeDayId } = await truckOf([{ productId }, { productId }]);
  await aSpreaderOn(house, company, routeDayId);
  const before = (await read()).loading.products[0]?.needed.amount ?? 0n;
  await house.ask("update visit set state = 'done' where visit_id = $1", [visitIds[0]]);
  const after = await read();
  expect(before).toBeGreaterThan(0n);
  expect(after.loading.products[0]?.needed.amount).toBe(before / 2n);
  expect(after.stops[0]).toMatchObject({ findings: [], isHeld: false });
});
