import { afterAll, beforeAll, expect, test } from "vitest";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { retireProduct } from "#application/products/retire-product";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";
import { aFeed, aLiquid, aTruck, balancesOf, deliveryForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("so many containers of a lot come from the supplier to the shop, and the audit trail says who", async () => {
  const productId = await aFeed(house, company);
  const { stockPostingId } = valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), receivedOn: "2026-04-10" }));
  const [lot] = await house.ask("select number, expires_on::text, container, container_size from lot where product_id = $1", [productId]);
  expect(lot).toEqual({ number: "L-1", expires_on: "2027-06-30", container: "bag", container_size: of("lb", "50").amount.toString() });
  const amount = of("lb", "600").amount.toString();
  expect(await balancesOf(house, productId)).toEqual({ shop: amount, supplier: `-${amount}` });
  const [posting] = await house.ask("select happened_at, entered_at from stock_posting where stock_posting_id = $1", [stockPostingId]);
  expect(posting).toEqual({ happened_at: new Date("2026-04-10T12:00:00Z"), entered_at: house.now() });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "delivery-received", subject_id: productId, details: { lot: "L-1", received: "12 bags of 50 lb", on: "2026-04-10" } });
});

test("the same request pressed by eight at once: one posting, one lot, one entry in the trail, the same answer", async () => {
  const productId = await aFeed(house, company);
  const form = deliveryForm(house, productId);
  const before = (await trailOf(house, company.companyId)).length;
  const answers = (await Promise.all(Array.from({ length: 8 }, () => receiveDelivery(house, company.owner.key, form)))).map(valueOf);
  expect(new Set(answers.map(({ stockPostingId }) => stockPostingId)).size).toBe(1);
  expect((await balancesOf(house, productId))["shop"]).toBe(of("lb", "600").amount.toString());
  expect(await trailOf(house, company.companyId)).toHaveLength(before + 1);
});

test("a form that was sent before and comes again with something else in it is told so, and writes nothing", async () => {
  const [productId, another] = [await aFeed(house, company), await aFeed(house, company)];
  const form = deliveryForm(house, productId);
  valueOf(await receiveDelivery(house, company.owner.key, form));
  const before = await house.books();
  for (const changed of [{ count: 13 }, { lotNumber: "L-2" }, { productId: another }, { paidForOne: "1" }]) {
    expect(await receiveDelivery(house, company.owner.key, { ...form, ...changed })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("other figures") } });
  }
  expect(await house.books()).toEqual(before);
});

test("different receipts at once: every balance is exact, also of the same lot", async () => {
  const productId = await aFeed(house, company);
  const receive = (count: number, lotNumber: string) => receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count, lotNumber });
  const answers = await Promise.all([receive(1, "A"), receive(2, "A"), receive(3, "B"), receive(4, "B"), receive(5, "C"), receive(6, "A"), receive(7, "B"), receive(8, "C")]);
  expect(answers.every((answer) => answer.ok)).toBe(true);
  const rows = await house.ask<{ number: string; amount: string }>(
    "select l.number, b.amount::text from stock_balance b join lot l using (company_id, lot_id) join stock_location s using (company_id, stock_location_id) where l.product_id = $1 and s.kind = 'shop' order by 1",
    [productId],
  );
  const pounds = (value: string) => of("lb", value).amount.toString();
  expect(rows).toEqual([{ number: "A", amount: pounds("450") }, { number: "B", amount: pounds("700") }, { number: "C", amount: pounds("650") }]);
});

test("a liquid comes in jugs, straight onto a truck, without an expiry", async () => {
  const productId = await aLiquid(house, company);
  const to = `vehicle:${await aTruck(house, company)}`;
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count: "4", container: "jug", containerSize: "2 1/2 gal", expiresOn: "", to }));
  expect((await balancesOf(house, productId))["truck"]).toBe(of("gal", "10").amount.toString());
});

test("what one container cost stands in whole cents with what came, and in the trail; the same lot may come at another price", async () => {
  const productId = await aFeed(house, company);
  const receive = async (paidForOne: string) => valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), paidForOne })).stockPostingId;
  const paid: unknown[] = [];
  for (const typed of ["$1,042.50", "31.25", "0", "", " None "]) {
    const rows = await house.ask("select amount > 0 as came, paid_per_container_cents as cents from stock_entry where stock_posting_id = $1 order by line", [await receive(typed)]);
    paid.push(...rows);
  }
  const left = { came: false, cents: null };
  expect(paid).toEqual(["104250", "3125", "0", null, null].flatMap((cents) => [left, { came: true, cents }]));
  const words = (await trailOf(house, company.companyId)).slice(-5).map(({ details }) => (details as { paidForOne: string }).paidForOne);
  expect(words).toEqual(["$1,042.50", "$31.25", "$0.00", "not on file", "not on file"]);
});

test("the database keeps a price only with what came, never below zero, and never changed", async () => {
  const productId = await aFeed(house, company);
  const { stockPostingId } = valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), paidForOne: "31.25" }));
  const copy = (amount: string, cents: string) =>
    house.ask(`insert into stock_entry select company_id, stock_posting_id, 9, lot_id, stock_location_id, ${amount}, ${cents} from stock_entry where stock_posting_id = $1 and line = 1`, [stockPostingId]);
  await expect(copy("5", "-1")).rejects.toThrow("stock_entry_price_is_of_what_came");
  await expect(copy("-5", "100")).rejects.toThrow("stock_entry_price_is_of_what_came");
  await expect(house.ask("update stock_entry set paid_per_container_cents = 1 where stock_posting_id = $1 and amount > 0", [stockPostingId])).rejects.toThrow();
});

test("a lot that is on file with another expiry or in another container is asked about", async () => {
  const productId = await aFeed(house, company);
  valueOf(await receiveDelivery(house, company.owner.key, deliveryForm(house, productId)));
  const again = { ...deliveryForm(house, productId), requestId: house.newId() };
  expect(await receiveDelivery(house, company.owner.key, { ...again, expiresOn: "2028-01-31" })).toMatchObject({ refusal: { fields: { expiresOn: saying("2027-06-30") } } });
  expect(await receiveDelivery(house, company.owner.key, { ...again, container: "box" })).toMatchObject({ refusal: { fields: { container: saying("bag") } } });
  expect(await receiveDelivery(house, company.owner.key, again)).toMatchObject({ ok: true });
});

test.each([
  ["count", "0"], ["count", "1.5"], ["count", "10001"], ["container", "bucket"], ["containerSize", "50"], ["containerSize", "50 oz"], ["containerSize", "2.5 gal"],
  ["paidForOne", "forty"], ["paidForOne", "-1"], ["paidForOne", "42.505"], ["paidForOne", "1,000,001"], ["containerSize", "0 lb"], ["lotNumber", " "], ["expiresOn", "soon"], ["receivedOn", "2026-04-15"], ["receivedOn", ""], ["to", "cellar"],
  ["to", "vehicle:00000000-0000-4000-8000-ffffffffffff"],
])("%s as %j is refused at its field", async (field, value) => {
  const productId = await aFeed(house, company);
  const before = await house.books();
  const answer = await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), [field]: value });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});

test("a retired product takes nothing in, and another company's is nobody's", async () => {
  const productId = await aFeed(house, company);
  valueOf(await retireProduct(house, company.owner.key, { productId, version: 1 }));
  expect(await receiveDelivery(house, company.owner.key, deliveryForm(house, productId))).toMatchObject({ refusal: { fields: { productId: saying("retired") } } });
  const other = await aCompany(house, "Other Turf");
  expect(await receiveDelivery(house, company.owner.key, deliveryForm(house, await aFeed(house, other)))).toMatchObject({ refusal: { kind: "not-found" } });
});
