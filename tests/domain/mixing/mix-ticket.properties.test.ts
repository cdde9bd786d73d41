import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { makeMixTicket, type MixTicket } from "#domain/mixing/mix-ticket";
import { sprayForGround, type SprayMix } from "#domain/mixing/spray-mix";
import { ticketRate } from "#domain/mixing/stated-rate";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { exactly } from "#domain/quantities/exact-quantity";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { parseRate } from "#domain/quantities/parse-rate";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { valueOf } from "../../support/domain-answers";
import { CUP, FEED, IRON, LAWN, QUESTION, SCALE, SPRAYER, SPREADER } from "../../support/ticket";

type Text = readonly [us: string, metric: string];

const area = (text: string): Quantity<"area"> => valueOf(parseQuantity(text, { field: "area", dimensions: ["area"] })).quantity;
const volume = (text: string): Quantity<"volume"> => valueOf(parseQuantity(text, { field: "volume", dimensions: ["volume"] })).quantity;
const mass = (text: string): Quantity<"mass"> => valueOf(parseQuantity(text, { field: "mass", dimensions: ["mass"] })).quantity;
const byMass = (text: string) => valueOf(parseRate(text, { field: "rate", bases: ["product-mass-per-area"] })).rate;
const byVolume = (text: string) => valueOf(parseRate(text, { field: "rate", bases: ["product-volume-per-area"] })).rate;
const output = (text: string) => valueOf(parseRate(text, { field: "rate", bases: ["carrier-volume-per-area"] })).rate;

/** A whole number of hundred-thousandths (and so on) as it is typed, with a point. */
function typed(value: bigint, decimals: number): string {
  const digits = value.toString().padStart(decimals + 1, "0");
  return `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}

// The definitions: a foot is 0.3048 m, a pound 453.59237 g, a gallon 3785.411784 mL. 1,000 sq ft are 92.90304 m2.
const areaText = (squareFeet: bigint): Text => [`${String(squareFeet)} sq ft`, `${typed(squareFeet * 9_290_304n, 8)} m2`];
const feedText = (tenths: bigint): Text => [`${typed(tenths, 1)} lb/1,000 sq ft`, `${typed(tenths * 45_359_237n, 6)} g/92.90304 m2`];
const ironText = (tenths: bigint): Text => [`${typed(tenths, 1)} fl oz/1,000 sq ft`, `${typed(tenths * 295_735_295_625n, 11)} mL/92.90304 m2`];
const outputText = (tenths: bigint): Text => [`${typed(tenths, 1)} gal/1,000 sq ft`, `${typed(tenths * 3_785_411_784n, 10)} L/92.90304 m2`];
const tankText = (gallons: bigint): Text => [`${String(gallons)} gal`, `${typed(gallons * 3_785_411_784n, 9)} L`];
const hopperText = (pounds: bigint): Text => [`${String(pounds)} lb`, `${typed(pounds * 45_359_237n, 8)} kg`];

interface Job {
  readonly areas: readonly bigint[];
  readonly feed: bigint;
  readonly iron: bigint;
  readonly output: bigint;
  readonly tank: bigint;
  readonly hopper: bigint;
}

const job = fc.record<Job>({
  areas: fc.array(fc.bigInt(1n, 40_000n), { minLength: 1, maxLength: 3 }),
  feed: fc.bigInt(1n, 60n),
  iron: fc.bigInt(1n, 40n),
  output: fc.bigInt(2n, 40n),
  tank: fc.bigInt(4n, 300n),
  hopper: fc.bigInt(10n, 200n),
});

/** The visit as it is typed in one system of units; what stays the same says nothing of a unit. */
function questionOf({ areas, feed, iron, output: tenths, tank, hopper }: Job, place: 0 | 1): TicketQuestion {
  const lawns = areas.map((size, index) => ({ ...LAWN, zoneId: String(index), name: `Lawn ${String(index)}`, area: area(areaText(size)[place]) }));
  const zoneIds = lawns.map(({ zoneId }) => zoneId);
  const sprayer = { ...SPRAYER, capacity: volume(tankText(tank)[place]), holdUp: volume(tankText(3n)[place]), carrier: { ...SPRAYER.carrier, rate: output(outputText(tenths)[place]) } };
  const spreader = { ...SPREADER, capacity: mass(hopperText(hopper)[place]) };
  const treatments: readonly TicketTreatment[] = [
    { ...FEED, zoneIds, gear: spreader, rate: byMass(feedText(feed)[place]), rateText: "as typed", onHand: mass(hopperText(500n)[place]) },
    { ...IRON, zoneIds, gear: sprayer, rate: byVolume(ironText(iron)[place]), rateText: "as typed", onHand: volume(tankText(5n)[place]) },
  ];
  return { ...QUESTION, lawns, treatments };
}

describe("the same job, typed in US and in metric units", () => {
  test("is the same ticket, with the same amounts, loads and findings", () => {
    fc.assert(
      fc.property(job, (visit) => {
        expect(makeMixTicket(questionOf(visit, 1))).toEqual(makeMixTicket(questionOf(visit, 0)));
      }),
      { numRuns: 60 },
    );
  });

  test("and what is typed differs", () => {
    expect([areaText(1000n), feedText(25n), tankText(100n)]).toEqual([
      ["1000 sq ft", "92.90304000 m2"],
      ["2.5 lb/1,000 sq ft", "1133.980925 g/92.90304 m2"],
      ["100 gal", "378.541178400 L"],
    ]);
  });
});

const ticketOf = (question: TicketQuestion): MixTicket => valueOf(makeMixTicket(question));
const spraysOf = (ticket: MixTicket) => ticket.mixes.filter((mix): mix is SprayMix => mix.kind === "spray");
const spreadsOf = (ticket: MixTicket) => ticket.mixes.filter((mix): mix is GranularMix => mix.kind === "granular");
const amounts = (parts: readonly { readonly amount: bigint }[]) => parts.reduce((total, { amount }) => total + amount, 0n);

/** A rate over area, or the same figure by the gallon of finished spray, of a label whose range it is within. */
function planned({ use, gear }: TicketTreatment, perThousand: string, isByStrength: boolean): Pick<TicketTreatment, "rate" | "use" | "asStated"> {
  if (!isByStrength) return { rate: byVolume(perThousand), use };
  const strength = valueOf(parseRate(perThousand.replace("1,000 sq ft", "gal"), { field: "rate", bases: ["product-volume-per-spray-volume"] })).rate;
  const stated = ticketRate(strength, { ...use, rates: { basis: strength.basis, low: strength, high: strength } }, gear);
  if (stated === undefined) throw new Error("It is sprayed.");
  return stated;
}

describe("sums of several products in one tank", () => {
  test("of each product loads add up to the visit, and lawns and what is left add up to it, exactly; of spray the loads add up to the visit and the lawns to what their ground takes", () => {
    const tool = fc.constantFrom<TicketTreatment["tool"]>("none", CUP);
    const loads = fc.constantFrom("same-size-every-time" as const, "full-tanks-then-a-short-one" as const);
    fc.assert(
      fc.property(job, tool, loads, fc.bigInt(1n, 30n), fc.boolean(), (visit, measuredBy, tankLoads, second, isByStrength) => {
        const question = questionOf(visit, 0);
        const treatments = question.treatments.flatMap((treatment): readonly TicketTreatment[] =>
          treatment.productId !== "iron"
            ? [{ ...treatment, tool: measuredBy === "none" ? "none" : SCALE }]
            : [
                { ...treatment, tool: measuredBy },
                { ...treatment, line: 3, productId: "second", tool: measuredBy, ...planned(treatment, ironText(second)[0], isByStrength), label: { ...treatment.label, productName: "Second Iron" } },
              ],
        );
        const ticket = ticketOf({ ...question, treatments, settings: { ...question.settings, tankLoads } });
        for (const mix of spraysOf(ticket)) {
          expect(mix.products).toHaveLength(2);
          expect(amounts(mix.loads.map(({ finished }) => finished))).toBe(mix.finished.amount);
          expect(amounts(mix.lawns.map(({ finished }) => finished))).toBe(sprayForGround(mix.carrier, mix.lawns).amount);
          for (const [index, { total }] of mix.products.entries()) {
            for (const parts of [mix.loads, [...mix.lawns, ...(mix.rest === undefined ? [] : [mix.rest])]]) {
              expect(amounts(parts.map(({ products }) => products[index]?.amount ?? of("fl oz", 0n)))).toBe(total.amount);
            }
          }
          if (isByStrength) expect(mix.rest).toBeDefined();
        }
        for (const mix of spreadsOf(ticket)) expect(amounts(mix.lawns.map(({ amount }) => amount))).toBe(mix.total.amount);
      }),
      { numRuns: 60 },
    );
  });
});

describe("more ground or a higher rate", () => {
  /** One lawn, and what goes on it of the feed, what is mixed of the finished spray, and the iron in it that goes on the lawn; no tool rounds the products. */
  function taken(squareFeet: bigint, feedTenths: bigint, ironTenths: bigint) {
    const question = questionOf({ areas: [squareFeet], feed: feedTenths, iron: ironTenths, output: 15n, tank: 100n, hopper: 50n }, 0);
    const treatments = question.treatments.map((treatment): TicketTreatment => ({ ...treatment, tool: "none" }));
    const ticket = ticketOf({ ...question, treatments });
    const [spray] = spraysOf(ticket);
    return { feed: spreadsOf(ticket)[0]?.total.amount ?? 0n, finished: spray?.finished.amount ?? 0n, iron: spray?.lawns[0]?.products[0]?.amount.amount ?? 0n };
  }

  test("never takes less feed, less spray or less of the product in it", () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 60_000n), fc.bigInt(0n, 5_000n), fc.bigInt(1n, 40n), fc.bigInt(0n, 20n), (squareFeet, moreFeet, rate, more) => {
        const less = taken(squareFeet, rate, rate);
        const wider = taken(squareFeet + moreFeet, rate, rate);
        const richer = taken(squareFeet, rate + more, rate + more);
        expect([wider.feed >= less.feed, wider.finished >= less.finished, wider.iron >= less.iron]).toEqual([true, true, true]);
        expect([richer.feed >= less.feed, richer.finished >= less.finished, richer.iron >= less.iron]).toEqual([true, true, true]);
      }),
      { numRuns: 60 },
    );
  });

  test("with a tool's marks, never takes fewer marks of what is spread", () => {
    const marksOf = (squareFeet: bigint, tenths: bigint) => {
      const question = questionOf({ areas: [squareFeet], feed: tenths, iron: 1n, output: 15n, tank: 100n, hopper: 50n }, 0);
      const treatments = question.treatments.filter(({ productId }) => productId === "feed").map((treatment): TicketTreatment => ({ ...treatment, tool: SCALE }));
      return spreadsOf(ticketOf({ ...question, treatments }))[0]?.total.amount ?? 0n;
    };
    fc.assert(
      fc.property(fc.bigInt(200n, 60_000n), fc.bigInt(0n, 5_000n), fc.bigInt(20n, 30n), fc.bigInt(0n, 10n), (squareFeet, moreFeet, rate, more) => {
        expect(marksOf(squareFeet + moreFeet, rate) >= marksOf(squareFeet, rate)).toBe(true);
        expect(marksOf(squareFeet, rate + more) >= marksOf(squareFeet, rate)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe("rounding with several products in the tank", () => {
  test("no product passes its label's highest rate, neither on the visit's ground nor in any load's share of it", () => {
    const mark = fc.constantFrom("0.1", "0.5", "1", "4");
    fc.assert(
      fc.property(fc.bigInt(500n, 60_000n), fc.bigInt(10n, 20n), fc.bigInt(10n, 20n), mark, (squareFeet, first, second, size) => {
        const question = questionOf({ areas: [squareFeet], feed: 1n, iron: first, output: 15n, tank: 40n, hopper: 50n }, 0);
        const iron = question.treatments.filter(({ productId }) => productId === "iron").map((treatment): TicketTreatment => ({ ...treatment, tool: { name: "cup", mark: exactly("fl oz", size) } }));
        const two = iron.flatMap((treatment): readonly TicketTreatment[] => [
          treatment,
          { ...treatment, line: 3, productId: "second", rate: rateOf("product-volume-per-area", rational(second, 10n), "fl oz per 1,000 sq ft"), label: { ...treatment.label, productName: "Second Iron" } },
        ]);
        const [mix] = spraysOf(ticketOf({ ...question, treatments: two }));
        if (mix === undefined) return;
        const loads = BigInt(mix.loads.length);
        // 2 fl oz per 1,000 sq ft, which are put down in 1.5 gal; half a canonical unit a load is less than any cup shows.
        const most = of("fl oz", rational(squareFeet * 2n, 1000n)).amount + loads;
        for (const { total } of mix.products) expect(total.amount <= most).toBe(true);
        for (const { finished, products } of mix.loads) {
          for (const { amount } of products) expect(amount.amount * of("gal", "1.5").amount <= of("fl oz", 2n).amount * finished.amount + of("gal", "1.5").amount).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});
