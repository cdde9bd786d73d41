import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type LabelUse, type SprayRates } from "#domain/label/label-facts";
import { concentrationInSpray, percentByVolume, rateOf } from "#domain/quantities/rate";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { plannedStrength, rateOnGround, statedOf, strengthOf, ticketRate } from "#domain/mixing/stated-rate";
import { mixKeyOf } from "#domain/mixing/tank-fill";
import { FEED, holdsOf, IRON, LAWN, QUESTION, rulesOf, SPRAYER, SPREADER, sprayOf, ticketOf } from "../../support/ticket";
import { allWorkings } from "#domain/mixing/ticket-working";
import { fillStopOf } from "#domain/mixing/tank-fill";
import { faultsOf } from "../../support/read-working";

const perGallon = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
const perThousand = (value: string) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
const RATES: SprayRates = { basis: "product-volume-per-spray-volume", low: perGallon("1"), high: perGallon("2") };
const USE: LabelUse = { ...IRON.use, rates: RATES };

/** Iron as it is planned by the gallon, 1.5 gal of spray on 1,000 sq ft. */
function byGallon(strength: string, beside?: LabelUse["besideRates"], spot?: number) {
  const stated = ticketRate(perGallon(strength), { ...USE, ...(beside === undefined ? {} : { besideRates: beside }) }, SPRAYER);
  if (stated === undefined) throw new Error("a sprayer puts out spray");
  return { ...IRON, ...stated, rateText: `${strength} fl oz/gal`, ...(spot === undefined ? {} : { spot: { shareBasisPoints: spot } }) };
}

describe("a rate in the finished spray", () => {
  test("is on the ground what the sprayer puts out of it, and the strength comes back exactly", () => {
    expect(rateOnGround(perGallon("2"), SPRAYER.carrier.rate)).toEqual(perThousand("3"));
    expect(rateOnGround(rateOf("product-mass-per-spray-volume", "1", "oz wt per gal"), SPRAYER.carrier.rate)).toEqual(rateOf("product-mass-per-area", "1.5", "oz wt per 1,000 sq ft"));
    fc.assert(
      fc.property(fc.bigInt(1n, 999n), fc.bigInt(1n, 999n), (hundredths, tenths) => {
        const strength = rateOf("product-volume-per-spray-volume", { numerator: hundredths, denominator: 100n }, "fl oz per gal");
        const carrier = rateOf("carrier-volume-per-area", { numerator: tenths, denominator: 10n }, "gal per 1,000 sq ft");
        const ground = rateOnGround(strength, carrier);
        expect(ground.basis === "product-volume-per-area" && concentrationInSpray(ground, carrier)).toEqual(strength);
      }),
    );
  });

  test("and one over area are kept as they are stated; a spreader puts out no spray", () => {
    expect(ticketRate(IRON.rate, IRON.use, SPRAYER)).toEqual({ rate: IRON.rate, use: IRON.use });
    expect(ticketRate(FEED.rate, FEED.use, SPREADER)).not.toHaveProperty("asStated");
    expect(ticketRate(perGallon("1.5"), USE, SPREADER)).toBeUndefined();
    const treatment = byGallon("1.5");
    expect(statedOf(treatment)).toEqual({ rate: perGallon("1.5"), rates: RATES });
    expect([plannedStrength(treatment), plannedStrength(IRON)]).toEqual([perGallon("1.5"), undefined]);
    expect(treatment.use.rates).toEqual({ basis: "product-volume-per-area", low: perThousand("1.5"), high: perThousand("3") });
  });

  test("is rounded no higher than the most over area", () => {
    expect(byGallon("1.5", { mostOnArea: perThousand("2.5") }).use.rates.high).toEqual(perThousand("2.5"));
    expect(byGallon("1.5", { mostOnArea: perThousand("9") }).use.rates.high).toEqual(perThousand("3"));
  });

  test("is what an amount makes a volume", () => {
    expect(strengthOf(of("fl oz", 3n), of("gal", 2n))).toEqual(perGallon("1.5"));
    expect(strengthOf(of("oz wt", 3n), of("gal", 2n))).toEqual(rateOf("product-mass-per-spray-volume", "1.5", "oz wt per gal"));
  });
});

describe("a mix ticket by the gallon", () => {
  // By hand: a tenth of 2,000 sq ft at 1.5 gal per 1,000 sq ft is 0.3 gal; at 1.5 fl oz per gal 0.45 fl oz, under the cup's mark of half an ounce.
  test("5 % of a lawn: the spray of its spots, and the product for that spray", () => {
    const lawns = [{ ...LAWN, area: of("sq ft", 40_000n) }];
    const question = { ...QUESTION, lawns, treatments: [byGallon("1.5", undefined, 500)] };
    const mix = sprayOf(question);
    // 2,000 sq ft of spots take 3 gal, and 3 gal take 4.5 fl oz.
    expect(mix?.lawns[0]).toMatchObject({ treatedArea: of("sq ft", 2000n), spot: { shareBasisPoints: 500, treatable: of("sq ft", 40_000n) }, finished: of("gal", 3n) });
    expect(mix?.loads).toMatchObject([{ finished: of("gal", 3n), products: [{ amount: of("fl oz", "4.5"), marks: 9n }] }]);
    expect(mix?.products[0]?.concentration).toEqual(perGallon("1.5"));
    const workings = allWorkings({ question, ticket: ticketOf(question), aftercare: [] });
    expect(workings.flatMap(faultsOf)).toEqual([]);
    const steps = (title: string) => workings.find((working) => working.title === title)?.steps;
    expect(steps("Treated area of A Front for Rustwater Iron")).toEqual(["40,000 sq ft × 5% = 2,000 sq ft"]);
    expect(steps("Rustwater Iron for the load")).toEqual(["3 gal ÷ 1 gal × 1.5 fl oz = 4.5 fl oz", "4.5 fl oz ÷ 0.5 fl oz = 9 marks, to the nearest 9", "9 × 0.5 fl oz = 4.5 fl oz"].map((step) => step.replaceAll("1.5 fl", "1½ fl").replaceAll("4.5 fl", "4½ fl").replaceAll("0.5 fl", "½ fl")));
  });

  test("the product follows the spray that is filled, never stronger than the label's highest", () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 60_000n), fc.bigInt(10n, 20n), fc.integer({ min: 1, max: 10_000 }), (size, tenths, share) => {
        const strength = `${String(tenths / 10n)}.${String(tenths % 10n)}`;
        const mix = sprayOf({ lawns: [{ ...LAWN, area: of("sq ft", size) }], treatments: [byGallon(strength, undefined, share)] });
        for (const { finished, products } of mix?.loads ?? []) {
          const amount = products[0]?.amount.amount ?? 0n;
          // 2 fl oz in a gallon is a part in 64, and half a mark is a quarter ounce.
          expect(amount * 64n).toBeLessThanOrEqual(finished.amount);
          const wanted = (finished.amount * tenths) / 1280n;
          const away = amount > wanted ? amount - wanted : wanted - amount;
          expect(away).toBeLessThanOrEqual(of("fl oz", "0.5").amount);
        }
      }),
    );
  });

  test("shares a fill with what has its strength, whatever ground either covers", () => {
    const stop = (treatment: typeof IRON) => {
      const mix = sprayOf({ treatments: [treatment] });
      if (mix === undefined) throw new Error("it is sprayed");
      return fillStopOf("visit", mix, () => treatment);
    };
    expect(mixKeyOf(stop(byGallon("1", undefined, 500)))).toBe(mixKeyOf(stop(IRON)));
    expect(mixKeyOf(stop(byGallon("1.1")))).not.toBe(mixKeyOf(stop(IRON)));
  });

  test("is held against the label as it is stated", () => {
    const holds = (...asked: Parameters<typeof byGallon>) => holdsOf({ treatments: [byGallon(...asked)] });
    expect(holds("1.5")).toEqual([]);
    expect(holds("2.1")).toEqual(["hold label-rate-above-highest"]);
    expect(rulesOf({ treatments: [byGallon("0.9")] })).toContain("take-care label-rate-below-lowest");
    expect(holds("2", { mostOnArea: perThousand("2.9") })).toEqual(["hold most-on-area-passed"]);
    const mixed = { ...byGallon("1.5"), asStated: { rate: IRON.rate, rates: RATES } };
    expect(holdsOf({ treatments: [mixed] })).toEqual(["hold rate-on-another-basis"]);
    const ticket = ticketOf({ treatments: [byGallon("2.1")] });
    expect(ticket.findings.find(({ rule }) => rule === "label-rate-above-highest")?.figure).toBe("The label's range is 1 fl oz per gal to 2 fl oz per gal; planned is 2.1 fl oz per gal.");
  });

  test("rounded up to a mark of the gauge, it never puts more on the ground than the most over area that the label states", () => {
    // 150 sq ft take 0.225 gal of the 0.3 gal that are mixed; 2 fl oz a gallon are 0.6 fl oz in all and 0.45 fl oz there, which is 3 fl oz per 1,000 sq ft.
    const lawns = [{ ...LAWN, area: of("sq ft", 150n) }];
    const tool = { name: "dropper", mark: exactly("fl oz", "0.01") };
    const amounts = (strength: string, most?: string, measure = tool) => {
      const mix = sprayOf({ lawns, treatments: [{ ...byGallon(strength, most === undefined ? undefined : { mostOnArea: perThousand(most) }), tool: measure }] });
      return [mix?.products[0]?.total, mix?.lawns[0]?.products[0]?.amount, mix?.rest?.products[0]?.amount];
    };
    const [all, drawn, left] = [of("fl oz", "0.6"), of("fl oz", "0.45"), of("fl oz", "0.15")];
    expect([amounts("2"), amounts("2", "3")]).toEqual([[all, drawn, left], [all, drawn, left]]);
    expect(rulesOf({ lawns, treatments: [{ ...byGallon("2", { mostOnArea: perThousand("3") }), tool }] })).not.toContain("take-care rounded-off-plan");
    // 1.95 fl oz a gallon are 0.585 fl oz, nearest to 0.6; that would be 3 on 1,000 sq ft, and 2.95 are let.
    const twentieth = { name: "dropper", mark: exactly("fl oz", "0.05") };
    expect([amounts("1.95", "3", twentieth)[0], amounts("1.95", "2.95", twentieth)[0]]).toEqual([all, of("fl oz", "0.55")]);
  });

  test("less than a mark of the gauge is mixed at its strength, and percent is read by volume", () => {
    const rules = ticketOf({ lawns: [{ ...LAWN, area: of("sq ft", 100n) }], treatments: [byGallon("1.5", undefined, 100)] }).findings;
    expect(rules.find(({ rule }) => rule === "spray-more-than-taken")?.figure).toContain("It is mixed at its strength, and the rest is left.");
    expect(percentByVolume("1.5625")).toEqual(perGallon("2"));
  });
});
