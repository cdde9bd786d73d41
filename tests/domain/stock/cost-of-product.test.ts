import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { fromCents } from "#domain/money/money";
import { fromAmount, of, zero } from "#domain/quantities/quantity";
import { compareRational, rational } from "#domain/quantities/rational";
import { type CostOfNamedProduct, type CostOfProduct, costOfProduct, costOfTaken, costSentence, costWords, paidForDelivery, priceOfLot, pricedSum, unpricedWords } from "#domain/stock/cost-of-product";

const BAG = of("lb", "50").amount;

function lot(number: string, pounds: string, cents: bigint | null, expiresOn: string | null = null, receivedOrder = 1) {
  const price = priceOfLot([{ amount: BAG, paidPerContainerCents: cents }]);
  return { lotId: number, number, expiresOn: expiresOn as CalendarDate | null, receivedOrder, amount: of("lb", pounds).amount, containerSize: BAG, price };
}

function named(cost: CostOfNamedProduct["cost"], productName = "Greenmere"): CostOfNamedProduct {
  return { productId: productName, productName, quantity: of("lb", "9"), cost };
}

describe("what was paid for a delivery", () => {
  const said = (number: number, paidPerContainerCents: bigint | null) => ({ number, paidPerContainerCents });

  test("is what was said with it until somebody says otherwise", () => {
    expect(paidForDelivery(4250n, [])).toBe(4250n);
    expect(paidForDelivery(null, [])).toBeNull();
    expect(paidForDelivery(null, [said(1, 3990n)])).toBe(3990n);
    expect(paidForDelivery(4250n, [said(1, 0n)])).toBe(0n);
  });

  test("is what was said last, whatever the order in which it is read; also that nobody knows after all", () => {
    expect(paidForDelivery(4250n, [said(2, 4100n), said(1, 3990n)])).toBe(4100n);
    expect(paidForDelivery(4250n, [said(1, 3990n), said(2, null)])).toBeNull();
  });
});

describe("the price of a lot", () => {
  test("is what its delivery cost, also when that was nothing", () => {
    expect(priceOfLot([{ amount: BAG, paidPerContainerCents: 4250n }])).toEqual({ kind: "on-file", perContainer: fromCents(4250n), isMean: false });
    expect(priceOfLot([{ amount: BAG, paidPerContainerCents: 0n }])).toMatchObject({ kind: "on-file", perContainer: fromCents(0n) });
  });

  test("is the mean by how much came at each price, exact to parts of a cent", () => {
    const one = { amount: BAG, paidPerContainerCents: 4000n };
    const two = { amount: BAG * 2n, paidPerContainerCents: 4100n };
    expect(priceOfLot([one, two])).toEqual({ kind: "on-file", perContainer: { cents: rational(12_200n, 3n) }, isMean: true });
    expect(priceOfLot([one, { ...two, paidPerContainerCents: 4000n }])).toMatchObject({ perContainer: fromCents(4000n), isMean: false });
  });

  test("is not on file without a price, nor where one delivery has none", () => {
    const unknown = { amount: BAG, paidPerContainerCents: null };
    expect(priceOfLot([])).toEqual({ kind: "not-on-file" });
    expect(priceOfLot([unknown, unknown])).toEqual({ kind: "not-on-file" });
    expect(priceOfLot([unknown, { amount: BAG, paidPerContainerCents: 4250n }])).toEqual({ kind: "not-for-every-delivery" });
  });
});

describe("the cost of an amount", () => {
  test("20 lb of a 50 lb bag at $31.25 cost $12.50", () => {
    const cost = costOfProduct(of("lb", "20"), [lot("GM-1", "50", 3125n)]);
    expect(pricedSum([named(cost)])).toEqual(fromCents(1250n));
    expect(cost.notOnHand).toEqual(zero("mass"));
    expect(costSentence([named(cost)])).toBe("Cost of product: $12.50.");
  });

  test("the lot that expires first is opened first, and each lot costs its own price", () => {
    const cost = costOfProduct(of("lb", "60"), [lot("LATE", "50", 10_000n, null, 1), lot("SOON", "25", 2000n, "2026-05-01", 2)]);
    expect(cost.lots.map(({ lotNumber, quantity, cost: of_ }) => [lotNumber, quantity, of_])).toEqual([
      ["SOON", of("lb", "25"), fromCents(1000n)],
      ["LATE", of("lb", "35"), fromCents(7000n)],
    ]);
    expect(pricedSum([named(cost)])).toEqual(fromCents(8000n));
  });

  test("what has no price and what is not on hand are said by name, never counted as nothing", () => {
    const cost = costOfProduct(of("lb", "40"), [lot("GM-1", "20", 3125n, "2026-05-01"), lot("MG-1", "3", null)]);
    expect(costSentence([named(cost)])).toBe("Cost of product: $12.50; 3 lb of lot MG-1 has no price on file and 17 lb of Greenmere is not on hand.");
    expect(cost.lots.map((one) => one.cost)).toEqual([fromCents(1250n), "not-on-file"]);
    expect(costWords(named(cost))).toBe("$12.50 and more");
  });

  test("where nothing has a price the cost is not known, which is not $0.00; what came free costs $0.00", () => {
    const unknown = named(costOfProduct(of("lb", "3"), [lot("MG-1", "3", null)]));
    expect([pricedSum([unknown]), costSentence([unknown])]).toEqual([undefined, "Cost of product: not known; 3 lb of lot MG-1 has no price on file."]);
    const free = named(costOfProduct(of("lb", "3"), [lot("MG-1", "3", 0n)]));
    expect(costSentence([free])).toBe("Cost of product: $0.00.");
    expect([unknown, free, named("counted-by-another-measure")].map(costWords)).toEqual(["not known", "$0.00", "not known"]);
    expect(pricedSum([])).toBeUndefined();
  });

  test("a lot of which one delivery has no price, and a product by another measure, say so", () => {
    const half = { ...lot("MG-2", "3", null), price: { kind: "not-for-every-delivery" } as const };
    expect(unpricedWords(named(costOfProduct(of("lb", "3"), [half])))).toEqual(["3 lb of lot MG-2 has no price on file for each of its deliveries"]);
    expect(unpricedWords(named("counted-by-another-measure"))).toEqual(["9 lb of Greenmere is planned by another measure than it is counted by"]);
  });

  test("the cent is rounded once, over all products: three thirds of a cent are a cent", () => {
    const third = named(costOfTaken("mass", [{ lot: { lotId: "a", number: "A", containerSize: 3n, price: priceOfLot([{ amount: 3n, paidPerContainerCents: 1n }]) }, amount: 1n }]));
    expect(costSentence([third])).toBe("Cost of product: $0.00.");
    expect(costSentence([third, third, third])).toBe("Cost of product: $0.01.");
  });

  test("lots below zero or empty are not opened", () => {
    const below = { ...lot("OWED", "0", 100n), amount: -5n };
    expect(costOfProduct(of("lb", "1"), [below, lot("NONE", "0", 100n)])).toMatchObject({ lots: [], notOnHand: of("lb", "1") });
  });
});

const pricedCents = (cost: CostOfProduct) => pricedSum([named(cost)])?.cents;
const anyLots = fc.uniqueArray(
  fc.record({
    lotId: fc.uuid(),
    number: fc.string({ minLength: 1, maxLength: 4 }),
    expiresOn: fc.constantFrom(null, "2026-04-01" as CalendarDate, "2027-01-01" as CalendarDate),
    receivedOrder: fc.nat(5),
    amount: fc.bigInt({ min: -5n, max: 1000n }),
    containerSize: fc.bigInt({ min: 1n, max: 500n }),
    price: fc.array(fc.record({ amount: fc.bigInt({ min: 1n, max: 500n }), paidPerContainerCents: fc.option(fc.bigInt({ min: 0n, max: 10_000n })) }), { maxLength: 3 }).map(priceOfLot),
  }),
  { selector: ({ lotId }) => lotId, maxLength: 6 },
);
const anyAmount = fc.bigInt({ min: 0n, max: 4000n }).map((amount) => fromAmount("mass", amount));

test("the parts make up the whole exactly", () => {
  fc.assert(
    fc.property(anyAmount, anyLots, (amount, lots) => {
      const cost = costOfProduct(amount, lots);
      expect(cost.lots.reduce((sum, { quantity }) => sum + quantity.amount, cost.notOnHand.amount)).toBe(amount.amount);
    }),
  );
});

test("a whole container costs its price, however it is split up, and an amount costs the same in two parts as in one", () => {
  fc.assert(
    fc.property(fc.bigInt({ min: 1n, max: 10n ** 12n }), fc.bigInt({ min: 0n, max: 10n ** 7n }), fc.bigInt({ min: 0n, max: 10n ** 12n }), (size, cents, cut) => {
      const own = { lotId: "a", number: "A", containerSize: size, price: priceOfLot([{ amount: size, paidPerContainerCents: cents }]) };
      const first = cut % (size + 1n);
      const priced = pricedCents(costOfTaken("mass", [{ lot: own, amount: first }, { lot: own, amount: size - first }]));
      expect(priced !== undefined && compareRational(priced, rational(cents))).toBe(0);
    }),
  );
});

test("more of a product never costs less, nor is less of it without a price", () => {
  fc.assert(
    fc.property(anyAmount, anyAmount, anyLots, (one, other, lots) => {
      const [less, more] = one.amount <= other.amount ? [one, other] : [other, one];
      const [small, large] = [costOfProduct(less, lots), costOfProduct(more, lots)];
      expect(compareRational(pricedCents(small) ?? rational(0n), pricedCents(large) ?? rational(0n))).toBeLessThanOrEqual(0);
      expect(small.notOnHand.amount <= large.notOnHand.amount).toBe(true);
      const open = ({ lots: some }: typeof small) => some.reduce((sum, { cost, quantity }) => sum + (typeof cost === "string" ? quantity.amount : 0n), 0n);
      expect(open(small) <= open(large)).toBe(true);
    }),
  );
});
