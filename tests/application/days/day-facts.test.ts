import { afterAll, beforeAll, expect, test } from "vitest";
import { inCompany } from "#adapters/postgres/company-work";
import { readDay } from "#application/days/read-day";
import { type StopShown } from "#application/days/truck-shown";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { toStoredJson } from "#application/stored-json";
import { snapshotOf } from "#application/visits/issued-ticket";
import { ticketsOfVisits } from "#application/visits/visit-ticket";
import { aDayOf, aFeedOnHand, aSpreaderOn, DAY } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { deliveryForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function stopShown(companyId: string, visitId: string): Promise<StopShown> {
  const { trucks } = valueOf(await readDay(house, { ...company.owner.key, companyId }, { date: DAY }));
  const stop = trucks.flatMap(({ stops }) => stops).find(({ visit }) => visit.visitId === visitId);
  if (stop === undefined) throw new Error("The visit is on no truck.");
  return stop;
}

/** Issues what would be computed now, whatever holds it. */
async function issue(visitId: string, number: number): Promise<void> {
  const { key, personId } = company.owner;
  await inCompany(house.client, key, async (tx, member, facts) => {
    const work = { tx, member, company: facts, sessionVersion: key.sessionVersion, now: house.now(), newId: house.newId, newSecret: house.newSecret };
    const [made] = await ticketsOfVisits(work, [visitId]);
    if (made?.outcome.ok !== true) throw new Error("The ticket can't be worked out.");
    const snapshot = toStoredJson(snapshotOf(made.outcome.value, []));
    await tx.mixTicket.create({ data: { companyId: company.companyId, mixTicketId: house.newId(), visitId, number, snapshot, rulesVersion: "1", personId, issuedAt: house.now() } });
  });
}

test("the ticket issued last stands for the visit, and a paper of another plan says so", async () => {
  const productId = await aFeedOnHand(house, company);
  const { routeDayId, visitIds: [visitId = ""] } = await aDayOf(house, company, [{ productId }]);
  await aSpreaderOn(house, company, routeDayId);
  expect(await stopShown(company.companyId, visitId)).toMatchObject({ ticket: null, record: null });
  for (const number of [1, 2]) {
    await issue(visitId, number);
    expect((await stopShown(company.companyId, visitId)).ticket).toEqual({ number, issuedAt: house.now(), isOfPresentPlan: true });
    await house.ask("update visit_task set rate_amount = rate_amount + 1 where visit_id = $1", [visitId]);
    expect((await stopShown(company.companyId, visitId)).ticket).toMatchObject({ number, isOfPresentPlan: false });
  }
});

test("products are loaded by the container of the lot that is taken next: the first to expire of what is there", async () => {
  const productId = await aFeedOnHand(house, company);
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), lotNumber: "L-0", containerSize: "25 lb", expiresOn: "2026-06-30" }));
  const { routeDayId } = await aDayOf(house, company, [{ productId }]);
  await aSpreaderOn(house, company, routeDayId);
  const { trucks } = valueOf(await readDay(house, company.owner.key, { date: DAY }));
  expect(trucks.find((truck) => truck.routeDayId === routeDayId)?.loading.products).toMatchObject([{ words: "1 bag of 25 lb", lotNumber: "L-0" }]);
});
