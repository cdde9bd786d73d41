// Active ingredient from product and product from active ingredient, as printed.
import { type Outcome } from "#domain/foundation/outcome";
import { activeIngredientRate, massInVolume, percentByWeight, productVolumeRateFor } from "#domain/quantities/active-ingredient";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateIn, rateOf, times } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { printedTo, type PublishedRow } from "../../support/published-check";

const COWLITZ = "Cowlitz Co., Washington, weed board, http://www.mycowlitz.com/noxiousweeds/Tables_Calculations.htm";
const KEELEY = "rates of Keeley & Zhou, Weed Technology 19(1), 2005, https://bioone.org/journals/weed-technology/volume-19/issue-1/WT-03-199R/";

function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

function pintsPerAcre(strength: string, activePounds: string): number {
  const active = rateOf("active-ingredient-mass-per-area", activePounds, "lb per acre");
  return toNumber(rateIn(valueOf(productVolumeRateFor(active, massInVolume(strength, "lb per gal"))), "pt per acre"));
}

/** Product strength in lb per gal, active ingredient in lb per acre, pints of product per acre as printed. */
const printed: readonly (readonly [string, string, number, number])[] = [
  ["4", "0.25", 0.5, 1],
  ["4", "0.5", 1, 0],
  ["4", "0.75", 1.5, 1],
  ["4", "1", 2, 0],
  ["4", "1.5", 3, 0],
  ["4", "2", 4, 0],
  ["2", "1", 4, 0],
  ["6", "0.75", 1, 0],
  ["6", "1", 1.33, 2],
  ["8", "1", 1, 0],
];

const pintRows = printed.map(
  ([strength, active, expected, decimals]): PublishedRow => ({
    row: "active-ingredient.1",
    inputs: `${active} lb per acre from ${strength} lb per gal, pt per acre`,
    expected,
    tolerance: printedTo(decimals),
    source: COWLITZ,
    status: "seen",
    computed: () => pintsPerAcre(strength, active),
    second: (8 * Number(active)) / Number(strength),
  }),
);

const granular = rateOf("product-mass-per-area", 2n, "lb per 1,000 sq ft");

function granularActive(unit: "lb per 1,000 sq ft" | "lb per acre"): number {
  return toNumber(rateIn(valueOf(activeIngredientRate(granular, percentByWeight("10"))), unit));
}

function inPoundsPerAcre(kilogramsPerHectare: string): number {
  return toNumber(rateIn(rateOf("active-ingredient-mass-per-area", kilogramsPerHectare, "kg per ha"), "lb per acre"));
}

const ACRES_PER_HECTARE = 1 / 0.40468564224;

export const ACTIVE_INGREDIENT_CHECKS: readonly PublishedRow[] = [
  ...pintRows,
  { row: "active-ingredient.2", inputs: "10G at 2 lb per 1,000 on 12,000 sq ft, lb", expected: 24, tolerance: printedTo(0), source: COWLITZ, status: "calc", computed: () => toNumber(measureInUnit(times(granular, of("sq ft", 12_000n)), "lb")), second: 24 },
  { row: "active-ingredient.2", inputs: "10G at 2 lb per 1,000, lb active per 1,000", expected: 0.2, tolerance: printedTo(2), source: COWLITZ, status: "calc", computed: () => granularActive("lb per 1,000 sq ft"), second: 0.2 },
  { row: "active-ingredient.2", inputs: "10G at 2 lb per 1,000, lb active per acre", expected: 8.71, tolerance: printedTo(2), source: COWLITZ, status: "calc", computed: () => granularActive("lb per acre"), second: 0.2 * 43.56 },
  { row: "active-ingredient.3", inputs: "0.56 kg per ha, lb per acre", expected: 0.5, tolerance: printedTo(2), source: KEELEY, status: "calc", computed: () => inPoundsPerAcre("0.56"), second: 0.56 / 0.45359237 / ACRES_PER_HECTARE },
  { row: "active-ingredient.3", inputs: "0.84 kg per ha, lb per acre", expected: 0.75, tolerance: printedTo(2), source: KEELEY, status: "calc", computed: () => inPoundsPerAcre("0.84"), second: 0.84 / 0.45359237 / ACRES_PER_HECTARE },
  { row: "active-ingredient.3", inputs: "3.36 kg per ha, lb per acre", expected: 3, tolerance: printedTo(2), source: KEELEY, status: "calc", computed: () => inPoundsPerAcre("3.36"), second: 3.36 / 0.45359237 / ACRES_PER_HECTARE },
];
