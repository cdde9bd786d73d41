import { afterAll, beforeAll, expect, test } from "vitest";
import { moveStock } from "#application/stock/move-stock";
import { listStock } from "#application/stock/list-stock";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";
import { aDelivery, aFeed, aTruck, balancesOf, deliveryForm, moveForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function onTruck() {
  return `vehicle:${await aTruck(house, company)}`;
}

test("moves from the shop to a truck and back, and the audit trail says who", async () => {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  const truck = await onTruck();
  valueOf(await moveStock(house, company.owner.key, moveForm(house, productId, truck)));
  expect(await balancesOf(house, productId)).toMatchObject({ shop: of("lb", "500").amount.toString(), truck: of("lb", "100").amount.toString() });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "stock-moved", subject_id: productId, details: { amount: "100 lb" } });
  valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, "shop"), from: truck, amount: "40 lb" }));
  expect(await balancesOf(house, productId)).toMatchObject({ shop: of("lb", "540").amount.toString(), truck: of("lb", "60").amount.toString() });
});

test("takes the first to expire first, or the lot that is named", async () => {
  const productId = await aFeed(house, company);
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count: 1, lotNumber: "LATE", expiresOn: "" }));
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count: 1, lotNumber: "SOON", expiresOn: "2026-05-31" }));
  const truck = await onTruck();
  valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, truck), amount: "60 lb" }));
  const aboard = async () => {
    const [product] = valueOf(await listStock(house, company.owner.key, { productId })).products;
    return product?.lots.map(({ number, at }) => [number, at.find(({ kind }) => kind === "truck")?.amount ?? 0n]);
  };
  expect(await aboard()).toEqual([["SOON", of("lb", "50").amount], ["LATE", of("lb", "10").amount]]);
  const [row] = await house.ask<{ lot_id: string }>("select lot_id from lot where product_id = $1 and number = 'LATE'", [productId]);
  valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, truck), amount: "40 lb", lotId: row?.lot_id ?? "" }));
  expect(await aboard()).toEqual([["SOON", of("lb", "50").amount], ["LATE", of("lb", "50").amount]]);
});

test("what would take more than is there is refused with what is missing, also by two at once", async () => {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  const truck = await onTruck();
  expect(await moveStock(house, company.owner.key, { ...moveForm(house, productId, truck), amount: "620 lb" })).toMatchObject({
    refusal: { fields: { amount: saying("Only 600 lb is there by the books, 20 lb too little") } },
  });
  const answers = await Promise.all([1, 2].map(() => moveStock(house, company.owner.key, { ...moveForm(house, productId, truck), amount: "400 lb" })));
  expect(answers.filter((answer) => answer.ok)).toHaveLength(1);
  expect(await balancesOf(house, productId)).toMatchObject({ shop: of("lb", "200").amount.toString(), truck: of("lb", "400").amount.toString() });
});

test("the same request pressed by eight at once moves once", async () => {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  const form = moveForm(house, productId, await onTruck());
  const answers = (await Promise.all(Array.from({ length: 8 }, () => moveStock(house, company.owner.key, form)))).map(valueOf);
  expect(new Set(answers.map(({ stockPostingId }) => stockPostingId)).size).toBe(1);
  expect(await moveStock(house, company.owner.key, { ...form, amount: "50 lb" })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("other figures") } });
  expect((await balancesOf(house, productId))["truck"]).toBe(of("lb", "100").amount.toString());
});

test.each([["amount", "2 gal"], ["amount", "0 lb"], ["amount", "20"], ["to", "shop"], ["to", "equipment:00000000-0000-4000-8000-ffffffffffff"], ["from", "attic"]])(
  "%s as %j is refused at its field",
  async (field, value) => {
    const productId = await aFeed(house, company);
    await aDelivery(house, company, productId);
    const form = moveForm(house, productId, await onTruck());
    const before = await house.books();
    expect(await moveStock(house, company.owner.key, { ...form, [field]: value })).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
    expect(await house.books()).toEqual(before);
  },
);

test("a lot of another product is no lot of this one", async () => {
  const [productId, another] = [await aFeed(house, company), await aFeed(house, company)];
  await aDelivery(house, company, another);
  const [row] = await house.ask<{ lot_id: string }>("select lot_id from lot where product_id = $1", [another]);
  const form = { ...moveForm(house, productId, await onTruck()), lotId: row?.lot_id ?? "" };
  expect(await moveStock(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "not-found" } });
});

test("another company's product is nobody's", async () => {
  const other = await aCompany(house, "Other Turf");
  expect(await moveStock(house, company.owner.key, moveForm(house, await aFeed(house, other), await onTruck()))).toMatchObject({ refusal: { kind: "not-found" } });
});
