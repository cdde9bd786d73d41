import fc from "fast-check";
import { expect, test } from "vitest";
import { fromAmount } from "#domain/quantities/quantity";
import { balanceOfPeriod, balancesOf, type DatedEntry, leftBelowZero, totalOf } from "#domain/stock/on-hand";
import { countPosting, LOCATION_KINDS, type LocationKind, type Posting, postingOf, type PostingKind } from "#domain/stock/posting";

// What may happen to one product, as a person would note it on paper: the kind decides from where to where.
const WAYS: readonly { readonly kind: PostingKind; readonly from: LocationKind; readonly to: LocationKind }[] = [
  { kind: "receive", from: "supplier", to: "shop" },
  { kind: "return", from: "shop", to: "supplier" },
  { kind: "move", from: "shop", to: "truck" },
  { kind: "move", from: "truck", to: "shop" },
  { kind: "fill", from: "truck", to: "tank" },
  { kind: "apply", from: "tank", to: "lawn" },
  { kind: "apply", from: "truck", to: "lawn" },
  { kind: "lose", from: "shop", to: "loss" },
  { kind: "lose", from: "tank", to: "rinsate" },
];

type Happening =
  | { readonly day: number; readonly way: (typeof WAYS)[number]; readonly lotId: string; readonly amount: bigint }
  | { readonly day: number; readonly countedAt: "shop" | "truck"; readonly lotId: string; readonly counted: bigint };

const amount = fc.bigInt({ min: 1n, max: 1_000n });
const lotId = fc.constantFrom("a", "b");
const day = fc.integer({ min: 0, max: 9 });
const happening: fc.Arbitrary<Happening> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ day, way: fc.constantFrom(...WAYS), lotId, amount }) },
  { weight: 1, arbitrary: fc.record({ day, countedAt: fc.constantFrom("shop" as const, "truck" as const), lotId, counted: amount }) },
);

const dateOf = (dayNumber: number) => new Date(Date.UTC(2026, 3, 1 + dayNumber));

/** An independent model: plain sums per location and lot, and one line of the paper balance per kind of happening. */
function byHand(happenings: readonly Happening[], from: number, until: number) {
  const there = new Map<string, bigint>();
  const at = (location: string, lot: string) => there.get(`${lot} ${location}`) ?? 0n;
  const put = (location: string, lot: string, by: bigint) => there.set(`${lot} ${location}`, at(location, lot) + by);
  const onHand = () => (["shop", "truck", "tank"] as const).flatMap((place) => ["a", "b"].map((lot) => at(place, lot))).reduce((sum, one) => sum + one, 0n);
  const lines = { received: 0n, used: 0n, waste: 0n, difference: 0n };
  let opening = 0n;
  let closing = 0n;
  for (const one of happenings) {
    const isWithin = one.day >= from && one.day < until;
    if ("way" in one) {
      put(one.way.from, one.lotId, -one.amount);
      put(one.way.to, one.lotId, one.amount);
      if (isWithin) {
        if (one.way.from === "supplier") lines.received += one.amount;
        if (one.way.to === "supplier") lines.received -= one.amount;
        if (one.way.to === "lawn") lines.used += one.amount;
        if (one.way.to === "loss" || one.way.to === "rinsate") lines.waste += one.amount;
      }
    } else {
      const missing = at(one.countedAt, one.lotId) - one.counted;
      put(one.countedAt, one.lotId, -missing);
      put("count-difference", one.lotId, missing);
      if (isWithin) lines.difference += missing;
    }
    if (one.day < from) opening = onHand();
    if (one.day < until) closing = onHand();
  }
  return { there, balance: { opening, ...lines, closing } };
}

function postingsOf(happenings: readonly Happening[]): readonly { readonly day: number; readonly posting: Posting }[] {
  const before: Posting["entries"][number][] = [];
  return happenings.flatMap((one) => {
    const posting =
      "way" in one
        ? postingOf(one.way.kind, [{ lotId: one.lotId, quantity: fromAmount("mass", one.amount), from: one.way.from, to: one.way.to }])
        : countPosting(one.countedAt, "count-difference", [
            { lotId: one.lotId, inTheBooks: totalOf(balancesOf(before).filter((balance) => balance.lotId === one.lotId && balance.stockLocationId === one.countedAt)), counted: fromAmount("mass", one.counted) },
          ]);
    if (posting === "as in the books") return [];
    before.push(...posting.entries);
    return [{ day: one.day, posting }];
  });
}

test("after any postings the balances are those of plain sums, the whole is nothing, and every period closes", () => {
  fc.assert(
    fc.property(fc.array(happening, { maxLength: 30 }), day, day, (some, one, other) => {
      const happenings = [...some].sort((left, right) => left.day - right.day);
      const [from, until] = one <= other ? [one, other] : [other, one];
      const postings = postingsOf(happenings);
      const entries = postings.flatMap(({ posting }) => posting.entries);
      const { there, balance } = byHand(happenings, from, until);
      const balances = balancesOf(entries);
      for (const { lotId: lot, stockLocationId, amount: left } of balances) expect(left).toBe(there.get(`${lot} ${stockLocationId}`));
      expect(totalOf(balances)).toBe(0n);
      const dated = postings.flatMap(({ day: dayNumber, posting }) =>
        posting.entries.map((entry): DatedEntry => ({ amount: entry.amount, locationKind: entry.stockLocationId as LocationKind, happenedAt: dateOf(dayNumber) })),
      );
      const period = balanceOfPeriod(dated, dateOf(from), dateOf(until));
      expect(period).toEqual(balance);
      expect(period.opening + period.received - period.used - period.waste - period.difference).toBe(period.closing);
    }),
  );
});

test("a planned movement leaves below zero only what it takes from", () => {
  const before = [
    { lotId: "a", stockLocationId: "shop", amount: 10n },
    { lotId: "b", stockLocationId: "shop", amount: -3n },
  ];
  const { entries } = postingOf("move", [{ lotId: "a", quantity: fromAmount("mass", 11n), from: "shop", to: "truck" }]);
  expect(leftBelowZero(before, entries)).toEqual([{ lotId: "a", stockLocationId: "shop", amount: -1n }]);
  const fits = postingOf("move", [{ lotId: "a", quantity: fromAmount("mass", 10n), from: "shop", to: "truck" }]);
  expect(leftBelowZero(before, fits.entries)).toEqual([]);
});

test("every kind of location is either where stock is, or a line of the balance", () => {
  const entries = LOCATION_KINDS.map((locationKind, index): DatedEntry => ({ amount: 10n ** BigInt(index), locationKind, happenedAt: dateOf(1) }));
  const { received, used, waste, difference, closing } = balanceOfPeriod(entries, dateOf(0), dateOf(2));
  expect(closing - received + used + waste + difference).toBe(11_111_111n);
});
