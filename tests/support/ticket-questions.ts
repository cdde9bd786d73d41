// Many visits as the mix ticket takes them: lawns along water or not, what is spread, poured and weighed into a tank, with
// tools and without, in one load and in many.
import fc from "fast-check";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { decimal } from "#domain/quantities/rational";
import { gradeOf } from "#domain/turf/nutrients";
import { type LabelFacts, type LabelRates } from "#domain/label/label-facts";
import { ticketRate } from "#domain/mixing/stated-rate";
import { type TicketLawn, type TicketQuestion, type TicketTreatment, type TicketUse } from "#domain/mixing/ticket-question";
import { BARRIER, CUP, FEED, IRON, IRON_LABEL, LAWN, QUESTION, SCALE, SPRAYER, SPREADER } from "./ticket";

const tenth = (value: bigint) => ({ numerator: value, denominator: 10n });
const hundredth = (value: bigint) => ({ numerator: value, denominator: 100n });
const pounds = (value: bigint) => rateOf("product-mass-per-area", tenth(value), "lb per 1,000 sq ft");
const fluidOunces = (value: bigint) => rateOf("product-volume-per-area", tenth(value), "fl oz per 1,000 sq ft");
const ounces = (value: bigint) => rateOf("product-mass-per-area", hundredth(value), "oz wt per 1,000 sq ft");

function withRates(facts: LabelFacts, rates: TicketUse["rates"], productName: string): { readonly label: LabelFacts; readonly use: TicketUse } {
  const [first] = facts.uses;
  if (first === undefined) throw new Error("The label of a test has a use.");
  const use = { ...first, rates };
  return { label: { ...facts, productName, uses: [use] }, use };
}

/** Weighed into the tank: 0.1 to 0.5 oz per 1,000 sq ft, a quarter of it an active ingredient, no nutrients. */
const POWDER: TicketTreatment = {
  ...IRON,
  ...withRates(
    { ...IRON_LABEL, formulation: "wettable powder", analysis: "none", density: "unknown", epaRegistrationNumber: { number: "DEMO-0000-7" }, activeIngredients: [{ name: "velodiamine", concentration: percentByWeight("25"), modeOfAction: "none" }] },
    { basis: "product-mass-per-area", low: ounces(10n), high: ounces(50n) },
    "Pale Powder",
  ),
  line: 4,
  productId: "powder",
  rate: ounces(30n),
  rateText: "0.3 oz wt per 1,000 sq ft",
  tool: { name: "letter scale", mark: exactly("oz wt", "0.1") },
};

/** Poured: 4 lb of an active ingredient in a gallon, half of the nitrogen slow. */
const CONCENTRATE: TicketTreatment = {
  ...IRON,
  ...withRates(
    {
      ...IRON_LABEL,
      formulation: "emulsifiable concentrate",
      analysis: { grade: gradeOf("12", "0", "3"), release: { kind: "slow-percent-of-nitrogen", percent: decimal("50") } },
      epaRegistrationNumber: { number: "DEMO-0000-8" },
      activeIngredients: [{ name: "Velodiamine", concentration: massInVolume("4", "lb per gal"), modeOfAction: "none" }],
    },
    { basis: "product-volume-per-area", low: fluidOunces(5n), high: fluidOunces(30n) },
    "Tallow Concentrate",
  ),
  line: 5,
  productId: "concentrate",
  rate: fluidOunces(10n),
  rateText: "1 fl oz per 1,000 sq ft",
};

/** As it is planned by the gallon of finished spray: 0.5 to 3 of its ounces in each, at most so much on the ground. */
function byStrength(treatment: TicketTreatment, tenths: bigint, most: bigint | null): TicketTreatment {
  const isWeighed = treatment.rate.basis === "product-mass-per-area";
  const strength = (value: bigint) => (isWeighed ? rateOf("product-mass-per-spray-volume", tenth(value), "oz wt per gal") : rateOf("product-volume-per-spray-volume", tenth(value), "fl oz per gal"));
  const rates = { basis: strength(5n).basis, low: strength(5n), high: strength(30n) } as LabelRates;
  const mostOnArea = most === null ? {} : { mostOnArea: isWeighed ? ounces(most * 10n) : fluidOunces(most) };
  const stated = ticketRate(strength(tenths), { ...treatment.use, rates, besideRates: { ...mostOnArea, isToWet: true } }, treatment.gear);
  if (stated === undefined) throw new Error("what is planned by the gallon is sprayed");
  return { ...treatment, ...stated, rateText: `${String(Number(tenths) / 10)} to the gallon` };
}

const lawn: fc.Arbitrary<TicketLawn> = fc
  .record({
    area: fc.oneof(fc.bigInt(0n, 60_000n).map((size) => of("sq ft", size)), fc.bigInt(2_000_000n, 400_000_000_000n).map((amount) => ({ dimension: "area", amount }) as const)),
    edges: fc.array(fc.record({ length: fc.bigInt(1n, 200n), width: fc.option(fc.bigInt(1n, 20n)) }), { maxLength: 2 }),
    areaOrigin: fc.constantFrom("measured", "entered", "imported"),
  })
  .map(({ area, edges, areaOrigin }) => ({
    ...LAWN,
    area,
    areaOrigin,
    waterEdges: edges.map(({ length, width }, index) => ({ name: `the creek ${String(index)}`, length: of("ft", length), width: width === null ? "unknown" : of("ft", width) })),
  }));

const perTool = { mass: fc.constantFrom(SCALE, "none" as const, { name: "fine scale", mark: exactly("oz wt", "0.1") }), volume: fc.constantFrom(CUP, "none" as const, { name: "gallon jug", mark: exactly("gal", "1") }) };

const treatments: fc.Arbitrary<readonly TicketTreatment[]> = fc
  .record({
    feed: fc.record({ rate: fc.bigInt(15n, 35n), tool: perTool.mass, capacity: fc.bigInt(10n, 80n) }),
    barrier: fc.record({ rate: fc.bigInt(20n, 45n), tool: perTool.mass }),
    iron: fc.record({ rate: fc.bigInt(8n, 24n), tool: perTool.volume }),
    powder: fc.record({ rate: fc.bigInt(8n, 60n), tool: perTool.mass }),
    concentrate: fc.record({ rate: fc.bigInt(4n, 32n), tool: perTool.volume }),
    sprayer: fc.record({ capacity: fc.bigInt(2n, 200n), carrier: fc.bigInt(3n, 40n), isCalibrated: fc.boolean() }),
    strengths: fc.record({ powder: fc.bigInt(3n, 40n), concentrate: fc.bigInt(3n, 40n), most: fc.option(fc.bigInt(5n, 60n)) }),
    spots: fc.dictionary(fc.constantFrom("1", "2", "3", "4", "5", "6", "7"), fc.integer({ min: 1, max: 10_000 })),
    taken: fc.subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }),
  })
  .map(({ feed, barrier, iron, powder, concentrate, sprayer, strengths, spots, taken }) => {
    const gear = {
      ...SPRAYER,
      capacity: of("gal", sprayer.capacity),
      carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", tenth(sprayer.carrier), "gal per 1,000 sq ft"), basis: sprayer.isCalibrated ? "calibration" : "nominal" },
    } as const;
    const all: readonly TicketTreatment[] = [
      { ...FEED, rate: pounds(feed.rate), tool: feed.tool, gear: { ...SPREADER, capacity: of("lb", feed.capacity) } },
      { ...BARRIER, rate: pounds(barrier.rate), tool: barrier.tool, gear: { ...SPREADER, setting: "not-calibrated" } },
      { ...IRON, rate: fluidOunces(iron.rate), tool: iron.tool, gear },
      { ...POWDER, rate: ounces(powder.rate), tool: powder.tool, gear },
      { ...CONCENTRATE, rate: fluidOunces(concentrate.rate), tool: concentrate.tool, gear },
      byStrength({ ...POWDER, line: 6, productId: "spot-powder", tool: powder.tool, gear }, strengths.powder, strengths.most),
      byStrength({ ...CONCENTRATE, line: 7, productId: "spot-concentrate", tool: concentrate.tool, gear }, strengths.concentrate, strengths.most),
    ];
    return all.filter(({ line }) => taken.includes(line)).map((one) => {
      const shareBasisPoints = spots[String(one.line)];
      return shareBasisPoints === undefined ? one : { ...one, spot: { shareBasisPoints } };
    });
  });

/**
 * Spots of less than a fifth of a square foot, as 0.03 % of a lawn of one: nobody sprays them, and the whole nanograms in
 * which lawns share a load would show in the figures of their steps.
 */
function hasSpotsOfNothing({ lawns, treatments: planned }: TicketQuestion): boolean {
  const least = of("sq ft", 1n).amount / 5n;
  const isSpotOfNothing = (area: bigint, share: number) => area > 0n && area * BigInt(share) < least * 10_000n;
  return planned.some(({ spot }) => spot !== undefined && lawns.some(({ area }) => isSpotOfNothing(area.amount, spot.shareBasisPoints)));
}

/** A visit to one lawn or several with one product or several. */
export const someQuestion: fc.Arbitrary<TicketQuestion> = fc
  .record({
    lawns: fc.array(lawn, { minLength: 1, maxLength: 3 }),
    treatments,
    granularPasses: fc.constantFrom("one-with-overlap", "two-at-half-rate-crosswise"),
    tankLoads: fc.constantFrom("same-size-every-time", "full-tanks-then-a-short-one"),
  })
  .map(({ lawns, treatments: planned, granularPasses, tankLoads }) => {
    const named = lawns.map((one, index) => ({ ...one, zoneId: `zone-${String(index)}`, letter: "ABC".charAt(index), name: `Lawn ${String(index)}` }));
    return { ...QUESTION, lawns: named, treatments: planned.map((one) => ({ ...one, zoneIds: named.map(({ zoneId }) => zoneId) })), settings: { ...QUESTION.settings, granularPasses, tankLoads } };
  })
  .filter((question) => !hasSpotsOfNothing(question));
