import fc from "fast-check";
import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { fromAmount } from "#domain/quantities/quantity";
import { inTakingOrder, type LotOnHand, takeFirstExpired } from "#domain/stock/first-expired";

function lot(lotId: string, expiresOn: string | null, receivedOrder: number, amount: bigint): LotOnHand {
  return { lotId, expiresOn: expiresOn as CalendarDate | null, receivedOrder, amount };
}

test("the first to expire goes first, lots without an expiry last, equals as they came", () => {
  const lots = [lot("none-late", null, 5, 1n), lot("june-late", "2026-06-30", 4, 1n), lot("june", "2026-06-30", 1, 1n), lot("none", null, 2, 1n), lot("may", "2026-05-01", 9, 1n)];
  expect(inTakingOrder(lots).map(({ lotId }) => lotId)).toEqual(["may", "june", "june-late", "none", "none-late"]);
});

test("an amount is taken across lots, empty ones and those below zero give nothing", () => {
  const lots = [lot("a", "2026-05-01", 1, 30n), lot("b", "2026-04-01", 2, -4n), lot("c", "2026-04-02", 3, 0n), lot("d", null, 4, 100n)];
  expect(takeFirstExpired(lots, fromAmount("mass", 50n))).toEqual({
    ok: true,
    value: [{ lotId: "a", quantity: fromAmount("mass", 30n) }, { lotId: "d", quantity: fromAmount("mass", 20n) }],
  });
});

test("too little is refused with what is missing", () => {
  expect(takeFirstExpired([lot("a", null, 1, 30n)], fromAmount("volume", 50n))).toEqual({ ok: false, refusal: { kind: "too-little", missing: fromAmount("volume", 20n) } });
});

test("what is taken adds up to what is wanted, never more than a lot has, and no later lot before an earlier one is empty", () => {
  const anyLot = fc.record({ lotId: fc.uuid(), expiresOn: fc.constantFrom(null, "2026-04-01", "2026-05-01", "2027-01-01"), receivedOrder: fc.nat(5), amount: fc.bigInt({ min: -5n, max: 50n }) });
  fc.assert(
    fc.property(fc.uniqueArray(anyLot, { selector: ({ lotId }) => lotId, maxLength: 6 }), fc.bigInt({ min: 0n, max: 120n }), (some, wanted) => {
      const lots = some.map(({ lotId, expiresOn, receivedOrder, amount }) => lot(lotId, expiresOn, receivedOrder, amount));
      const there = lots.reduce((sum, { amount }) => sum + (amount > 0n ? amount : 0n), 0n);
      const taken = takeFirstExpired(lots, fromAmount("mass", wanted));
      expect(taken.ok).toBe(there >= wanted);
      if (!taken.ok) return;
      expect(taken.value.reduce((sum, { quantity }) => sum + quantity.amount, 0n)).toBe(wanted);
      const left = new Map(taken.value.map(({ lotId, quantity }) => [lotId, quantity.amount]));
      const order = inTakingOrder(lots).filter(({ amount }) => amount > 0n);
      const touched = order.filter(({ lotId }) => left.has(lotId));
      expect(touched).toEqual(order.slice(0, touched.length));
      for (const { lotId, amount } of touched.slice(0, -1)) expect(left.get(lotId)).toBe(amount);
    }),
  );
});
