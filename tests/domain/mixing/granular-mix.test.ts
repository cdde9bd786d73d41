import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of, sum } from "#domain/quantities/quantity";
import { compareRates, rateIn, rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { belowFirstMark, ceilingOf, highestOf, measureOut, noTool, roundedBelowLowest, smallerOf } from "#domain/mixing/granular-mix";
import { CUP, FEED, granularOf, IRON, LAWN, QUESTION, rulesOf, SPREADER, ticketOf, withFeed } from "../../support/ticket";

const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
const onLawns = (...squareFeet: readonly bigint[]) => squareFeet.map((size, index) => ({ ...LAWN, zoneId: String(index), name: `Lawn ${String(index)}`, area: of("sq ft", size) }));
const ids = (count: number) => Array.from({ length: count }, (_unused, index) => String(index));

test("rate times area on each lawn, and the lawns add up to the visit", () => {
  const mix = granularOf({ lawns: onLawns(2000n, 3500n), ...withFeed({ zoneIds: ids(2) }) });
  expect(mix?.lawns.map(({ amount }) => amount)).toEqual([of("lb", 5n), of("lb", "8.75")]);
  expect(mix?.total).toEqual(of("lb", "13.75"));
  expect(mix?.lawns.map(({ marks }) => marks)).toEqual([20n, 35n]);
});

test("two passes at half rate put half of the amount down each; one pass puts all of it down", () => {
  const perPass = (granularPasses: (typeof QUESTION)["settings"]["granularPasses"]) => {
    const [lawn] = granularOf({ settings: { ...QUESTION.settings, granularPasses } })?.lawns ?? [];
    return lawn && toNumber(measureInUnit(lawn.perPass, "lb"));
  };
  expect(perPass("two-at-half-rate-crosswise")).toBe(2.5);
  expect(perPass("one-with-overlap")).toBe(5);
});

test("the hopper is filled as often as the visit needs, and one that is entered as holding nothing holds", () => {
  expect(granularOf({ lawns: [{ ...LAWN, area: of("sq ft", 20_000n) }] })?.hopperFills).toBe(1n);
  expect(granularOf({ lawns: [{ ...LAWN, area: of("sq ft", 20_001n) }], ...withFeed({ tool: "none" }) })?.hopperFills).toBe(2n);
  const empty = withFeed({ gear: { ...SPREADER, capacity: of("lb", 0n) } });
  expect(granularOf(empty)?.hopperFills).toBe(0n);
  expect(rulesOf(empty)).toContain("hold hopper-without-size");
});

describe("rounding", () => {
  test("what is weighed out never passes the label's highest rate on any lawn, and the lawns add up", () => {
    fc.assert(
      fc.property(fc.array(fc.bigInt(0n, 60_000n), { minLength: 1, maxLength: 4 }), fc.bigInt(10n, 30n), (sizes, tenths) => {
        const rate = rateOf("product-mass-per-area", { numerator: tenths, denominator: 10n }, "lb per 1,000 sq ft");
        const mix = granularOf({ lawns: onLawns(...sizes), ...withFeed({ rate, zoneIds: ids(sizes.length) }) });
        expect(mix && sum("mass", mix.lawns.map(({ amount }) => amount))).toEqual(mix?.total);
        for (const { amount, treatedArea } of mix?.lawns ?? []) {
          // Half a canonical unit more is below what any scale shows.
          expect(2n * amount.amount * of("sq ft", 1000n).amount <= 2n * of("lb", 3n).amount * treatedArea.amount + of("sq ft", 1000n).amount).toBe(true);
        }
      }),
    );
  });

  test("under one mark the amount stays as it is and asks for a finer tool, also where only the maximum keeps it from a mark", () => {
    const [small] = granularOf({ lawns: [{ ...LAWN, area: of("sq ft", 40n) }] })?.lawns ?? [];
    expect(small).toMatchObject({ marks: null, amount: of("lb", "0.1") });
    expect(rulesOf({ lawns: [{ ...LAWN, area: of("sq ft", 40n) }] })).toContain("take-care below-first-mark");
    // 80 sq ft at 2.5 lb is 0.2 lb, nearest to the quarter pound; the label's highest there is 0.24 lb.
    expect(granularOf({ lawns: [{ ...LAWN, area: of("sq ft", 80n) }] })?.lawns[0]).toMatchObject({ marks: null, amount: of("lb", "0.2") });
    expect(belowFirstMark("Feed", "Front", "scale").what).toBe("Feed for Front is less than one mark of the scale.");
  });

  test("a plan above the label's highest rate is computed as planned, so that its figures show it", () => {
    expect(granularOf(withFeed({ rate: pounds("4") }))?.total).toEqual(of("lb", 8n));
  });

  test("the rate that rounding makes of the plan is said, and where it falls below the label's lowest a finding says so", () => {
    // 1,050 sq ft at 2 lb is 2.1 lb; the nearest quarter is 2 lb, which is 1.905 lb per 1,000 sq ft.
    const question = { lawns: [{ ...LAWN, area: of("sq ft", 1050n) }], ...withFeed({ rate: pounds("2") }) };
    const [lawn] = granularOf(question)?.lawns ?? [];
    expect(lawn?.rate && toNumber(rateIn(lawn.rate, "lb per 1,000 sq ft"))).toBeCloseTo(2 / 1.05, 12);
    expect(rulesOf(question)).toContain("take-care rounded-below-lowest");
    expect(rulesOf({ lawns: [{ ...LAWN, area: of("sq ft", 1000n) }], ...withFeed({ rate: pounds("2") }) })).not.toContain("take-care rounded-below-lowest");
    expect(roundedBelowLowest({ ...FEED, rate: pounds("1.9") }, pounds("1.8"), "Front")).toEqual([]);
  });

  test("without a scale amounts are exact to the canonical unit below, and a cup is no scale", () => {
    const rule = "take-care no-measuring-tool";
    expect(rulesOf(withFeed({ tool: "none" }))).toContain(rule);
    expect(rulesOf(withFeed({ tool: CUP }))).toContain(rule);
    expect(granularOf(withFeed({ tool: CUP }))).toMatchObject({ toolName: null, total: of("lb", 5n) });
    expect(noTool("Feed", "a scale").what).toBe("A scale for Feed is not on file.");
  });

  test("nothing is measured out above the maximum, with a tool or without", () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 10n ** 14n), fc.bigInt(1n, 10n ** 14n), fc.bigInt(1n, 10n ** 12n), (wanted, most, mark) => {
        const exact = (amount: bigint) => ({ dimension: "mass", exactAmount: { numerator: amount, denominator: 7n } }) as const;
        for (const tool of [undefined, { mark: exact(mark) }]) {
          const { amount } = measureOut(exact(wanted), exact(most), tool);
          expect(14n * amount.amount <= 2n * most + 7n).toBe(true);
        }
      }),
    );
  });
});

test("rounding may reach the label's highest rate, or the plan where that is above it or by another measure", () => {
  expect(ceilingOf(pounds("2"), FEED.use.rates)).toEqual(pounds("3"));
  expect(ceilingOf(pounds("3.5"), FEED.use.rates)).toEqual(pounds("3.5"));
  expect(ceilingOf(pounds("2"), IRON.use.rates)).toEqual(pounds("2"));
  expect(compareRates(ceilingOf(pounds("3"), FEED.use.rates), pounds("3"))).toBe(0);
  expect(smallerOf(exactly("lb", "2"), exactly("lb", "3"))).toEqual(exactly("lb", "2"));
  expect(smallerOf(exactly("lb", "3"), exactly("lb", "2"))).toEqual(exactly("lb", "2"));
});

test("many lawns and very large ones are worked out exactly", () => {
  const sizes = Array.from({ length: 150 }, (_unused, index) => 1_000_000n * BigInt(index + 1));
  const ticket = ticketOf({ lawns: onLawns(...sizes), ...withFeed({ zoneIds: ids(sizes.length) }) });
  expect(ticket.mixes[0]).toMatchObject({ total: of("lb", 2500n * ((150n * 151n) / 2n)) });
});

describe("findings of a spread product alone", () => {
  const found = (rule: string, area: bigint, change: Parameters<typeof withFeed>[0] = {}) =>
    ticketOf({ lawns: [{ ...LAWN, area: of("sq ft", area) }], treatments: [{ ...FEED, ...change }] }).findings.filter((finding) => finding.rule === rule);

  const low = () => ({ rate: pounds("2") });

  test("less than a mark is said of the product and the lawn, and of no lawn that gets a mark or nothing", () => {
    expect(found("below-first-mark", 40n)).toMatchObject([{ level: "take-care", about: [FEED.label.productName, LAWN.name] }]);
    expect(found("below-first-mark", 2000n)).toEqual([]);
    expect(found("below-first-mark", 0n)).toEqual([]);
    expect(found("below-first-mark", 40n, { tool: "none" })).toEqual([]);
  });

  test("a missing scale is said of the product, and only where it is missing", () => {
    expect(found("no-measuring-tool", 2000n, { tool: "none" })).toMatchObject([{ about: [FEED.label.productName] }]);
    expect(found("no-measuring-tool", 2000n)).toEqual([]);
  });

  test("a rate that rounding brings too low is said of the product and the lawn, and never of what is not rounded", () => {
    expect(found("rounded-below-lowest", 1050n, low())).toMatchObject([{ about: [FEED.label.productName, LAWN.name] }]);
    expect(found("rounded-below-lowest", 1050n, { ...low(), tool: "none" })).toEqual([]);
    expect(found("rounded-below-lowest", 40n, low())).toEqual([]);
  });

  test("a label with one rate can't be hit by marks: near enough to it is it, and farther off nobody is told to plan more", () => {
    const rates: TicketTreatment["use"]["rates"] = { basis: "product-mass-per-area", low: pounds("3"), high: pounds("3") };
    const only = { use: { ...FEED.use, rates }, rate: pounds("3") };
    // 2,051 sq ft are 6.153 lb: 6 lb of the quarter-pound scale are 2.5 % less; 8,150 sq ft are 24.45 lb, of which 24¼ are 0.8 % less.
    expect(found("rounded-below-lowest", 2051n, only)).toMatchObject([{ toDo: "Measure it with a finer tool." }]);
    expect(found("rounded-below-lowest", 8150n, only)).toEqual([]);
    expect(found("rounded-below-lowest", 1050n, low())).toMatchObject([{ toDo: "Measure it with a finer tool, or plan a little more." }]);
  });

  test("off the plan is said over the visit beside what else is said, but not of what comes too low already", () => {
    // 2.1 lb become 2 lb; 0.1 and 1.375 lb become 0.1 and 1½ lb.
    expect(found("rounded-off-plan", 1050n, { rate: pounds("2") })).toEqual([]);
    const lawns = [40n, 550n].map((area, index) => ({ ...LAWN, zoneId: `lawn ${String(index)}`, name: `lawn ${String(index)}`, area: of("sq ft", area) }));
    const { findings } = ticketOf({ lawns, treatments: [{ ...FEED, rate: pounds("2.5"), zoneIds: lawns.map(({ zoneId }) => zoneId) }] });
    expect(findings.map(({ rule }) => rule)).toEqual(expect.arrayContaining(["below-first-mark", "rounded-off-plan"]));
  });

  test("a hopper that holds nothing is said of the spreader", () => {
    expect(found("hopper-without-size", 2000n, { gear: { ...SPREADER, capacity: of("lb", 0n) } })).toMatchObject([{ about: [SPREADER.name] }]);
  });
});

test("a treatment's highest rate is that of its own measure", () => {
  expect(highestOf(FEED)).toEqual(FEED.use.rates.high);
  expect(highestOf(IRON)).toEqual(IRON.use.rates.high);
  expect(highestOf({ ...IRON, rate: FEED.rate })).toEqual(FEED.rate);
});
