import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Finding } from "#domain/foundation/finding";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { gradeOf } from "#domain/turf/nutrients";
import { makeMixTicket, neededOf } from "#domain/mixing/mix-ticket";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, CUP, FEED, holdsOf, IRON, LAWN, QUESTION, rulesOf, SCALE, SPRAYER, SPREADER, sprayOf, ticketOf, UNCALIBRATED, withFeed, withIron } from "../../support/ticket";

const BACK = { ...LAWN, zoneId: "back", letter: "B", name: "Back", area: of("sq ft", 3000n) };
const starter: TicketTreatment = { ...FEED, line: 6, productId: "starter", label: { ...FEED.label, productName: "Seedbed 18", analysis: { grade: gradeOf("18", "24", "6"), release: { kind: "not-stated" } } } };
const findingsOf = (rule: string, question: Partial<TicketQuestion>) => ticketOf(question).findings.filter((finding) => finding.rule === rule);

describe("what goes together", () => {
  test("products of one machine on the same lawns share a tank, in mixing order; each spread product is a pass of its own", () => {
    const powder: TicketTreatment = { ...IRON, line: 4, label: { ...IRON.label, productName: "Zinc Powder", formulation: "wettable powder" } };
    const ticket = ticketOf({ treatments: [IRON, powder, FEED, BARRIER] });
    expect(ticket.mixes.map(({ kind }) => kind)).toEqual(["granular", "granular", "spray"]);
    expect(sprayOf({ treatments: [IRON, powder] })?.products.map(({ productName }) => productName)).toEqual(["Zinc Powder", "Rustwater Iron"]);
  });

  test("the order in which lawns are named makes no other tank; another output, machine or lawn does", () => {
    const lawns = [LAWN, BACK];
    const tanks = (other: Partial<TicketTreatment>) => {
      const zoneIds = ["front", "back"];
      return ticketOf({ lawns, treatments: [{ ...IRON, zoneIds }, { ...IRON, line: 4, productId: "other", zoneIds, ...other }] }).mixes.length;
    };
    expect(tanks({ zoneIds: ["back", "front"] })).toBe(1);
    expect(tanks({ zoneIds: ["back"] })).toBe(2);
    expect(tanks({ gear: { ...SPRAYER, equipmentId: "another" } })).toBe(2);
    expect(tanks({ gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft") } } })).toBe(2);
  });

  test("what shares a tank goes on the smallest area that any of its products leaves", () => {
    // 415 ILCS 65/5a: the iron is a fertilizer and keeps 15 ft clear; the weed control keeps the crew's own 4 ft.
    const lawns = [{ ...LAWN, waterEdges: [{ name: "the pond", length: of("ft", 50n), width: of("ft", 4n) }] }];
    const weedControl: TicketTreatment = { ...IRON, line: 4, productId: "weed", label: { ...IRON.label, productName: "Dandeloss", analysis: "none" } };
    for (const treatments of [[IRON, weedControl], [weedControl, IRON]]) {
      expect(sprayOf({ lawns, treatments })?.lawns[0]?.treatedArea).toEqual(of("sq ft", 1250n));
    }
    expect(sprayOf({ lawns, treatments: [weedControl] })?.lawns[0]?.treatedArea).toEqual(of("sq ft", 1800n));
  });

  test("a spray that has no ground left is no mix and is held", () => {
    const lawns = [{ ...LAWN, waterEdges: [{ name: "the pond", length: of("ft", 500n), width: of("ft", 4n) }] }];
    expect(ticketOf({ lawns, treatments: [IRON] }).mixes).toEqual([]);
    expect(holdsOf({ lawns, treatments: [IRON] })).toContain("hold nothing-left-to-treat");
  });

  test("a spreader takes nothing by volume", () => {
    expect(holdsOf(withIron({ gear: SPREADER }))).toContain("hold rate-for-a-spreader");
  });
});

describe("sums over the visit", () => {
  test("what the visit takes of each product is what its mixes say", () => {
    expect(neededOf(ticketOf().mixes)).toEqual([
      { line: 1, amount: of("lb", 5n) },
      { line: 2, amount: of("fl oz", 3n) },
    ]);
  });

  test("stock is judged by all that the visit takes of a product, said once", () => {
    const lawns = [LAWN, BACK];
    const onBack = { ...FEED, line: 4, zoneIds: ["back"] };
    const holding = (pounds: bigint) => ({ lawns, treatments: [FEED, onBack].map((treatment) => ({ ...treatment, onHand: of("lb", pounds) })) });
    expect(holdsOf(holding(13n))).toEqual([]);
    expect(findingsOf("stock-short", holding(12n))).toMatchObject([{ figure: "The visit needs 12½ lb; the shop, the trucks and what is mixed for it come to 12 lb." }]);
  });

  // Common practice: 2.5 lb per 1,000 sq ft of a 32 % feed is 0.8 lb of nitrogen per 1,000 sq ft.
  test("the nutrients of a lawn are those of all that goes down on it", () => {
    const { delivered } = ticketOf({ lawns: [LAWN, BACK] });
    const [front, back] = delivered.map(({ nutrients }) => toNumber(measureInUnit(nutrients.nitrogen, "lb")));
    // 5 lb of 32 %, and 3 fl oz at 11 lb per gal of 6 %.
    expect(front).toBeCloseTo(1.6 + ((3 * 11) / 128) * 0.06, 12);
    expect(back).toBe(0);
  });

  test("what can't be counted among the nutrients holds, and an analysis that nobody read is said once", () => {
    expect(holdsOf(withIron({ label: { ...IRON.label, density: "unknown" } }))).toContain("hold nutrients-not-countable");
    const unread = withFeed({ label: { ...FEED.label, analysis: "unknown" } });
    expect(holdsOf(unread)).toEqual(["hold analysis-not-read"]);
    expect(holdsOf({ ...unread, state: "IN" })).toEqual(["hold nutrients-not-countable"]);
  });

  test("Illinois holds phosphate without a test that shows a need, on the lawns that get it; Indiana says that its law is not on file", () => {
    const lawns = [LAWN, BACK];
    const treatments = [starter, { ...FEED, zoneIds: ["front", "back"] }];
    expect(findingsOf("phosphorus-without-need", { lawns, treatments })).toMatchObject([{ about: ["Seedbed 18", "Front"] }]);
    expect(rulesOf({ lawns, treatments, state: "IN" })).toContain("take-care nutrient-law-not-on-file");
    expect(holdsOf({ lawns, treatments, state: "IN" })).toEqual([]);
  });
});

describe("findings", () => {
  test("the gravest stand first, each is said once, and the calibration's own is among them", () => {
    const question = { lawns: [{ ...LAWN, grassesAssumed: true }], treatments: [{ ...FEED, labelConfirmedBy: null }, { ...IRON, calibrationFinding: UNCALIBRATED }, BARRIER] };
    const { findings } = ticketOf(question);
    const places = findings.map(({ level }) => ["hold", "take-care", "note"].indexOf(level));
    expect(places).toEqual(places.toSorted((left, right) => left - right));
    const said = findings.map(({ rule, what, figure }: Finding) => JSON.stringify([rule, what, figure]));
    expect(new Set(said).size).toBe(said.length);
    expect(rulesOf(question)).toContain("take-care calibration-none");
  });

  const unmeasured = { waterEdges: [{ name: "the pond", length: "unknown", width: "unknown" } as const] };
  /** Findings that ask for more of something, and may go when there is more; where marks fall is chance, more or less of it. */
  const ofTooLittle = new Set(["note rounded-off-plan", "take-care rounded-off-plan", "take-care label-rate-below-lowest", "take-care rounded-below-lowest", "take-care below-first-mark", "note setting-of-another-rate", "take-care setting-of-another-rate"]);

  test("a higher rate of what is spread loses no finding but those that asked for more", () => {
    const lawns = [{ ...LAWN, ...unmeasured }];
    fc.assert(
      fc.property(fc.bigInt(5n, 60n), fc.bigInt(0n, 40n), (rate, more) => {
        const at = (tenths: bigint) =>
          rulesOf({ lawns, forecastHighF: 85, ...withFeed({ rate: rateOf("product-mass-per-area", { numerator: tenths, denominator: 10n }, "lb per 1,000 sq ft"), labelConfirmedBy: null, onHand: of("lb", 8n) }) });
        const higher = at(rate + more);
        for (const rule of at(rate)) if (!ofTooLittle.has(rule)) expect(higher).toContain(rule);
      }),
    );
  });

  test("a higher rate of what is sprayed loses none either, not even where the products no longer fit into the tank", () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 300n), fc.bigInt(0n, 300n), (rate, more) => {
        const at = (ounces: bigint) =>
          rulesOf({ forecastHighF: 85, ...withIron({ rate: rateOf("product-volume-per-area", ounces, "fl oz per 1,000 sq ft"), onHand: of("fl oz", 20n) }) });
        const higher = at(rate + more);
        for (const rule of at(rate)) if (!ofTooLittle.has(rule)) expect(higher).toContain(rule);
      }),
    );
  });

  test("the same job in metric and US units is the same ticket", () => {
    // 2.5 lb per 1,000 sq ft is 2.5 x 453.59237 g on 92.90304 m2.
    const metric = withFeed({ rate: rateOf("product-mass-per-area", { numerator: 25n * 45_359_237n, denominator: 92_903_040n }, "g per m2") });
    expect(ticketOf(metric)).toEqual(ticketOf({ treatments: [FEED] }));
  });
});

test("whatever sizes, rates, tools and tanks are entered, a ticket is worked out with its findings and nothing throws", () => {
  const size = fc.oneof(fc.constant(0n), fc.bigInt(1n, 200n), fc.bigInt(1n, 10n ** 9n));
  const capacity = fc.oneof(fc.constant(0n), fc.bigInt(1n, 50n), fc.bigInt(1n, 400n));
  const tool = fc.constantFrom<TicketTreatment["tool"]>("none", CUP, SCALE);
  fc.assert(
    fc.property(fc.array(size, { minLength: 1, maxLength: 3 }), capacity, fc.bigInt(0n, 400n), fc.bigInt(0n, 40n), tool, (sizes, hold, rate, output, measuredBy) => {
      const lawns = sizes.map((amount, index) => ({ ...LAWN, zoneId: String(index), name: String(index), area: of("sq ft", amount) }));
      const zoneIds = lawns.map(({ zoneId }) => zoneId);
      const tenth = (value: bigint) => ({ numerator: value, denominator: 10n });
      const sprayer = { ...SPRAYER, capacity: of("gal", hold), carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", tenth(output), "gal per 1,000 sq ft") } };
      const treatments: readonly TicketTreatment[] = [
        { ...FEED, zoneIds, tool: measuredBy, gear: { ...SPREADER, capacity: of("lb", hold) }, rate: rateOf("product-mass-per-area", tenth(rate), "lb per 1,000 sq ft") },
        { ...IRON, zoneIds, tool: measuredBy, gear: sprayer, rate: rateOf("product-volume-per-area", tenth(rate), "fl oz per 1,000 sq ft") },
        { ...IRON, line: 9, productId: "weighed", zoneIds, tool: measuredBy, gear: sprayer, rate: rateOf("product-mass-per-area", tenth(rate), "lb per 1,000 sq ft") },
      ];
      const { mixes } = ticketOf({ lawns, treatments });
      for (const mix of mixes) {
        if (mix.kind === "granular") continue;
        for (const { finished, products, water } of mix.loads) {
          const liquid = products.reduce((total, { amount }) => total + (amount.dimension === "volume" ? amount.amount : 0n), 0n);
          expect(water.amount).toBe(liquid < finished.amount ? finished.amount - liquid : 0n);
          expect(finished.amount <= sprayer.capacity.amount).toBe(true);
        }
      }
    }),
  );
});

describe("what is refused", () => {
  test.each([Number.NaN, 500])("%s as the heat from which on the company takes care", (heatCautionFromF) => {
    expect(makeMixTicket({ ...QUESTION, settings: { ...QUESTION.settings, heatCautionFromF } })).toMatchObject({ ok: false, refusal: { field: "heatCautionFromF" } });
    expect(makeMixTicket({ ...QUESTION, settings: { ...QUESTION.settings, heatCautionWarmFromF: heatCautionFromF } })).toMatchObject({ ok: false, refusal: { field: "heatCautionWarmFromF" } });
  });

  test("a visit without a treatment, a treatment for no lawn, and one for a lawn that is not part of the visit, by name", () => {
    expect(makeMixTicket({ ...QUESTION, treatments: [] })).toMatchObject({ ok: false, refusal: { field: "treatments" } });
    for (const zoneIds of [[], ["elsewhere"], ["front", "elsewhere"]]) {
      expect(makeMixTicket({ ...QUESTION, treatments: [{ ...FEED, zoneIds }] })).toMatchObject({ ok: false, refusal: { field: "zoneIds" } });
    }
  });

  test("two treatments of one line, and one lawn twice, are broken invariants", () => {
    expect(() => makeMixTicket({ ...QUESTION, treatments: [FEED, { ...IRON, line: FEED.line }] })).toThrow("a line of its own");
    expect(() => makeMixTicket({ ...QUESTION, lawns: [LAWN, LAWN] })).toThrow("there once");
  });
});
