// Published figures as a mix ticket gives them, and the order of the tank.
import { expect } from "vitest";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { type ExactQuantity, measureInUnit } from "#domain/quantities/exact-quantity";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateOf, type RateUnit } from "#domain/quantities/rate";
import { decimal, toNumber } from "#domain/quantities/rational";
import { gradeOf } from "#domain/turf/nutrients";
import { FORMULATIONS, type Formulation, type ProductRate } from "#domain/label/label-facts";
import { makeMixTicket, type MixTicket } from "#domain/mixing/mix-ticket";
import { inMixingOrder, type SprayMix, type SprayTreatment } from "#domain/mixing/spray-mix";
import { isSprayed, type TicketTreatment } from "#domain/mixing/ticket-question";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";
import { BARRIER, FEED, IRON, LAWN, QUESTION, rulesOf, SPRAYER } from "../../support/ticket";

/*
 * The same published figures as in the tests of fertilizers, nozzles and units, here as a mix ticket gives them: through
 * lawns, rounding, loads and sums. Nothing measures the products of these rows, so that no mark of a tool rounds them.
 */

const NEBRASKA = "Univ. of Nebraska-Lincoln, Lawn Fertilizer Calculations, http://byf.unl.edu/LawnFertCalc";
const NC_STATE = "NC State Extension, Caring for Your Lawn and the Environment, https://content.ces.ncsu.edu/caring-for-your-lawn-and-the-environment";
const FLORIDA = "McCarty & Cisar, UF/IFAS ENH-73 (1995), https://docslib.org/doc/2582559/";
const UMASS = "UMass Extension, Rotary Spreader Calibration, https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures";
const FIGART = "UF/IFAS agent Figart, Jacksonville Times-Union 2021-03-20";
const WOODS = "Woods, Asian Turfgrass Center 19 Mar 2015, https://www.blog.asianturfgrass.com/2015/03/calculating-how-much-of-an-element-is-applied-in-a-liquid-fertilizer.html";
const OKLAHOMA = "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm";
const GERKEN = "Gerken, Oklahoma State Univ.-OKC (2013), https://paperzz.com/doc/9245112/";
const GOLFDOM = "tested rates of Kreuser, UNL, Golfdom 15 Aug 2018, https://www.golfdom.com/treatment-of-iron-deficiency-and-chlorosis/";
const COWLITZ = "Cowlitz Co., Washington, weed board, http://www.mycowlitz.com/noxiousweeds/Tables_Calculations.htm";

const perThousand = "lb per 1,000 sq ft";
const byMass = (value: string, unit: RateUnit<"product-mass-per-area"> = perThousand) => rateOf("product-mass-per-area", value, unit);
const byVolume = (value: string, unit: RateUnit<"product-volume-per-area">) => rateOf("product-volume-per-area", value, unit);

/** A treatment whose label takes its rate as it is. */
function plain(treatment: TicketTreatment, rate: ProductRate, more: Partial<TicketTreatment> = {}): TicketTreatment {
  const rates =
    rate.basis === "product-mass-per-area"
      ? ({ basis: rate.basis, low: rate, high: rate } as const)
      : ({ basis: rate.basis, low: rate, high: rate } as const);
  return { ...treatment, rate, tool: "none", use: { ...treatment.use, rates }, ...more };
}

function made(treatment: TicketTreatment, area: Quantity<"area">): MixTicket {
  const ticket = makeMixTicket({ ...QUESTION, lawns: [{ ...LAWN, area }], treatments: [treatment] });
  if (!ticket.ok) throw new Error(ticket.refusal.sentence);
  return ticket.value;
}

function feedOf(grade: string, pounds: string): TicketTreatment {
  const [nitrogen = "", phosphate = "", potash = ""] = grade.split("-");
  return plain(FEED, byMass(pounds), { label: { ...FEED.label, analysis: { grade: gradeOf(nitrogen, phosphate, potash), release: { kind: "not-stated" } } } });
}

const pounds = (mass: ExactQuantity<"mass"> | Quantity<"mass"> | "not-stated" | undefined) =>
  mass === undefined || mass === "not-stated" ? Number.NaN : toNumber(measureInUnit(mass, "lb"));
const squareFeet = (value: bigint) => of("sq ft", value);

function weighed(treatment: TicketTreatment, area: Quantity<"area">): number {
  const [mix] = made(treatment, area).mixes;
  return mix?.kind === "granular" ? pounds(mix.total) : Number.NaN;
}

function nutrient(treatment: TicketTreatment, area: Quantity<"area">, name: "nitrogen" | "phosphate" | "potash" | "iron" | "slowNitrogen"): number {
  return pounds(made(treatment, area).delivered[0]?.nutrients[name]);
}

/** An output of so many gallons per acre, from a tank that takes them all. */
function spraying(rate: ProductRate, gallonsPerAcre: string, more: Partial<TicketTreatment> = {}): TicketTreatment {
  const carrier = { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", gallonsPerAcre, "gal per acre") };
  return plain(IRON, rate, { gear: { ...SPRAYER, capacity: of("gal", 5000n), carrier }, ...more });
}

function sprayed(treatment: TicketTreatment, area: Quantity<"area">): SprayMix {
  const [mix] = made(treatment, area).mixes;
  if (mix?.kind !== "spray") throw new Error("There is a spray.");
  return mix;
}

function gallonsOfProduct(treatment: TicketTreatment, area: Quantity<"area">): number {
  const total = sprayed(treatment, area).products[0]?.total;
  return total?.dimension === "volume" ? toNumber(measureInUnit(total, "gal")) : Number.NaN;
}

/** The iron fertilizer of 20 % iron, at so many weight ounces per 1,000 sq ft. */
function ironOunces(ounces: string): number {
  const analysis = { grade: gradeOf("0", "0", "0", "20"), release: { kind: "not-stated" } } as const;
  return 16 * nutrient(spraying(byMass(ounces, "oz wt per 1,000 sq ft"), "87.12", { label: { ...IRON.label, analysis } }), squareFeet(1000n), "iron");
}

const liquidFeed = spraying(byVolume("6", "fl oz per 1,000 sq ft"), "43.56", {
  label: { ...IRON.label, analysis: { grade: gradeOf("4", "0", "0"), release: { kind: "not-stated" } }, density: densityOf("10.68", "lb per gal") },
});
const granules = plain(BARRIER, byMass("2"), { label: { ...BARRIER.label, activeIngredients: [{ name: "velodiamine", concentration: percentByWeight("10"), modeOfAction: "unknown" }] } });
const slowFeed = plain(FEED, byMass("100"), { label: { ...FEED.label, analysis: { grade: gradeOf("15", "0", "15"), release: { kind: "slow-percent-of-product", percent: decimal("7") } } } });

const rows: readonly PublishedRow[] = [
  { row: "fertilizer.6", inputs: "28-3-6 at 3.57 lb on 6,000 sq ft", expected: 21.42, tolerance: printedTo(2), source: NEBRASKA, status: "seen", computed: () => weighed(feedOf("28-3-6", "3.57"), squareFeet(6000n)), second: 3.57 * 6 },
  { row: "fertilizer.6", inputs: "28-3-6 at 3.57 lb on 6,000 sq ft, lb N per 1,000", expected: 1, tolerance: printedTo(2), source: NEBRASKA, status: "seen", computed: () => nutrient(feedOf("28-3-6", "3.57"), squareFeet(6000n), "nitrogen") / 6, second: 3.57 * 0.28 },
  { row: "fertilizer.8", inputs: "24-6-6 at 4 lb on 5,000 sq ft", expected: 20, tolerance: printedTo(0), source: NC_STATE, status: "seen", computed: () => weighed(feedOf("24-6-6", "4"), squareFeet(5000n)), second: 20 },
  { row: "fertilizer.10", inputs: "40 lb of 10-6-4 on 1,000 sq ft, N", expected: 4, tolerance: printedTo(1), source: NC_STATE, status: "seen", computed: () => nutrient(feedOf("10-6-4", "40"), squareFeet(1000n), "nitrogen"), second: 40 * 0.1 },
  { row: "fertilizer.11", inputs: "16-4-8 at 6.25 lb, P2O5", expected: 0.25, tolerance: printedTo(2), source: FLORIDA, status: "seen", computed: () => nutrient(feedOf("16-4-8", "6.25"), squareFeet(1000n), "phosphate"), second: 6.25 * 0.04 },
  { row: "fertilizer.11", inputs: "16-4-8 at 6.25 lb, K2O", expected: 0.5, tolerance: printedTo(2), source: FLORIDA, status: "seen", computed: () => nutrient(feedOf("16-4-8", "6.25"), squareFeet(1000n), "potash"), second: 6.25 * 0.08 },
  { row: "fertilizer.12", inputs: "20-5-10 at 5 lb, lb in each of two passes", expected: 2.5, tolerance: printedTo(1), source: UMASS, status: "seen", computed: () => eachPass(feedOf("20-5-10", "5")), second: 2.5 },
  { row: ["fertilizer.4", "fertilizer.16"], inputs: "15-0-15 with 7% WIN, slow percent of N", expected: 46.67, tolerance: printedTo(2), source: FIGART, status: "seen", computed: () => (100 * nutrient(slowFeed, squareFeet(1000n), "slowNitrogen")) / nutrient(slowFeed, squareFeet(1000n), "nitrogen"), second: 700 / 15 },
  { row: "fertilizer.19", inputs: "6 fl oz of 4% N at 10.68 lb per gal on 1,000 sq ft, lb N", expected: 0.02, tolerance: printedTo(2), source: WOODS, status: "seen", computed: () => nutrient(liquidFeed, squareFeet(1000n), "nitrogen"), second: ((6 * 10.68) / 128) * 0.04 },
  { row: "sprayers.12", inputs: "32 oz per acre at 20 gal per acre, oz in 20 gal", expected: 32, tolerance: printedTo(0), source: OKLAHOMA, status: "seen", computed: () => 128 * gallonsOfProduct(spraying(byVolume("32", "fl oz per acre"), "20"), squareFeet(43_560n)), second: 32 },
  { row: "sprayers.19", inputs: "3.6 pt per acre on 25 acres, gal", expected: 11.25, tolerance: printedTo(2), source: GERKEN, status: "seen", computed: () => gallonsOfProduct(spraying(byVolume("3.6", "pt per acre"), "40"), squareFeet(25n * 43_560n)), second: (3.6 * 25) / 8 },
  { row: "sprayers.17", inputs: "40 gal per acre on 1,000 sq ft, gal, to the tenth of the tank's gauge", expected: 0.92, tolerance: 0.05, source: GERKEN, status: "seen", computed: () => toNumber(measureInUnit(sprayed(spraying(byVolume("3.6", "pt per acre"), "40"), squareFeet(1000n)).finished, "gal")), second: 0.9 },
  { row: ["iron.1", "iron.7"], inputs: "2 oz of a 20% iron product, oz Fe", expected: 0.4, tolerance: printedTo(1), source: GOLFDOM, status: "calc", computed: () => ironOunces("2"), second: 0.4 },
  { row: "iron.4", inputs: "8 oz of a 20% iron product, oz Fe", expected: 1.6, tolerance: printedTo(1), source: GOLFDOM, status: "calc", computed: () => ironOunces("8"), second: 1.6 },
  { row: "active-ingredient.2", inputs: "a 10G at 2 lb on 12,000 sq ft, lb", expected: 24, tolerance: printedTo(0), source: COWLITZ, status: "calc", computed: () => weighed(granules, squareFeet(12_000n)), second: 24 },
];

function eachPass(treatment: TicketTreatment): number {
  const [mix] = made(treatment, squareFeet(1000n)).mixes;
  return mix?.kind === "granular" ? pounds(mix.lawns[0]?.perPass) : Number.NaN;
}

/** Kinds in the order that a source prints, each group at once; only what the source names. */
interface PublishedOrder {
  readonly row: string;
  readonly name: string;
  readonly source: string;
  readonly status: "seen" | "seen-2nd" | "memory";
  readonly groups: readonly (readonly Formulation[])[];
}

const orders: readonly PublishedOrder[] = [
  {
    row: "mixing.1",
    name: "water-soluble packets, powders and granules and flowables, solutions, emulsifiable concentrates, surfactants",
    source: "Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada, https://www.canolacouncil.org/canola-watch/2013/05/15/general-rules-for-mixing-pesticide/",
    status: "seen-2nd",
    groups: [["water-soluble bag"], ["wettable powder", "water-dispersible granule", "suspension concentrate"], ["soluble liquid"], ["emulsifiable concentrate"], ["surfactant"]],
  },
  {
    row: "mixing.2",
    name: "WALES without its last letter: powders and granules, flowables and suspensions, emulsifiable concentrates",
    source: "Country Guide, Pest Patrol, https://www.country-guide.ca/production/pest-patrol/",
    status: "seen",
    groups: [["wettable powder", "water-dispersible granule"], ["suspension concentrate"], ["emulsifiable concentrate"]],
  },
  {
    row: "mixing.2",
    name: "WALES with its last letter, surfactants",
    source: "Country Guide, Pest Patrol; the last letter from memory",
    status: "memory",
    groups: [["wettable powder", "water-dispersible granule"], ["suspension concentrate"], ["emulsifiable concentrate"], ["surfactant"]],
  },
];

function ofKind(formulation: Formulation): SprayTreatment {
  const treatment: TicketTreatment = { ...IRON, label: { ...IRON.label, productName: formulation, formulation, analysis: "none" } };
  if (!isSprayed(treatment)) throw new Error("The treatment is sprayed.");
  return treatment;
}

const inOrder = orders.map(({ row, name, source, status, groups }): PublishedStatement => ({
  row,
  says: `order of the tank: ${name}`,
  source,
  status,
  holds: () => {
    const named = groups.flat();
    const tank = inMixingOrder(named.toReversed().map(ofKind)).map(({ label }) => label.formulation);
    const groupOf = (formulation: Formulation) => groups.findIndex((group) => group.includes(formulation));
    const turns = tank.map(groupOf);
    expect(turns).toEqual(turns.toSorted((left, right) => left - right));
    expect(FORMULATIONS.filter((formulation) => named.includes(formulation)).map(groupOf)).toEqual(turns);
  },
}));

const PARTNERS = "sprayers101.com/loading-jartest and sprayers101.com/tankmix";
const partners = (count: number): readonly TicketTreatment[] =>
  Array.from({ length: count }, (_, line) => ({ ...IRON, line, productId: String(line), label: { ...IRON.label, productName: `Iron ${String(line)}` } }));

const ofTank: readonly PublishedStatement[] = [
  {
    row: "mixing.1",
    says: "fertilizer goes in after packets and before powders",
    source: "Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada",
    status: "seen-2nd",
    holds: () => {
      const [feed] = [IRON].filter(isSprayed);
      if (feed === undefined) throw new Error("The iron is sprayed.");
      const tank = inMixingOrder([ofKind("wettable powder"), feed, ofKind("water-soluble bag")]);
      expect(tank.map(({ label }) => label.productName)).toEqual(["water-soluble bag", "Rustwater Iron", "wettable powder"]);
    },
  },
  {
    row: "mixing.4",
    says: "half of the carrier is in the tank before the first product",
    source: PARTNERS,
    status: "seen",
    // Half of 3 gal less 3 fl oz, whatever the size of the tank.
    holds: () => expect(sprayed(IRON, squareFeet(2000n)).steps.slice(0, 2)).toEqual([expect.stringContaining("half of this load's water (1.49 gal)"), expect.stringContaining("Add Rustwater Iron")]),
  },
  {
    row: "mixing.4",
    says: "three partners in a tank want no care for their number, four do",
    source: PARTNERS,
    status: "seen",
    holds: () => {
      const many = (count: number) => rulesOf({ treatments: partners(count) }).filter((rule) => rule.endsWith("many-in-one-tank"));
      expect([many(3), many(4)]).toEqual([[], ["take-care many-in-one-tank"]]);
    },
  },
  {
    row: "sprayers.8",
    says: "full tanks and a partial one hold product at one strength and add up, 32 fl oz per acre at 20 gal per acre on 5 acres from a tank of 40 gal",
    source: "the printed formula",
    status: "calc",
    holds: () => {
      const treatment = spraying(byVolume("32", "fl oz per acre"), "20");
      const carrier = { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "20", "gal per acre") };
      const settings = { ...QUESTION.settings, tankLoads: "full-tanks-then-a-short-one" } as const;
      const ticket = makeMixTicket({ ...QUESTION, settings, lawns: [{ ...LAWN, area: of("acre", 5n) }], treatments: [{ ...treatment, gear: { ...SPRAYER, capacity: of("gal", 40n), carrier } }] });
      if (!ticket.ok) throw new Error(ticket.refusal.sentence);
      const [mix] = ticket.value.mixes;
      if (mix?.kind !== "spray") throw new Error("There is a spray.");
      expect(mix.loads.map(({ finished, products }) => [finished, products[0]?.amount])).toEqual([
        [of("gal", 40n), of("fl oz", 64n)], [of("gal", 40n), of("fl oz", 64n)], [of("gal", 20n), of("fl oz", 32n)],
      ]);
    },
  },
];

export const MIX_TICKET_CHECKS: readonly PublishedEntry[] = [...rows, ...inOrder, ...ofTank];
