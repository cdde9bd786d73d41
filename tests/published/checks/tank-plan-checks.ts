// Published tank loads and hose volumes as the tank plan of a route gives them.
import { expect } from "vitest";
import { hoseVolume } from "#domain/equipment/tank-hold-up";
import { planTanks } from "#domain/mixing/tank-plan";
import { type TicketSprayer } from "#domain/mixing/ticket-question";
import { exactly, measureInUnit, settle } from "#domain/quantities/exact-quantity";
import { of, sum } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { valueOf } from "../../support/crew";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";
import { IRON, SPRAYER } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

/*
 * The same published figures as in the tests of sprayers and hoses, here through stops, runs, fills and the line.
 * Nothing measures the product of these rows, so that no mark of a tool rounds it.
 */

const OKLAHOMA = "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm";
const GERKEN = "Gerken, Oklahoma State Univ.-OKC (2013), https://paperzz.com/doc/9245112/";
const COLORADO = "Colorado State CEPEP Fact Sheet 204 (method: tanks = area / (area per gal x capacity)), https://paperzz.com/doc/8765247/";
const WILDFIRE = "US National Wildfire Coordinating Group, https://www.nwcg.gov/course/ffm/squirt-water/32-volume-of-water-in-hose";
const FORMULA = "a quarter of pi times the diameter squared times the length";

const SQUARE_FEET_AN_ACRE = 43_560n;

interface Route {
  readonly acres: readonly bigint[];
  readonly rate: Parameters<typeof rateOf<"product-volume-per-area">>[1];
  readonly unit: "fl oz per acre" | "pt per acre";
  readonly gallonsPerAcre: bigint;
  readonly tankGallons: bigint;
  readonly hose?: { readonly inches: string; readonly feet: bigint };
}

function planOf({ acres, rate: value, unit, gallonsPerAcre, tankGallons, hose }: Route) {
  const rate = rateOf("product-volume-per-area", value, unit);
  const holdUp = hose === undefined ? of("gal", 0n) : settle(valueOf(hoseVolume({ name: "hose", length: of("ft", hose.feet), innerDiameter: of("in", hose.inches) })), "nearest");
  const gear: TicketSprayer = { ...SPRAYER, capacity: of("gal", tankGallons), holdUp, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", gallonsPerAcre, "gal per acre") } };
  const treatment = { ...IRON, rate, gear, tool: "none" as const, use: { ...IRON.use, rates: { basis: rate.basis, low: rate, high: rate } as const } };
  const stops = acres.map((count, index) => truckStop(String(index), [treatment], count * SQUARE_FEET_AN_ACRE, { water: "yes" }));
  return planTanks(tankQuestion(stops, { truck: { name: "Truck 1", payload: null, staysAboard: of("lb", 0n) } }));
}

const productGallons = (route: Route, fills: readonly number[] = []) => {
  const all = planOf(route).fills.filter((_fill, index) => fills.length === 0 || fills.includes(index));
  const amounts = all.flatMap(({ products }) => products.flatMap(({ amount }) => (amount.dimension === "volume" ? [amount] : [])));
  return toNumber(measureInUnit(sum("volume", amounts), "gal"));
};

const OUNCES: Route = { acres: [2n, 3n], rate: 32n, unit: "fl oz per acre", gallonsPerAcre: 20n, tankGallons: 100n };
const PINTS: Route = { acres: [10n, 5n, 10n], rate: "3.6", unit: "pt per acre", gallonsPerAcre: 40n, tankGallons: 300n };
const line = (inches: string, feet: bigint) => planOf({ ...OUNCES, hose: { inches, feet } }).mixes[0]?.end.pushOut ?? of("gal", 0n);

const rows: readonly PublishedRow[] = [
  { row: "sprayers.12", inputs: "32 fl oz an acre at 20 gal an acre, fl oz in each 20 gal of a 100 gal fill", expected: 32, tolerance: printedTo(0), source: OKLAHOMA, status: "seen", computed: () => (productGallons(OUNCES) * 128) / 5, second: 32 },
  { row: "sprayers.19", inputs: "3.6 pt an acre over 25 acres, gal of product in all fills of the route", expected: 11.25, tolerance: printedTo(2), source: GERKEN, status: "seen", computed: () => productGallons(PINTS), second: (3.6 * 25) / 8 },
  { row: "hoses.4", inputs: "25 acres at 40 gal an acre out of 300 gal, tanks", expected: 4, tolerance: 1e-9, source: COLORADO, status: "calc", computed: () => planOf(PINTS).fills.length, second: Math.ceil((25 * 40) / 300) },
  { row: "hoses.4", inputs: "the same, product in the first full tank, gal", expected: 3.375, tolerance: 1e-6, source: COLORADO, status: "calc", computed: () => productGallons(PINTS, [0]), second: (3.6 / 8 / 40) * 300 },
  { row: "hoses.4", inputs: "the same, product in the last part tank of 100 gal, gal", expected: 1.125, tolerance: 1e-6, source: COLORADO, status: "calc", computed: () => productGallons(PINTS, [3]), second: (3.6 / 8 / 40) * 100 },
  { row: "hoses.6", inputs: "1 in x 100 ft of hose, gal of water behind the mix", expected: 4, tolerance: printedTo(0), source: WILDFIRE, status: "seen", computed: () => toNumber(measureInUnit(line("1", 100n), "gal")), second: (Math.PI * 1200) / 4 / 231 },
  { row: "hoses.7", inputs: "1/2 in x 300 ft of hose, gal of water behind the mix", expected: 3.1, tolerance: printedTo(1), source: FORMULA, status: "calc", computed: () => toNumber(measureInUnit(line("0.5", 300n), "gal")), second: (Math.PI * 0.25 * 3600) / 4 / 231 },
];

const wholeTanks: PublishedStatement = {
  row: "hoses.4",
  says: "the loads of the acres are whole tanks and one part tank",
  source: COLORADO,
  status: "calc",
  holds: () => {
    expect(planOf(PINTS).fills.map(({ finished }) => toNumber(measureInUnit(finished, "gal")))).toEqual([300, 300, 300, 100]);
    expect(exactly("gal", 100n).dimension).toBe(planOf(PINTS).fills[3]?.finished.dimension);
  },
};

export const TANK_PLAN_CHECKS: readonly PublishedEntry[] = [...rows, wholeTanks];
