import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromAmount, of } from "#domain/quantities/quantity";
import {
  applyPosting, countPosting, fillPosting, holdsStock, isBalanced, LOCATION_KINDS, losePosting, movePosting, type Posting, postingOf, receivePosting, returnPosting,
} from "#domain/stock/posting";

const bag = (lotId: string, pounds: string) => ({ lotId, quantity: of("lb", pounds) });

test("each maker moves from where to where", () => {
  const amount = of("lb", "50").amount;
  const pair = (from: string, to: string) => [
    { lotId: "a", stockLocationId: from, amount: -amount },
    { lotId: "a", stockLocationId: to, amount },
  ];
  const lots = [bag("a", "50")];
  const from = lots.map((lot) => ({ ...lot, from: "truck" }));
  const [left, came] = pair("supplier", "shop");
  for (const paidPerContainerCents of [4250n, 0n, null]) {
    const received = lots.map((lot) => ({ ...lot, paidPerContainerCents }));
    expect(receivePosting("supplier", "shop", received)).toEqual({ kind: "receive", entries: [left, { ...came, paidPerContainerCents }] });
  }
  expect(movePosting("shop", "truck", lots)).toEqual({ kind: "move", entries: pair("shop", "truck") });
  expect(fillPosting("tank", from)).toEqual({ kind: "fill", entries: pair("truck", "tank") });
  expect(applyPosting("lawn", from)).toEqual({ kind: "apply", entries: pair("truck", "lawn") });
  expect(returnPosting("tank", "shop", lots)).toEqual({ kind: "return", entries: pair("tank", "shop") });
  expect(losePosting("shop", "loss", lots)).toEqual({ kind: "lose", entries: pair("shop", "loss") });
});

test("the same lot at the same place is one entry", () => {
  const { entries } = movePosting("shop", "truck", [bag("a", "10"), bag("a", "5"), bag("b", "1")]);
  expect(entries.map(({ lotId, stockLocationId }) => `${lotId} ${stockLocationId}`)).toEqual(["a shop", "a truck", "b shop", "b truck"]);
  expect(entries[1]?.amount).toBe(of("lb", "15").amount);
});

test("a delivery that names a lot twice is none: one entry can't have two prices", () => {
  const [one, other] = [{ ...bag("a", "10"), paidPerContainerCents: 1n }, { ...bag("a", "10"), paidPerContainerCents: 2n }];
  expect(() => receivePosting("supplier", "shop", [one, other])).toThrow();
});

test("a movement to where it is, and one of nothing, are no postings", () => {
  expect(() => movePosting("shop", "shop", [bag("a", "1")])).toThrow();
  expect(() => movePosting("shop", "truck", [])).toThrow();
  expect(() => movePosting("shop", "truck", [bag("a", "0")])).toThrow();
});

describe("a count", () => {
  test("posts what is missing and what is too much, also where the books are below zero", () => {
    const posting = countPosting("shop", "difference", [
      { lotId: "a", inTheBooks: 100n, counted: fromAmount("mass", 90n) },
      { lotId: "b", inTheBooks: -5n, counted: fromAmount("mass", 0n) },
      { lotId: "c", inTheBooks: 7n, counted: fromAmount("mass", 7n) },
    ]);
    expect(posting).toEqual({
      kind: "count",
      entries: [
        { lotId: "a", stockLocationId: "shop", amount: -10n },
        { lotId: "a", stockLocationId: "difference", amount: 10n },
        { lotId: "b", stockLocationId: "shop", amount: 5n },
        { lotId: "b", stockLocationId: "difference", amount: -5n },
      ],
    });
  });

  test("that agrees posts nothing", () => {
    expect(countPosting("shop", "difference", [{ lotId: "a", inTheBooks: 3n, counted: fromAmount("mass", 3n) }])).toBe("as in the books");
  });
});

test("every posting balances, whatever moves from where to where", () => {
  const place = fc.constantFrom("shop", "truck", "tank", "lawn");
  const transfer = fc.record({ lotId: fc.constantFrom("a", "b", "c"), quantity: fc.bigInt({ min: 1n, max: 10n ** 18n }).map((amount) => fromAmount("mass", amount)), from: place, to: place });
  fc.assert(
    fc.property(fc.array(transfer, { minLength: 1, maxLength: 6 }), (transfers) => {
      const real = transfers.filter(({ from, to }) => from !== to);
      let posting: Posting;
      try {
        posting = postingOf("move", real);
      } catch {
        // Only where there and back of the same lots come to nothing at all.
        const net = new Map<string, bigint>();
        for (const { lotId, quantity, from, to } of real) {
          net.set(`${lotId} ${from}`, (net.get(`${lotId} ${from}`) ?? 0n) - quantity.amount);
          net.set(`${lotId} ${to}`, (net.get(`${lotId} ${to}`) ?? 0n) + quantity.amount);
        }
        expect([...net.values()].every((sum) => sum === 0n)).toBe(true);
        return;
      }
      expect(isBalanced(posting.entries)).toBe(true);
      expect(posting.entries.every(({ amount }) => amount !== 0n)).toBe(true);
    }),
  );
});

test("entries that leave something without a place do not balance", () => {
  expect(isBalanced([{ lotId: "a", stockLocationId: "shop", amount: 1n }])).toBe(false);
  expect(isBalanced([{ lotId: "a", stockLocationId: "shop", amount: 1n }, { lotId: "b", stockLocationId: "truck", amount: -1n }])).toBe(false);
});

test("shop, truck and tank hold stock, and nothing else does", () => expect(LOCATION_KINDS.filter(holdsStock)).toEqual(["shop", "truck", "tank"]));
