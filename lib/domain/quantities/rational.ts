import { invariant } from "#domain/foundation/invariant";

/**
 * An exact fraction of whole numbers. The denominator is above zero. It is not kept in lowest terms, because most
 * fractions are made, used once and dropped: call {@link reduce} before one is stored, printed or summed many times.
 */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/**
 * How a fraction becomes a whole number. `nearest` takes a tie away from zero, `half-even` takes it to the even
 * neighbor, `down` goes towards minus infinity and `up` towards plus infinity.
 */
export type RoundingMode = "nearest" | "half-even" | "down" | "up";

/** Nothing, as a fraction. */
export const ZERO: Rational = { numerator: 0n, denominator: 1n };
/** A whole, as a fraction. */
export const ONE: Rational = { numerator: 1n, denominator: 1n };

/** Makes a fraction. The sign moves to the numerator. Throws when the denominator is zero. */
export function rational(numerator: bigint, denominator = 1n): Rational {
  invariant(denominator !== 0n, "the denominator of a fraction is not zero");
  if (denominator < 0n) return { numerator: -numerator, denominator: -denominator };
  return { numerator, denominator };
}

const PLAIN_DECIMAL = /^(-?)(\d+)(?:\.(\d+))?$/;

/**
 * Reads a plain decimal such as "0.8" or "-12.50", exactly, for numbers that stand in code or in storage.
 * Throws on anything else; what a person typed goes through parseNumber.
 */
export function decimal(text: string): Rational {
  const match = PLAIN_DECIMAL.exec(text);
  invariant(match !== null, `"${text}" is a plain decimal number`);
  const [, sign = "", whole = "", fraction = ""] = match;
  const magnitude = BigInt(whole + fraction);
  return { numerator: sign === "-" ? -magnitude : magnitude, denominator: 10n ** BigInt(fraction.length) };
}

/**
 * Turns a measured or computed floating point number into a fraction, at an expressly stated number of decimal
 * places (0 to 15). Throws on NaN, infinity and numbers too large to have whole-number precision.
 */
export function fromNumber(value: number, decimalPlaces: number): Rational {
  invariant(Number.isFinite(value), "a number that becomes a fraction is finite");
  invariant(Math.abs(value) < Number.MAX_SAFE_INTEGER, "a number that becomes a fraction is a safe one");
  invariant(
    Number.isInteger(decimalPlaces) && decimalPlaces >= 0 && decimalPlaces <= 15,
    "decimal places are a whole number from 0 to 15",
  );
  return decimal(value.toFixed(decimalPlaces));
}

/** A floating point number, right to 15 figures, for drawing and for physical models; never for stock or a limit. */
export function toNumber(value: Rational): number {
  const { numerator, denominator } = reduce(value);
  return Number(numerator) / Number(denominator);
}

/** Greatest common divisor of two whole numbers, of which at least one is not zero. */
export function greatestCommonDivisor(left: bigint, right: bigint): bigint {
  let larger = left < 0n ? -left : left;
  let smaller = right < 0n ? -right : right;
  while (smaller > GREATEST_SAFE || larger > GREATEST_SAFE) {
    if (smaller === 0n) return larger;
    [larger, smaller] = [smaller, larger % smaller];
  }
  return BigInt(divisorOfSafe(Number(larger), Number(smaller)));
}

const GREATEST_SAFE = BigInt(Number.MAX_SAFE_INTEGER);

/** The rest of the way in plain numbers, which are exact up to there and several times as fast as large ones. */
function divisorOfSafe(left: number, right: number): number {
  let [larger, smaller] = [left, right];
  while (smaller !== 0) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}

/** The same fraction in lowest terms. */
export function reduce(value: Rational): Rational {
  if (value.denominator === 1n) return value;
  const divisor = greatestCommonDivisor(value.numerator, value.denominator);
  if (divisor === 1n) return value;
  return { numerator: value.numerator / divisor, denominator: value.denominator / divisor };
}

/** The sum, exactly. Not in lowest terms: see {@link reduce}. */
export function addRational(left: Rational, right: Rational): Rational {
  if (left.denominator === right.denominator) {
    return { numerator: left.numerator + right.numerator, denominator: left.denominator };
  }
  return {
    numerator: left.numerator * right.denominator + right.numerator * left.denominator,
    denominator: left.denominator * right.denominator,
  };
}

/** The same distance on the other side of zero. */
export function negateRational(value: Rational): Rational {
  return { numerator: -value.numerator, denominator: value.denominator };
}

/** Left less right, exactly; below zero when right is the larger. */
export function subtractRational(left: Rational, right: Rational): Rational {
  return addRational(left, negateRational(right));
}

/** The product, exactly. Not in lowest terms: see {@link reduce}. */
export function multiplyRational(left: Rational, right: Rational): Rational {
  return {
    numerator: left.numerator * right.numerator,
    denominator: left.denominator * right.denominator,
  };
}

/** Divides exactly. Throws when the divisor is zero. */
export function divideRational(left: Rational, right: Rational): Rational {
  return rational(left.numerator * right.denominator, left.denominator * right.numerator);
}

/** Below zero when left is the smaller, zero when they are equal, above zero when left is the larger. */
export function compareRational(left: Rational, right: Rational): -1 | 0 | 1 {
  const leftScaled = left.numerator * right.denominator;
  const rightScaled = right.numerator * left.denominator;
  if (leftScaled < rightScaled) return -1;
  return leftScaled > rightScaled ? 1 : 0;
}

/** Divides two whole numbers (divisor above zero) to a whole number by a named mode. */
export function roundQuotient(dividend: bigint, divisor: bigint, mode: RoundingMode): bigint {
  const truncated = dividend / divisor;
  const remainder = dividend - truncated * divisor;
  if (remainder === 0n) return truncated;
  const negative = remainder < 0n;
  switch (mode) {
    case "down":
      return negative ? truncated - 1n : truncated;
    case "up":
      return negative ? truncated : truncated + 1n;
    case "nearest":
    case "half-even": {
      const twice = 2n * (negative ? -remainder : remainder);
      const goesAway = twice > divisor || (twice === divisor && (mode === "nearest" || truncated % 2n !== 0n));
      if (!goesAway) return truncated;
      return negative ? truncated - 1n : truncated + 1n;
    }
  }
}

/** The fraction as a whole number, by a named mode. */
export function roundToWhole(value: Rational, mode: RoundingMode): bigint {
  return roundQuotient(value.numerator, value.denominator, mode);
}

/**
 * The fraction with exactly this many digits after the point, by a named mode, such as "21.43" for 150/7 at two. Zero
 * never carries a minus sign. Throws where the digits are not a whole number from zero up.
 */
export function toDecimalString(value: Rational, digits: number, mode: RoundingMode): string {
  invariant(Number.isInteger(digits) && digits >= 0, "digits after the point are a whole number from 0");
  const scaled = roundQuotient(value.numerator * 10n ** BigInt(digits), value.denominator, mode);
  const sign = scaled < 0n ? "-" : "";
  const figures = (scaled < 0n ? -scaled : scaled).toString().padStart(digits + 1, "0");
  if (digits === 0) return sign + figures;
  return `${sign}${figures.slice(0, -digits)}.${figures.slice(-digits)}`;
}
