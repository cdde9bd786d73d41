import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of, sum } from "#domain/quantities/quantity";
import { percentByVolumeOf, rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { type Formulation } from "#domain/label/label-facts";
import { fittingTool, inMixingOrder, mixSpray, rateOver, sprayForGround, type SprayTreatment, waterBeside } from "#domain/mixing/spray-mix";
import { isSprayed, type TicketTreatment } from "#domain/mixing/ticket-question";
import { CUP, IRON, LAWN, QUESTION, rulesOf, SCALE, SPRAYER, sprayOf, ticketOf, withIron } from "../../support/ticket";

const ounces = (value: string | { numerator: bigint; denominator: bigint }) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
const onLawns = (sizes: readonly bigint[]) => sizes.map((size, index) => ({ ...LAWN, zoneId: String(index), area: of("sq ft", size) }));
const ids = (count: number) => Array.from({ length: count }, (_unused, index) => String(index));

function sprayed(treatment: TicketTreatment): SprayTreatment {
  if (!isSprayed(treatment)) throw new Error("The treatment of a test is sprayed.");
  return treatment;
}

/** A powder that dissolves in water as granules do, weighed: 1 to 2 oz per 1,000 sq ft. */
const GRANULES: TicketTreatment = {
  ...IRON,
  line: 5,
  productId: "granules",
  label: { ...IRON.label, productName: "Dampfield WDG", formulation: "water-dispersible granule", analysis: "none", epaRegistrationNumber: { number: "DEMO-0000-5" } },
  use: {
    ...IRON.use,
    rates: {
      basis: "product-mass-per-area",
      low: rateOf("product-mass-per-area", "1", "oz wt per 1,000 sq ft"),
      high: rateOf("product-mass-per-area", "2", "oz wt per 1,000 sq ft"),
    },
  },
  rate: rateOf("product-mass-per-area", "1.5", "oz wt per 1,000 sq ft"),
  tool: { name: "tenth-ounce scale", mark: exactly("oz wt", "0.1") },
  onHand: of("lb", 50n),
};

describe("amounts", () => {
  // Common practice: 1.5 fl oz per 1,000 sq ft on 2,000 sq ft is 3 fl oz.
  test("1.5 fl oz per 1,000 sq ft on 2,000 sq ft is 3 fl oz, six marks of a half-ounce cup, in 3 gal", () => {
    const mix = sprayOf();
    expect(mix?.products[0]).toMatchObject({ total: of("fl oz", 3n), toolName: "half-ounce cup" });
    expect(mix?.finished).toEqual(of("gal", 3n));
    expect(mix?.loads).toMatchObject([{ products: [{ marks: 6n }], water: { amount: of("gal", 3n).amount - of("fl oz", 3n).amount } }]);
  });

  test("the concentration is the rate over what the sprayer puts out: 1.5 fl oz in 1.5 gal is 1 in 128", () => {
    const concentration = sprayOf()?.products[0]?.concentration;
    expect(concentration?.basis === "product-volume-per-spray-volume" && toNumber(percentByVolumeOf(concentration))).toBe(100 / 128);
  });

  test("more than a tank is loads of one size, or full tanks and a short one, and both add up", () => {
    const lawns = [{ ...LAWN, area: of("sq ft", 150_000n) }];
    const finished = (tankLoads: (typeof QUESTION)["settings"]["tankLoads"]) =>
      sprayOf({ lawns, settings: { ...QUESTION.settings, tankLoads } })?.loads.map((load) => load.finished);
    expect(finished("same-size-every-time")).toEqual([of("gal", 75n), of("gal", 75n), of("gal", 75n)]);
    expect(finished("full-tanks-then-a-short-one")).toEqual([of("gal", 100n), of("gal", 100n), of("gal", 25n)]);
  });

  test("water-dispersible granules are weighed, take up no volume here, and are shared out by weight", () => {
    const mix = sprayOf({ lawns: onLawns([2000n, 1000n]), treatments: [{ ...GRANULES, zoneIds: ids(2) }] });
    expect(mix?.products[0]).toMatchObject({ total: of("oz wt", "4.5"), toolName: "tenth-ounce scale", concentration: { basis: "product-mass-per-spray-volume" } });
    expect(mix?.loads).toMatchObject([{ water: of("gal", "4.5"), products: [{ marks: 45n }] }]);
    expect(mix?.lawns.map(({ products }) => products.map(({ amount }) => amount))).toEqual([[of("oz wt", 3n)], [of("oz wt", "1.5")]]);
  });

  test("a tank whose size is stored a hair below its own mark is filled to it", () => {
    const capacity = of("gal", "4.27");
    const load = sprayOf({
      lawns: [{ ...LAWN, area: of("sq ft", 2847n) }],
      settings: { ...QUESTION.settings, tankMark: exactly("gal", "0.01") },
      ...withIron({ gear: { ...SPRAYER, capacity } }),
    })?.loads;
    expect(load).toMatchObject([{ finished: capacity }]);
  });

  test("a lawn of which nothing is left gets nothing", () => {
    const lawns = [LAWN, { ...LAWN, zoneId: "strip", area: of("sq ft", 0n) }];
    expect(sprayOf({ lawns, ...withIron({ zoneIds: ["front", "strip"] }) })?.lawns[1]).toMatchObject({ finished: { amount: 0n }, products: [{ amount: { amount: 0n } }] });
  });
});

describe("closing sums and maxima", () => {
  const areas = fc.array(fc.bigInt(0n, 60_000n), { minLength: 1, maxLength: 4 }).filter((sizes) => sizes.some((size) => size > 0n));
  const loads = fc.constantFrom("same-size-every-time" as const, "full-tanks-then-a-short-one" as const);
  const gallons = fc.constantFrom("1", "1.37", "1.5", "2");
  const tools = fc.constantFrom(CUP, { name: "ounce cup", mark: exactly("fl oz", "1") }, "none" as const);

  test("lawns and rest and loads add up, of spray the lawns to what their ground takes and the loads to marks, what goes down passes the label's highest rate nowhere, and no load the concentration that it makes", () => {
    fc.assert(
      fc.property(areas, fc.bigInt(10n, 30n), loads, gallons, tools, (sizes, rate, tankLoads, output, tool) => {
        const carrier = { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", output, "gal per 1,000 sq ft") };
        const planned = ounces({ numerator: rate, denominator: 15n });
        const mix = sprayOf({
          lawns: onLawns(sizes),
          treatments: [{ ...IRON, zoneIds: ids(sizes.length), rate: planned, tool, gear: { ...SPRAYER, carrier } }],
          settings: { ...QUESTION.settings, tankLoads },
        });
        if (mix === undefined) throw new Error("There is a spray.");
        const [product] = mix.products;
        expect(sum("volume", mix.loads.map(({ finished }) => finished))).toEqual(mix.finished);
        expect(sum("volume", mix.lawns.map(({ finished }) => finished))).toEqual(sprayForGround(carrier, mix.lawns));
        const totalOf = (parts: readonly { readonly products: readonly { readonly amount: { readonly amount: bigint } }[] }[]) => parts.map(({ products: [part] }) => part?.amount.amount ?? -1n).reduce((total, amount) => total + amount, 0n);
        const rest = mix.rest === undefined ? [] : [mix.rest];
        expect([totalOf(mix.loads), totalOf([...mix.lawns, ...rest])]).toEqual([product?.total.amount, product?.total.amount]);
        const left = rest.reduce((total, { finished }) => total + finished.amount, 0n);
        expect(left === 0n || left === mix.finished.amount - sprayForGround(carrier, mix.lawns).amount).toBe(true);
        const ground = sizes.reduce((total, size) => total + size, 0n);
        const most = of("fl oz", { numerator: ground * 2n, denominator: 1000n }).amount;
        expect(totalOf(mix.lawns) <= most + BigInt(mix.loads.length)).toBe(true);
        if (rest.length === 0) expect(product && product.total.amount <= most + BigInt(mix.loads.length)).toBe(true);
        const perThousand = of("gal", output).amount;
        for (const { finished, products: [part] } of mix.loads) {
          expect(finished.amount <= SPRAYER.capacity.amount).toBe(true);
          // 2 fl oz in what the sprayer puts out on 1,000 sq ft, and half a canonical unit, which no cup shows.
          expect(part && part.amount.amount * perThousand <= of("fl oz", 2n).amount * finished.amount + perThousand).toBe(true);
        }
      }),
    );
  });

  test("where the finished spray is rounded down at the highest rate, the product goes down with it", () => {
    // 2,026 sq ft at 1.5 gal is 3.039 gal, measured as 3; at 2 fl oz in 1.5 gal those take 4 fl oz and not 4.05.
    const mix = sprayOf({ lawns: [{ ...LAWN, area: of("sq ft", 2026n) }], ...withIron({ rate: ounces("2"), tool: { name: "fine cup", mark: exactly("fl oz", "0.01") } }) });
    expect(mix?.finished).toEqual(of("gal", 3n));
    expect(mix?.products[0]?.total).toEqual(of("fl oz", 4n));
  });
});

describe("what can't be worked out holds and does not throw", () => {
  test("a tank smaller than one mark of the gauge", () => {
    const question = withIron({ gear: { ...SPRAYER, capacity: of("gal", "0.05") } });
    expect(sprayOf(question)).toBeUndefined();
    expect(rulesOf(question)).toContain("hold tank-smaller-than-a-mark");
  });

  test("a sprayer that is entered as putting out nothing", () => {
    const question = withIron({ gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", 0n, "gal per 1,000 sq ft") } } });
    expect(sprayOf(question)).toBeUndefined();
    expect(rulesOf(question)).toContain("hold sprayer-puts-out-nothing");
  });

  test("a visit that would take more fillings than any day does", () => {
    const at = (squareFeet: bigint) => ({ lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], ...withIron({ gear: { ...SPRAYER, capacity: of("gal", 3n) } }) });
    expect(sprayOf(at(400_000n))?.loads).toHaveLength(200);
    expect(rulesOf(at(400_100n))).toContain("hold too-many-loads");
    expect(sprayOf(at(10n ** 15n))).toBeUndefined();
  });

  test("products that leave no room for water: the mix has none, and every other finding stays", () => {
    const thick = withIron({ rate: ounces("192"), onHand: of("fl oz", 3n) });
    expect(sprayOf(thick)?.loads[0]?.water.amount).toBe(0n);
    expect(rulesOf(thick)).toEqual(expect.arrayContaining(["hold products-leave-no-water", "hold stock-short", "hold label-rate-above-highest"]));
    expect(rulesOf(withIron({ rate: ounces("191") }))).not.toContain("hold products-leave-no-water");
  });

  test("no ground is a broken invariant", () => {
    expect(() => mixSpray([sprayed(IRON)], [], QUESTION.settings)).toThrow("a spray has products and ground");
  });
});

describe("the order of the tank", () => {
  const made = (formulation: Formulation, more: Partial<TicketTreatment["label"]> = {}) =>
    sprayed({ ...IRON, label: { ...IRON.label, productName: formulation, formulation, analysis: "none", ...more } });
  const namesOf = (treatments: readonly SprayTreatment[]) => inMixingOrder(treatments).map(({ label }) => label.productName);

  // Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada (2013).
  test("bags, fertilizer, powders, suspensions, solutions, oils, surfactants", () => {
    const feed = sprayed({ ...IRON, label: { ...IRON.label, productName: "feed" } });
    const tank = [made("surfactant"), made("emulsifiable concentrate"), made("soluble liquid"), made("suspension concentrate"), made("wettable powder"), feed, made("water-soluble bag")];
    expect(namesOf(tank)).toEqual(["water-soluble bag", "feed", "wettable powder", "suspension concentrate", "soluble liquid", "emulsifiable concentrate", "surfactant"]);
  });

  test("a weed control with an analysis goes in by how it is made, and two of one kind by name", () => {
    const weedAndFeed = made("soluble liquid", { productName: "A feed that kills weeds", analysis: IRON.label.analysis, epaRegistrationNumber: { number: "DEMO-0000-6" } });
    expect(namesOf([weedAndFeed, made("wettable powder")])).toEqual(["wettable powder", "A feed that kills weeds"]);
    expect(namesOf([made("surfactant", { productName: "B" }), made("surfactant", { productName: "A" })])).toEqual(["A", "B"]);
  });

  test("half of the water first, agitation, each product by itself, the rest of the water", () => {
    const steps = sprayOf({ treatments: [IRON, GRANULES] })?.steps;
    expect(steps?.map((step) => step.split(" ").slice(0, 3).join(" "))).toEqual(["Put in about", "Add Rustwater Iron", "Add Dampfield WDG", "Fill up with"]);
  });
});

test("what ground takes of spray is no mark of a gauge", () => {
  // 367 sq ft at 1.5 gal per 1,000 sq ft; the load goes to the tenth above. 0.5505 gal is no whole number of canonical units.
  const mix = sprayOf({ lawns: onLawns([367n]), ...withIron({ zoneIds: ids(1) }) });
  expect(mix?.finished).toEqual(of("gal", "0.6"));
  const taken = { dimension: "volume", amount: of("gal", "0.5505").amount - 1n };
  expect(mix && sprayForGround(mix.carrier, mix.lawns)).toEqual(taken);
  expect(mix?.lawns.map(({ finished }) => finished)).toEqual([taken]);
});

test("a tool fits where it measures by what the plan counts", () => {
  expect(fittingTool(sprayed(IRON))).toBe(CUP);
  expect(fittingTool(sprayed({ ...IRON, tool: SCALE }))).toBeUndefined();
  expect(fittingTool(sprayed({ ...GRANULES, tool: CUP }))).toBeUndefined();
  expect(fittingTool(sprayed({ ...IRON, tool: "none" }))).toBeUndefined();
});

test("water is what the liquids leave of a filling; what is weighed takes no room, and where they don't fit there is none", () => {
  const poured = (ounces: bigint) => ({ amount: of("fl oz", ounces) });
  const weighed = { amount: of("lb", 40n) };
  expect(waterBeside([poured(100n), weighed, poured(28n)], of("gal", 10n))).toEqual(of("gal", 9n));
  expect(waterBeside([weighed], of("gal", 10n))).toEqual(of("gal", 10n));
  expect([128n, 129n].map((much) => waterBeside([poured(much)], of("gal", 1n)))).toEqual([of("gal", 0n), of("gal", 0n)]);
});

test("what each lawn gets of a liquid is by its area", () => {
  const ticket = ticketOf({ lawns: onLawns([3000n, 1000n]), ...withIron({ zoneIds: ids(2) }) });
  const [mix] = ticket.mixes;
  if (mix?.kind !== "spray") throw new Error("There is a spray.");
  expect(mix.lawns.map(({ finished }) => finished)).toEqual([of("gal", "4.5"), of("gal", "1.5")]);
  expect(mix.lawns.map(({ products }) => products[0]?.amount)).toEqual([of("fl oz", "4.5"), of("fl oz", "1.5")]);
});

test("an amount over an area is a rate by what it was measured in", () => {
  expect(rateOver(of("lb", 4n), of("sq ft", 2000n))).toEqual(rateOf("product-mass-per-area", 2n, "lb per 1,000 sq ft"));
  expect(rateOver(of("gal", 1n), of("sq ft", 2000n))).toEqual(rateOf("product-volume-per-area", "0.5", "gal per 1,000 sq ft"));
});
