import { afterAll, beforeAll, expect, test } from "vitest";
import { moveStock } from "#application/stock/move-stock";
import { readPrices } from "#application/stock/read-prices";
import { stateDeliveryPrice } from "#application/stock/state-delivery-price";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aDelivery, aFeed, aTruck, lotOf, moveForm, priceForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
let productId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
});
afterAll(() => house.close());

type Form = Awaited<ReturnType<typeof priceForm>>;
const form = async (change: Partial<Form> = {}) => ({ ...(await priceForm(house, productId)), ...change });
const state = async (change: Partial<Form> = {}) => stateDeliveryPrice(house, company.owner.key, await form(change));
const rows = () => house.ask<{ number: number; paid_per_container_cents: string | null }>("select * from delivery_price where company_id = $1 order by number", [company.companyId]);
const paidNow = async () => valueOf(await readPrices(house, company.owner.key, { productId })).deliveries[0]?.paidPerContainerCents;

test("what is learned later counts, each time anew, and all of it stays; pressed twice, and twice at once, it is one", async () => {
  expect(await paidNow()).toBeNull();
  const pressed = await form();
  expect(valueOf(await stateDeliveryPrice(house, company.owner.key, pressed))).toEqual({ number: 1 });
  expect(valueOf(await stateDeliveryPrice(house, company.owner.key, pressed))).toEqual({ number: 1 });
  expect(await paidNow()).toBe(3850n);
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "delivery-price-stated", subject_id: productId });
  const again = await form({ paidForOne: "0", said: "" });
  const both = await Promise.all([stateDeliveryPrice(house, company.owner.key, again), stateDeliveryPrice(house, company.owner.key, again)]);
  expect(both.map(valueOf)).toEqual([{ number: 2 }, { number: 2 }]);
  expect(await paidNow()).toBe(0n);
  expect(valueOf(await state({ paidForOne: "none" }))).toEqual({ number: 3 });
  expect(await paidNow()).toBeNull();
  expect((await rows()).map(({ number, paid_per_container_cents }) => [number, paid_per_container_cents === null ? null : Number(paid_per_container_cents)])).toEqual([[1, 3850], [2, 0], [3, null]]);
});

test("the same form with other words in it writes nothing and says so", async () => {
  const pressed = await form();
  valueOf(await stateDeliveryPrice(house, company.owner.key, pressed));
  const before = await rows();
  for (const change of [{ paidForOne: "38.51" }, { said: "" }, { delivery: pressed.delivery.replace(/ \d+$/u, " 9") }]) {
    expect(await stateDeliveryPrice(house, company.owner.key, { ...pressed, ...change })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  }
  expect(await rows()).toEqual(before);
});

test("is refused for what is no delivery of the product, and for what is no price", async () => {
  const other = await aCompany(house, "Other Turf");
  const [strange, elsewhere] = [await aFeed(house, company), await aFeed(house, other)];
  await aDelivery(house, company, strange);
  await aDelivery(house, other, elsewhere);
  const lotId = await lotOf(house, productId);
  const { stockPostingId } = valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), lotId }));
  const { delivery } = await form();
  const before = await rows();
  const supplierLine = delivery.replace(/ \d+$/u, (line) => ` ${String(Number(line) === 1 ? 2 : 1)}`);
  const refused: readonly (readonly [Partial<Form>, string])[] = [
    [{ delivery: (await priceForm(house, strange)).delivery }, "delivery"],
    [{ delivery: (await priceForm(house, elsewhere)).delivery }, "delivery"],
    [{ delivery: supplierLine }, "delivery"],
    [{ delivery: `${stockPostingId} 1` }, "delivery"],
    [{ delivery: `${stockPostingId} 2` }, "delivery"],
    [{ delivery: "" }, "delivery"],
    [{ delivery: `${delivery} 1` }, "delivery"],
    [{ paidForOne: "" }, "paidForOne"],
    [{ paidForOne: "-3" }, "paidForOne"],
    [{ paidForOne: "a lot" }, "paidForOne"],
  ];
  for (const [change, field] of refused) {
    const answer = await state(change);
    expect(answer.ok || answer.refusal.kind !== "bad-input" ? [] : Object.keys(answer.refusal.fields), JSON.stringify(change)).toEqual([field]);
  }
  expect(await stateDeliveryPrice(house, other.owner.key, await form())).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await rows()).toEqual(before);
});

test("what was said is never changed, emptied or taken out", async () => {
  valueOf(await state());
  await expect(house.ask("update delivery_price set paid_per_container_cents = 1")).rejects.toThrow();
  await expect(house.ask("delete from delivery_price")).rejects.toThrow();
  await expect(house.ask("truncate delivery_price")).rejects.toThrow();
});
