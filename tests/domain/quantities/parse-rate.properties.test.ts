import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatRate, formatRateIn } from "#domain/quantities/format-rate";
import { parseRate } from "#domain/quantities/parse-rate";
import { compareRates, rateBases, type RateBasis, rateDenominators, rateIn, rateOf, type RateUnit } from "#domain/quantities/rate";
import { decimal, rational, subtractRational } from "#domain/quantities/rational";
import { type Unit, units } from "#domain/quantities/units";
import { valueOf } from "../../support/domain-answers";

const bases = Object.keys(rateBases) as RateBasis[];

/** Every unit in which a rate of each basis can be said. */
const everyUnit = bases.flatMap((basis) => {
  const { amount, per } = rateBases[basis];
  const amounts = (Object.keys(units) as Unit[]).filter((unit) => units[unit].dimension === amount);
  const pers = Object.entries(rateDenominators).filter(([, { unit }]) => units[unit].dimension === per).map(([denominator]) => denominator);
  return amounts.flatMap((unit) => pers.map((denominator) => ({ basis, unit: `${unit} per ${denominator}` as RateUnit<RateBasis> })));
});
const rateUnit = fc.constantFrom(...everyUnit);
const figures = fc.tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 999 })).map(([whole, thousandths]) => `${String(whole)}.${String(thousandths).padStart(3, "0")}`);

const readBack = (text: string, basis: RateBasis) => valueOf(parseRate(text, { field: "rate", bases: [basis] })).rate;
const sizeOf = ({ numerator, denominator }: { numerator: bigint; denominator: bigint }) => ({ numerator: numerator < 0n ? -numerator : numerator, denominator });

describe("rates of every basis in every unit", () => {
  test("there are some of each basis", () => {
    expect(new Set(everyUnit.map(({ basis }) => basis)).size).toBe(bases.length);
    expect(everyUnit.length).toBeGreaterThan(200);
  });

  test("what is typed is the rate exactly", () => {
    fc.assert(
      fc.property(rateUnit, figures, ({ basis, unit }, figure) => {
        expect(compareRates(readBack(`${figure} ${unit}`, basis), rateOf(basis, figure, unit))).toBe(0);
      }),
      { numRuns: 400 },
    );
  });

  test("what is written in its unit reads back within half of its last digit", () => {
    fc.assert(
      fc.property(rateUnit, figures, fc.integer({ min: 0, max: 4 }), ({ basis, unit }, figure, decimals) => {
        const text = formatRateIn(rateOf(basis, figure, unit), unit, decimals);
        fc.pre(!text.startsWith("under"));
        const { numerator, denominator } = sizeOf(subtractRational(rateIn(readBack(text, basis), unit), decimal(figure)));
        expect(numerator * 2n * 10n ** BigInt(decimals) <= denominator).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  test("what is written for either system of units reads back within a hundredth of itself", () => {
    // From a hundredth of a unit that crews know up: what is smaller is written as "under" or to its last digit.
    const known = fc.constantFrom<{ basis: RateBasis; unit: RateUnit<RateBasis> }>(
      { basis: "product-mass-per-area", unit: "lb per 1,000 sq ft" },
      { basis: "nutrient-mass-per-area", unit: "lb per 1,000 sq ft" },
      { basis: "seed-mass-per-area", unit: "lb per 1,000 sq ft" },
      { basis: "active-ingredient-mass-per-area", unit: "lb per acre" },
      { basis: "product-volume-per-area", unit: "fl oz per 1,000 sq ft" },
      { basis: "carrier-volume-per-area", unit: "gal per 1,000 sq ft" },
      { basis: "product-volume-per-spray-volume", unit: "fl oz per gal" },
      { basis: "product-mass-per-spray-volume", unit: "oz wt per gal" },
    );
    fc.assert(
      fc.property(known, fc.integer({ min: 50, max: 100_000 }), fc.constantFrom("us" as const, "metric" as const), ({ basis, unit }, hundredths, system) => {
        const value = rational(BigInt(hundredths), 100n);
        const back = rateIn(readBack(formatRate(rateOf(basis, value, unit), system), basis), unit);
        const { numerator, denominator } = sizeOf(subtractRational(back, value));
        expect(numerator * 100n * value.denominator <= denominator * value.numerator).toBe(true);
      }),
      { numRuns: 400 },
    );
  });
});
