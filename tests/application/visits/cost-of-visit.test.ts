import { beforeAll, expect, test } from "vitest";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { callOffVisit } from "#application/visits/call-off-visit";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { fromCents } from "#domain/money/money";
import { of } from "#domain/quantities/quantity";
import { costSentence } from "#domain/stock/cost-of-product";
import { aMember, type TestCompany, valueOf } from "../../support/crew";
import { aFedVisit, aGround, aRecord, aVisitWith, feedAndIron } from "../../support/crew-day";
import { countingHouse } from "../../support/counted-queries";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { deliveryForm } from "../../support/shed";

allOnACrewDay();
beforeAll(async () => {
  // The first to expire: ten pounds of feed at a price, on the truck. All else of the day came without one.
  const to = `vehicle:${day.vehicleId}`;
  const small = { ...deliveryForm(house, day.feedId), count: 1, containerSize: "10 lb", lotNumber: "MG-0", expiresOn: "2026-05-01", paidForOne: "7.31", to };
  valueOf(await receiveDelivery(house, company.owner.key, small));
});

async function costTo(key: TestCompany["owner"]["key"], visitId: string) {
  return valueOf(await readVisit(house, key, { visitId, withCost: true })).cost;
}

/** The names of products differ from test to test; the rest of the sentence does not. */
async function sentenceOf(visitId: string) {
  return costSentence((await costTo(company.owner.key, visitId))?.products ?? []);
}

test("a planned visit costs what the lots cost that will be opened for it; what has no price is said by name", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const cost = await costTo(company.owner.key, visitId);
  expect(cost).toMatchObject({ basis: "lots-to-open", products: [{ productId: day.feedId, quantity: of("lb", "16") }, { productId: day.ironId }] });
  const [feed] = cost?.products ?? [];
  expect(feed?.cost).toMatchObject({
    lots: [
      { lotNumber: "MG-0", quantity: of("lb", "10"), cost: fromCents(731n) },
      { lotNumber: "GM-1", quantity: of("lb", "6"), cost: "not-on-file" },
    ],
  });
  expect(await sentenceOf(visitId)).toMatch(/^Cost of product: \$7\.31; 6 lb of lot GM-1 has no price on file and \d+½? fl oz of lot IR-1 has no price on file\.$/u);
});

test("owner and office see it; whoever puts the product down does not", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const office = await aMember(house, company, "office", "Cost office");
  expect(await costTo(office.key, visitId)).toEqual(await costTo(company.owner.key, visitId));
  for (const role of ["applicator", "technician"] as const) {
    const { key } = await aMember(house, company, role, `Cost ${role}`);
    const read = valueOf(await readVisit(house, key, { visitId, withCost: true }));
    expect([read.visit.visitId, read.cost]).toEqual([visitId, undefined]);
  }
});

test("it is worked out only where it is asked for, and two products ask as often as one", async () => {
  const { key } = company.owner;
  const ground = await aGround(house, company);
  const { "0": feed } = feedAndIron(day, ground);
  const one = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { "0": feed });
  const two = await aFedVisit(house, company, day);
  const asked = async (visitId: string, withCost: boolean) => {
    const counting = countingHouse(house);
    const { cost } = valueOf(await readVisit(counting.house, key, { visitId, withCost }));
    return { products: cost?.products.length, calls: counting.count() };
  };
  const without = await asked(two.visitId, false);
  const [ofOne, ofTwo] = [await asked(one, true), await asked(two.visitId, true)];
  expect([without.products, ofOne.products, ofTwo.products]).toEqual([undefined, 1, 2]);
  expect(ofTwo.calls).toBe(ofOne.calls);
  expect(without.calls).toBeLessThan(ofTwo.calls);
});

test("nothing of it is in the issued mix ticket, which the crew reads", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  valueOf(await issueMixTicket(house, company.owner.key, { visitId }));
  const [row] = await house.ask<{ snapshot: string }>("select snapshot::text as snapshot from mix_ticket where visit_id = $1", [visitId]);
  expect(row?.snapshot).not.toMatch(/cents|priced|paid/iu);
});

test("two tasks of one product open its lots once, one after the other", async () => {
  const ground = await aGround(house, company);
  const { "0": feed } = feedAndIron(day, ground);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, {
    "0": { ...feed, lawns: { [ground.frontId]: "yes" } },
    "1": { ...feed, productUse: feed.productUse.replace(day.feedId, day.starterId), lawns: { [ground.backId]: "yes" } },
  });
  // A visit names a use of a product once; two uses of one product differ in nothing that its cost asks about.
  await house.ask("update visit_task set product_id = $2 where visit_id = $1", [visitId, day.feedId]);
  const cost = await costTo(company.owner.key, visitId);
  expect(cost?.products).toMatchObject([{ quantity: of("lb", "16"), cost: { lots: [{ lotNumber: "MG-0", cost: fromCents(731n) }, { lotNumber: "GM-1", cost: "not-on-file" }], notOnHand: of("lb", "0") } }]);
});

test("a product that is counted by another measure than it is planned by has no cost, and says so", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  await house.ask("update product set counted_by = 'volume' where product_id = $1", [day.feedId]);
  const cost = await costTo(company.owner.key, visitId);
  await house.ask("update product set counted_by = 'mass' where product_id = $1", [day.feedId]);
  expect(cost?.products).toMatchObject([{ productId: day.feedId, cost: "counted-by-another-measure" }, { productId: day.ironId }]);
});

test("what no lot has is said to be missing", async () => {
  const ground = await aGround(house, company);
  const { "0": feed } = feedAndIron(day, ground);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { "0": { ...feed, productUse: feed.productUse.replace(day.feedId, day.starterId) } });
  expect(await sentenceOf(visitId)).toMatch(/^Cost of product: not known; 16 lb of .+ is not on hand\.$/u);
});

test("a visit without a product, one that can't be worked out and one that was called off have no cost", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  await house.ask("update visit_task set label_use = 'New seedings' where visit_id = $1", [visitId]);
  expect(await costTo(company.owner.key, visitId)).toBeUndefined();
  const off = await aFedVisit(house, company, day);
  valueOf(await callOffVisit(house, company.owner.key, { visitId: off.visitId, version: 1, reason: "Sold the house" }));
  expect(await costTo(company.owner.key, off.visitId)).toBeUndefined();
});

test("a recorded visit costs the lots that its record took down, whatever came since", async () => {
  const fed = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, fed);
  const cost = await costTo(company.owner.key, fed.visitId);
  expect(cost?.basis).toBe("lots-put-down");
  const feed = cost?.products.find(({ productId }) => productId === day.feedId);
  expect(feed).toMatchObject({ quantity: of("lb", "16"), cost: { lots: [{ lotNumber: "MG-0", cost: fromCents(731n) }, { lotNumber: "GM-1", cost: "not-on-file" }] } });
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, day.feedId), lotNumber: "NEW", expiresOn: "2026-04-20", paidForOne: "99" }));
  expect(await costTo(company.owner.key, fed.visitId)).toEqual(cost);
});
