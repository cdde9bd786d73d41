import { invariant } from "#domain/foundation/invariant";
import { canonicalAmountOf, measureInUnit, type Measure } from "#domain/quantities/exact-quantity";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { compareRational, ONE, type Rational, ZERO } from "#domain/quantities/rational";
import { isUsCustomary, writtenUnit } from "#domain/quantities/unit-names";
import { type Dimension, type Unit, type UnitOf } from "#domain/quantities/units";

/** In whose units something is said: US customary ones or metric ones. */
export type UnitSystem = "us" | "metric";

/** A quantity as it is set on a page, where the unit is smaller than the figure. */
export interface WrittenQuantity {
  /** "13½", "1,250", or "under 0.001" for what is more than nothing and less than can be shown. */
  readonly figure: string;
  /** The whole unit: "fl oz", "oz wt", "sq ft". */
  readonly unit: string;
}

interface Step {
  readonly unit: Unit;
  /** The quantity in this unit from which the unit is used. */
  readonly from: Rational;
  /** Digits after the point at most, whatever the size. */
  readonly mostDecimals: number;
}

function step(unit: Unit, from: Rational, mostDecimals: number): Step {
  return { unit, from, mostDecimals };
}

const TWO: Rational = { numerator: 2n, denominator: 1n };

/**
 * The units by size, the largest first: under a pound in ounces, under a gallon in fluid ounces, lawns in square feet.
 */
const STEPS: Readonly<Record<UnitSystem, Readonly<Record<Dimension, readonly Step[]>>>> = {
  us: {
    mass: [step("lb", ONE, 2), step("oz wt", ZERO, 3)],
    volume: [step("gal", ONE, 2), step("fl oz", ZERO, 3)],
    area: [step("acre", TWO, 2), step("sq ft", ZERO, 1)],
    length: [step("ft", ONE, 2), step("in", ZERO, 3)],
  },
  metric: {
    mass: [step("kg", ONE, 3), step("g", ZERO, 3)],
    volume: [step("L", ONE, 3), step("mL", ZERO, 3)],
    area: [step("ha", ONE, 3), step("m2", ZERO, 2)],
    length: [step("m", ONE, 3), step("cm", ONE, 2), step("mm", ZERO, 3)],
  },
};

function valueIn(measure: Measure<Dimension>, unit: Unit): Rational {
  return measureInUnit<Dimension>(measure, unit);
}

function stepFor(measure: Measure<Dimension>, system: UnitSystem): { readonly step: Step; readonly value: Rational } {
  const chosen = STEPS[system][measure.dimension].find(
    (candidate) => compareRational(valueIn(measure, candidate.unit), candidate.from) >= 0,
  );
  invariant(chosen !== undefined, "the last step of a dimension takes any size");
  return { step: chosen, value: valueIn(measure, chosen.unit) };
}

function write(value: Rational, unit: Unit, decimals: number): WrittenQuantity {
  const figure = formatFigure(value, { decimals, quarters: isUsCustomary(unit) });
  if (figure === "0" && value.numerator > 0n) {
    const least = formatFigure({ numerator: 1n, denominator: 10n ** BigInt(decimals) }, { decimals, quarters: false });
    return { figure: `under ${least}`, unit: writtenUnit(unit, "one") };
  }
  return { figure, unit: writtenUnit(unit, compareRational(value, ONE) > 0 || figure === "0" ? "many" : "one") };
}

/** The quantity in the unit that suits its size, in two parts. Three to four figures; quarters are kept where exact. */
export function writeQuantity(measure: Measure<Dimension>, system: UnitSystem): WrittenQuantity {
  return writeFiner(measure, system, 0);
}

/** As {@link writeQuantity}, with so many more digits after the point. */
function writeFiner(measure: Measure<Dimension>, system: UnitSystem, moreDecimals: number): WrittenQuantity {
  const { step: chosen, value } = stepFor(measure, system);
  return write(value, chosen.unit, Math.min(sensibleDecimals(value), chosen.mostDecimals) + moreDecimals);
}

/** The quantity in a given unit of its dimension, with at most so many digits after the point, in two parts. */
export function writeQuantityIn<D extends Dimension>(
  measure: Measure<D>,
  unit: NoInfer<UnitOf<D>>,
  decimals?: number,
): WrittenQuantity {
  const value = measureInUnit<D>(measure, unit);
  return write(value, unit, decimals ?? sensibleDecimals(value));
}

/** "13½ lb", "24 fl oz", "8,250 sq ft", "2.3 kg": the unit by size, three to four figures, always the whole unit. */
export function formatQuantity(measure: Measure<Dimension>, system: UnitSystem): string {
  const { figure, unit } = writeQuantity(measure, system);
  return `${figure} ${unit}`;
}

/**
 * Two quantities that are put side by side, as {@link formatQuantity} says them; where they differ and would read the
 * same, with more digits until they differ: a sentence must not say that 5 gal are more than 5 gal.
 */
export function formatQuantitiesApart<D extends Dimension>(one: Measure<D>, other: Measure<D>, system: UnitSystem): readonly [string, string] {
  const words = (measure: Measure<D>, moreDecimals: number) => {
    const { figure, unit } = writeFiner(measure, system, moreDecimals);
    return `${figure} ${unit}`;
  };
  const isSame = compareRational(canonicalAmountOf(one), canonicalAmountOf(other)) === 0;
  return untilApart((moreDecimals) => [words(one, moreDecimals), words(other, moreDecimals)] as const, isSame);
}

/**
 * The first two figures that read differently, with more and more digits; those of one size with no more than they
 * take. Never ends for two that differ and always read the same.
 */
export function untilApart(written: (moreDecimals: number) => readonly [string, string], isSame: boolean): readonly [string, string] {
  let moreDecimals = 0;
  let pair = written(moreDecimals);
  while (!isSame && pair[0] === pair[1]) {
    moreDecimals += 1;
    pair = written(moreDecimals);
  }
  return pair;
}

/** The quantity in a given unit of its dimension: `formatQuantityIn(stock, "lb", 2)` for "1,250.25 lb". */
export function formatQuantityIn<D extends Dimension>(
  measure: Measure<D>,
  unit: NoInfer<UnitOf<D>>,
  decimals?: number,
): string {
  const { figure, unit: written } = writeQuantityIn(measure, unit, decimals);
  return `${figure} ${written}`;
}
