import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of, sum } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { makeMixTicket, neededOf } from "#domain/mixing/mix-ticket";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { valueOf } from "../../support/crew";
import { BARRIER, FEED, granularOf, holdsOf, IRON, LAWN, QUESTION, rulesOf, SPRAYER, sprayOf, SPREADER, ticketOf, withFeed, withIron } from "../../support/ticket";

describe("amounts", () => {
  // Common practice: 2.5 lb per 1,000 sq ft of a 32 % feed is 0.8 lb of nitrogen per 1,000 sq ft.
  test("2.5 lb of a 32 % feed is 0.8 lb of nitrogen per 1,000 sq ft, half of it quick", () => {
    const ticket = ticketOf({ treatments: [FEED] });
    expect(granularOf({ treatments: [FEED] })?.total).toEqual(of("lb", 5n));
    const nutrients = ticket.delivered[0]?.nutrients;
    expect(nutrients && toNumber(measureInUnit(nutrients.nitrogen, "lb"))).toBeCloseTo(0.8 * 2, 12);
    expect(nutrients?.quickNitrogen !== "not-stated" && nutrients && toNumber(measureInUnit(nutrients.quickNitrogen, "lb"))).toBeCloseTo(0.8, 12);
  });

  // Common practice: 1.5 fl oz per 1,000 sq ft on 2,000 sq ft is 3 fl oz.
  test("1.5 fl oz per 1,000 sq ft on 2,000 sq ft is 3 fl oz, six marks of a half-ounce cup, in 3 gal", () => {
    const mix = sprayOf();
    expect(mix?.products[0]?.total).toEqual(of("fl oz", 3n));
    expect(mix?.finished).toEqual(of("gal", 3n));
    expect(mix?.loads).toHaveLength(1);
    expect(mix?.loads[0]?.products[0]?.marks).toBe(6n);
  });

  test("two passes at half rate put half of the amount down each", () => {
    const [lawn] = granularOf()?.lawns ?? [];
    expect(lawn && toNumber(measureInUnit(lawn.perPass, "lb"))).toBe(2.5);
  });

  test("more than a tank is loads of one size, or full tanks and a short one, and both add up", () => {
    const lawns = [{ ...LAWN, area: of("sq ft", 150_000n) }];
    const even = sprayOf({ lawns });
    expect(even?.loads.map(({ finished }) => finished)).toEqual([of("gal", 75n), of("gal", 75n), of("gal", 75n)]);
    const full = sprayOf({ lawns, settings: { ...QUESTION.settings, tankLoads: "full-tanks-then-a-short-one" } });
    expect(full?.loads.map(({ finished }) => finished)).toEqual([of("gal", 100n), of("gal", 100n), of("gal", 25n)]);
  });

  test("products of one machine on the same lawns share a tank, in mixing order; each spread product is a pass of its own", () => {
    const powder: TicketTreatment = { ...IRON, line: 4, label: { ...IRON.label, productName: "Zinc Powder", formulation: "wettable powder" } };
    const ticket = ticketOf({ treatments: [IRON, powder, FEED, BARRIER] });
    expect(ticket.mixes.map(({ kind }) => kind)).toEqual(["granular", "granular", "spray"]);
    expect(sprayOf({ treatments: [IRON, powder] })?.products.map(({ productName }) => productName)).toEqual(["Zinc Powder", "Rustwater Iron"]);
  });

  test("a strip along water is taken off for the product that may not go there", () => {
    const lawns = [{ ...LAWN, waterEdges: [{ name: "the pond", length: of("ft", 50n), width: of("ft", 4n) }] }];
    // 415 ILCS 65/5a: 3 ft with a deflector (the crew's own 4 ft is wider), 15 ft for the sprayer.
    expect(granularOf({ lawns })?.lawns[0]?.treatedArea).toEqual(of("sq ft", 1800n));
    expect(sprayOf({ lawns })?.lawns[0]?.treatedArea).toEqual(of("sq ft", 1250n));
    expect(holdsOf({ lawns: [{ ...LAWN, waterEdges: [{ name: "the pond", length: of("ft", 500n), width: of("ft", 4n) }] }] })).toContain("hold nothing-left-to-treat");
  });

  test("less than half a mark stays as it is and asks for a finer tool", () => {
    const lawns = [{ ...LAWN, area: of("sq ft", 40n) }];
    expect(granularOf({ lawns })?.lawns[0]?.marks).toBeNull();
    expect(rulesOf({ lawns })).toContain("take-care below-first-mark");
  });
});

describe("closing sums and maxima", () => {
  const areas = fc.array(fc.bigInt(200n, 60_000n), { minLength: 1, maxLength: 4 });
  const tenths = fc.bigInt(10n, 30n);

  const lawnsOf = (sizes: readonly bigint[]) => sizes.map((size, index) => ({ ...LAWN, zoneId: String(index), area: of("sq ft", size) }));
  const onAll = (sizes: readonly bigint[], treatment: TicketTreatment) => ({ ...treatment, zoneIds: sizes.map((_size, index) => String(index)) });

  test("lawns and loads add up to the visit exactly, and no load passes the label's highest rate", () => {
    fc.assert(
      fc.property(areas, tenths, fc.constantFrom("same-size-every-time", "full-tanks-then-a-short-one"), (sizes, rate, tankLoads) => {
        const planned = rateOf("product-volume-per-area", { numerator: rate, denominator: 15n }, "fl oz per 1,000 sq ft");
        const mix = sprayOf({ lawns: lawnsOf(sizes), treatments: [onAll(sizes, { ...IRON, rate: planned })], settings: { ...QUESTION.settings, tankLoads } });
        if (mix === undefined) throw new Error("There is a spray.");
        const [product] = mix.products;
        expect(sum("volume", mix.loads.map(({ finished }) => finished))).toEqual(mix.finished);
        expect(sum("volume", mix.lawns.map(({ finished }) => finished))).toEqual(mix.finished);
        for (const parts of [mix.loads, mix.lawns]) {
          const amounts = parts.map(({ products: [part] }) => part?.amount.amount ?? -1n);
          expect(amounts.reduce((total, amount) => total + amount, 0n)).toBe(product?.total.amount);
        }
        const ground = sizes.reduce((total, size) => total + size, 0n);
        const highest = of("fl oz", { numerator: ground * 2n, denominator: 1000n }).amount;
        expect(product && product.total.amount <= highest + BigInt(mix.loads.length)).toBe(true);
        for (const { finished } of mix.loads) expect(finished.amount <= SPRAYER.capacity.amount).toBe(true);
      }),
    );
  });

  test("what is weighed out never passes the label's highest rate on any lawn, and the lawns add up", () => {
    fc.assert(
      fc.property(areas, tenths, (sizes, rate) => {
        const planned = rateOf("product-mass-per-area", { numerator: rate, denominator: 10n }, "lb per 1,000 sq ft");
        const mix = granularOf({ lawns: lawnsOf(sizes), treatments: [onAll(sizes, { ...FEED, rate: planned })] });
        expect(mix && sum("mass", mix.lawns.map(({ amount }) => amount))).toEqual(mix?.total);
        for (const { amount, treatedArea } of mix?.lawns ?? []) {
          expect(amount.amount * of("sq ft", 1000n).amount <= of("lb", 3n).amount * treatedArea.amount).toBe(true);
        }
      }),
    );
  });

  test("a higher rate loses no finding but those that asked for more", () => {
    const lawns = [{ ...LAWN, waterEdges: [{ name: "the pond", length: "unknown", width: "unknown" } as const] }];
    fc.assert(
      fc.property(fc.bigInt(5n, 60n), fc.bigInt(0n, 40n), (rate, more) => {
        const at = (tenth: bigint) =>
          rulesOf({ lawns, forecastHighF: 85, ...withFeed({ rate: rateOf("product-mass-per-area", { numerator: tenth, denominator: 10n }, "lb per 1,000 sq ft"), labelConfirmedBy: null }) });
        const about = new Set(["take-care label-rate-below-lowest", "take-care below-first-mark", "note setting-of-another-rate"]);
        const higher = at(rate + more);
        for (const rule of at(rate)) if (!about.has(rule)) expect(higher).toContain(rule);
      }),
    );
  });

  test("the same job in metric and US units is the same ticket", () => {
    const us = ticketOf({ treatments: [FEED] });
    // 2.5 lb per 1,000 sq ft is 2.5 x 453.59237 g on 92.90304 m2.
    expect(ticketOf(withFeed({ rate: rateOf("product-mass-per-area", { numerator: 25n * 45_359_237n, denominator: 92_903_040n }, "g per m2") }))).toEqual(us);
  });
});

describe("findings of the label", () => {
  test("a plan inside everything is held by nothing", () => {
    expect(holdsOf()).toEqual([]);
  });

  test("above the highest rate is a hold that nobody may answer; below the lowest wants care", () => {
    const at = (pounds: string) => withFeed({ rate: rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft") });
    expect(ticketOf(at("3.1")).findings[0]).toMatchObject({ level: "hold", rule: "label-rate-above-highest", answerableBy: "nobody" });
    expect(rulesOf(at("3"))).not.toContain("hold label-rate-above-highest");
    expect(rulesOf(at("1.9"))).toContain("take-care label-rate-below-lowest");
    expect(rulesOf(at("2"))).not.toContain("take-care label-rate-below-lowest");
  });

  test("a grass that the label does not name holds; one that is assumed wants care; a label nobody read for it holds", () => {
    expect(holdsOf({ lawns: [{ ...LAWN, grasses: ["tall fescue", "zoysiagrass"] }] })).toContain("hold grass-not-on-label");
    expect(rulesOf({ lawns: [{ ...LAWN, grassesAssumed: true }] })).toContain("take-care grass-assumed");
    expect(holdsOf(withFeed({ use: { ...FEED.use, grasses: "unknown" } }))).toContain("hold grasses-not-read");
    expect(holdsOf({ lawns: [{ ...LAWN, grasses: ["zoysiagrass"] }], ...withFeed({ use: { ...FEED.use, grasses: "any turfgrass" } }) })).toEqual([]);
  });

  test("a sprayer that puts out more or less than the label's spray volume holds", () => {
    const at = (gallons: string) => withIron({ gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", gallons, "gal per 1,000 sq ft") } } });
    expect(holdsOf(at("2"))).toEqual([]);
    expect(holdsOf(at("2.01"))).toContain("hold carrier-out-of-range");
    expect(holdsOf(at("0.9"))).toContain("hold carrier-out-of-range");
    expect(holdsOf(withIron({ use: { ...IRON.use, carrier: "unknown" } }))).toContain("hold carrier-not-read");
  });

  const past = (on: string, pounds: string) => ({
    on: on as CalendarDate,
    productId: "barrier",
    activeIngredients: [{ name: "velodiamine", rate: rateOf("active-ingredient-mass-per-area", pounds, "lb per acre") }],
  });

  test("sooner than the label's least days holds, on the lawn that had it", () => {
    const on = (day: string) => ({ lawns: [{ ...LAWN, history: [past(day, "0.1")] }], treatments: [BARRIER] });
    expect(holdsOf(on("2026-02-14"))).toContain("hold too-soon-again");
    expect(holdsOf(on("2026-02-13"))).toEqual([]);
  });

  // 3 lb per 1,000 sq ft of 0.37 % is 0.0111 lb, 0.4835 lb per acre.
  test("a season's limit counts the active ingredient over all products and the lawn's calendar year", () => {
    const on = (day: string, pounds: string) => ({ lawns: [{ ...LAWN, history: [{ ...past(day, pounds), productId: "another" }] }], treatments: [BARRIER] });
    expect(holdsOf(on("2026-01-10", "1.01"))).toEqual([]);
    expect(holdsOf(on("2026-01-10", "1.02"))).toContain("hold season-limit-passed");
    expect(holdsOf(on("2025-12-31", "1.02"))).toEqual([]);
    const twice = { treatments: [BARRIER, { ...BARRIER, line: 4, productId: "other", rate: rateOf("product-mass-per-area", "4", "lb per 1,000 sq ft") }] };
    expect(holdsOf(twice)).toEqual([]);
    expect(holdsOf({ ...twice, lawns: [{ ...LAWN, history: [{ ...past("2026-01-10", "0.5"), productId: "another" }] }] })).toContain("hold season-limit-passed");
    expect(holdsOf({ treatments: [{ ...BARRIER, label: { ...BARRIER.label, activeIngredients: "unknown" } }] })).toContain("hold season-limit-undecided");
  });

  test("an entry that nobody confirmed holds, and the office answers by confirming it", () => {
    expect(ticketOf(withFeed({ labelConfirmedBy: null })).findings[0]).toMatchObject({ rule: "label-not-confirmed", answerableBy: "office" });
  });

  test("every fact that nobody has read holds and says what is missing", () => {
    const unread = { ...IRON.use, carrier: "unknown", leastDaysBetween: "unknown", seasonLimits: "unknown", stainsHardSurfaces: "unknown", grasses: "unknown" } as const;
    const rules = holdsOf(withIron({ use: unread, label: { ...IRON.label, isRestrictedUse: "unknown", density: "unknown" } }));
    for (const rule of ["carrier-not-read", "interval-not-read", "season-limit-not-read", "staining-not-read", "grasses-not-read", "restricted-use-not-read", "nutrients-not-countable"]) {
      expect(rules).toContain(`hold ${rule}`);
    }
  });
});

describe("findings of the weather", () => {
  // Common practice: cool-season turf gets feed and iron in the 70s F and waits in the 80s.
  test("the 70s go, the 80s wait; the label's own limit holds at and above it", () => {
    expect(rulesOf({ forecastHighF: 79 }).filter((rule) => /hot|heat/u.test(rule))).toEqual([]);
    expect(rulesOf({ forecastHighF: 80 })).toEqual(expect.arrayContaining(["hold too-hot", "take-care heat-on-cool-season-turf"]));
    expect(holdsOf({ forecastHighF: 80, treatments: [FEED] })).toEqual([]);
    const warm = { forecastHighF: 90, lawns: [{ ...LAWN, grasses: ["zoysiagrass"] as const }], ...withFeed({ use: { ...FEED.use, grasses: "any turfgrass" } }) };
    expect(rulesOf(warm)).not.toContain("take-care heat-on-cool-season-turf");
  });

  test("a day without a forecast can't be judged where a limit is on file or nobody has read whether there is one", () => {
    expect(holdsOf({ forecastHighF: "not-entered" })).toEqual(["hold forecast-not-entered"]);
    expect(holdsOf({ forecastHighF: "not-entered", treatments: [FEED] })).toEqual([]);
    expect(makeMixTicket({ ...QUESTION, forecastHighF: 400 })).toMatchObject({ ok: false, refusal: { field: "forecastHighF" } });
  });
});

describe("findings of stock, crew and law", () => {
  test("less on hand than the visit needs holds", () => {
    expect(holdsOf(withFeed({ onHand: of("lb", "4.99") }))).toContain("hold stock-short");
    expect(holdsOf(withFeed({ onHand: of("lb", 5n) }))).toEqual([]);
    expect(holdsOf(withFeed({ onHand: of("gal", 5n) }))).toContain("hold stock-by-another-measure");
  });

  test("an expired license is never named on a ticket with a pesticide; a technician wants a supervisor", () => {
    const by = (license: TicketQuestion["applicator"]["license"], treatments: readonly TicketTreatment[]) => rulesOf({ applicator: { name: "Rowan Ash", license }, treatments });
    expect(by({ standing: "expired" }, [BARRIER])).toContain("hold license-missing");
    expect(by({ standing: "none" }, [FEED])).toContain("take-care license-missing");
    expect(by({ standing: "stands", kind: "registered-technician", number: "T-1" }, [BARRIER])).toContain("take-care technician-under-supervision");
  });

  test("Illinois holds phosphate without a test that shows a need; Indiana says that its law is not on file", () => {
    const starter = withFeed({ label: { ...FEED.label, analysis: { grade: { ...BARRIER_GRADE, phosphatePercent: { numerator: 24n, denominator: 1n } }, release: { kind: "not-stated" } } } });
    expect(holdsOf(starter)).toContain("hold phosphorus-without-need");
    expect(rulesOf({ ...starter, state: "IN" })).toContain("take-care nutrient-law-not-on-file");
    expect(holdsOf({ ...starter, state: "IN" })).toEqual([]);
  });

  test("a setting that was found at another rate says so", () => {
    expect(rulesOf(withFeed({ rate: rateOf("product-mass-per-area", "2", "lb per 1,000 sq ft") }))).toContain("note setting-of-another-rate");
    expect(rulesOf()).not.toContain("note setting-of-another-rate");
    expect(rulesOf(withFeed({ gear: { ...SPREADER, setting: "not-calibrated" } }))).not.toContain("note setting-of-another-rate");
  });
});

test("a visit without a treatment, and a treatment for no lawn of the property, are refused by name", () => {
  expect(makeMixTicket({ ...QUESTION, treatments: [] })).toMatchObject({ ok: false, refusal: { field: "treatments" } });
  expect(makeMixTicket({ ...QUESTION, treatments: [{ ...FEED, zoneIds: ["elsewhere"] }] })).toMatchObject({ ok: false, refusal: { field: "zoneIds" } });
});

test("what the visit takes of each product is what its mixes say", () => {
  expect(neededOf(ticketOf().mixes)).toEqual([
    { line: 1, amount: of("lb", 5n) },
    { line: 2, amount: of("fl oz", 3n) },
  ]);
});

const BARRIER_GRADE = BARRIER.label.analysis === "none" || BARRIER.label.analysis === "unknown" ? FAIL() : BARRIER.label.analysis.grade;
function FAIL(): never {
  throw new Error("The label of a test has an analysis.");
}
