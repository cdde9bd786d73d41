import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest } from "#adapters/postgres/company-work";
import { balancesOfLots, postStock, type PostingFacts, type PostingWork, wouldLeaveBelowZero } from "#application/stock/post-stock";
import { singularLocation } from "#application/stock/stock-locations";
import { conflict } from "#application/refusal";
import { accept } from "#domain/foundation/outcome";
import { of } from "#domain/quantities/quantity";
import { applyPosting, losePosting, type Posting } from "#domain/stock/posting";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aDelivery, aFeed, balancesOf } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

function inWork<Answer>(ask: (work: PostingWork) => Promise<Answer>): Promise<Answer> {
  const { companyId, owner } = company;
  return asGuest(house.client, companyId, (tx) =>
    ask({
      tx,
      company: { companyId, name: "Foxtail Turf", state: "IN", timeZone: "America/Chicago", isDemonstration: false },
      member: { accountId: owner.key.accountId, personId: owner.personId, personName: owner.name, role: "owner" },
      now: house.now(),
      newId: house.newId,
    }),
  );
}

/** A feed with twelve bags of 50 lb in the shop, and what is needed to post about it. */
async function aStockedFeed() {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  const [lot] = await house.ask<{ lot_id: string }>("select lot_id from lot where product_id = $1", [productId]);
  const [shop, loss, lawn] = await inWork(async (work) => [await singularLocation(work, "shop"), await singularLocation(work, "loss"), await singularLocation(work, "lawn")] as const);
  return { productId, lotId: lot?.lot_id ?? "", shop, loss, lawn };
}

const facts = (kind: PostingFacts["kind"]): PostingFacts => ({ kind, requestId: house.newId(), happenedAt: house.now(), note: "torn" });

test("writes the posting with its entries and the balances follow exactly", async () => {
  const { productId, lotId, shop, loss } = await aStockedFeed();
  const posting = losePosting(shop, loss, [{ lotId, quantity: of("lb", "7.25") }]);
  const posted = valueOf(await inWork((work) => postStock(work, facts("lose"), () => Promise.resolve(accept(posting)))));
  expect(posted.isRepeat).toBe(false);
  expect(await house.ask("select kind, note, person_id from stock_posting where stock_posting_id = $1", [posted.stockPostingId])).toEqual([
    { kind: "lose", note: "torn", person_id: company.owner.personId },
  ]);
  expect(await balancesOf(house, productId)).toEqual({
    loss: of("lb", "7.25").amount.toString(), shop: of("lb", "592.75").amount.toString(), supplier: (-of("lb", "600").amount).toString(),
  });
});

test("the same request pressed by eight at once posts once, and all get the same answer", async () => {
  const { productId, lotId, shop, loss } = await aStockedFeed();
  const request = facts("lose");
  let made = 0;
  const post = () =>
    inWork((work) =>
      postStock(work, request, () => {
        made += 1;
        return Promise.resolve(accept(losePosting(shop, loss, [{ lotId, quantity: of("lb", "10") }])));
      }),
    );
  const answers = (await Promise.all(Array.from({ length: 8 }, post))).map(valueOf);
  expect(new Set(answers.map(({ stockPostingId }) => stockPostingId)).size).toBe(1);
  expect(answers.filter(({ isRepeat }) => !isRepeat)).toHaveLength(1);
  expect(made).toBe(1);
  expect((await balancesOf(house, productId))["loss"]).toBe(of("lb", "10").amount.toString());
});

test("different postings at once all count", async () => {
  const { productId, lotId, shop, loss } = await aStockedFeed();
  const post = (pounds: string) =>
    inWork((work) => postStock(work, facts("lose"), () => Promise.resolve(accept(losePosting(shop, loss, [{ lotId, quantity: of("lb", pounds) }])))));
  await Promise.all(["1", "2.5", "0.25", "3", "0.01", "4", "5", "6"].map(post));
  expect((await balancesOf(house, productId))["loss"]).toBe(of("lb", "21.76").amount.toString());
});

test("a request of another kind, a refusal of the maker, and a posting that is not of its kind", async () => {
  const { lotId, shop, loss } = await aStockedFeed();
  const posting = losePosting(shop, loss, [{ lotId, quantity: of("lb", "1") }]);
  const request = facts("lose");
  valueOf(await inWork((work) => postStock(work, request, () => Promise.resolve(accept(posting)))));
  const before = await house.books();
  expect(await inWork((work) => postStock(work, { ...request, kind: "move" }, () => Promise.resolve(accept(posting))))).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await inWork((work) => postStock(work, facts("lose"), () => Promise.resolve(conflict("No."))))).toMatchObject({ refusal: { sentence: "No." } });
  await expect(inWork((work) => postStock(work, facts("apply"), () => Promise.resolve(accept(posting))))).rejects.toThrow();
  const unbalanced: Posting = { kind: "lose", entries: posting.entries.slice(1) };
  await expect(inWork((work) => postStock(work, facts("lose"), () => Promise.resolve(accept(unbalanced))))).rejects.toThrow();
  expect(await house.books()).toEqual(before);
});

test("a fact may leave a location below zero, and asking beforehand tells it", async () => {
  const { productId, lotId, shop, lawn } = await aStockedFeed();
  const posting = applyPosting(lawn, [{ lotId, quantity: of("lb", "601"), from: shop }]);
  const below = await inWork((work) => wouldLeaveBelowZero(work, posting.entries));
  expect(below).toEqual([{ lotId, stockLocationId: shop, amount: -of("lb", "1").amount }]);
  valueOf(await inWork((work) => postStock(work, facts("apply"), () => Promise.resolve(accept(posting)))));
  expect((await balancesOf(house, productId))["shop"]).toBe((-of("lb", "1").amount).toString());
  const kept = await inWork((work) => balancesOfLots(work, [lotId]));
  expect(kept.reduce((sum, { amount }) => sum + amount, 0n)).toBe(0n);
});
