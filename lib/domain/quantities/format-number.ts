import { type Rational, roundToWhole, toDecimalString } from "#domain/quantities/rational";

/** The fractions that every font of the product has. Others are written as decimals. */
const QUARTERS: readonly string[] = ["", "\u00BC", "\u00BD", "\u00BE"];

/** How a figure is written. */
export interface FigureStyle {
  /** Digits after the point at most; trailing zeros are not written. */
  readonly decimals: number;
  /** Whether quarters are written as ¼ ½ ¾, as for measuring cups and scales in US units. */
  readonly quarters: boolean;
  /** Which way what can't be written whole goes; to the nearest where it is not said. */
  readonly rounding?: "up" | "down";
}

function withThousands(digits: string): string {
  return digits.length < 4 ? digits : digits.replace(/\B(?=(?:\d{3})+$)/gu, ",");
}

function withQuarter(value: Rational): string | undefined {
  const fourfold = value.numerator * 4n;
  if (fourfold % value.denominator !== 0n) return undefined;
  const quarters = fourfold / value.denominator;
  const character = QUARTERS[Number(quarters % 4n)];
  if (character === undefined || character === "") return undefined;
  const whole = quarters / 4n;
  return whole === 0n ? character : withThousands(whole.toString()) + character;
}

/** Writes a number from zero up: "13½", "1,250", "3.57". To the nearest, a tie up, or one way only. No trailing zeros. */
export function formatFigure(value: Rational, style: FigureStyle): string {
  const digits = toDecimalString(value, style.decimals, style.rounding ?? "nearest");
  if (style.quarters) {
    const rounded = { numerator: BigInt(digits.replace(".", "")), denominator: 10n ** BigInt(style.decimals) };
    const asQuarter = withQuarter(value) ?? withQuarter(rounded);
    if (asQuarter !== undefined) return asQuarter;
  }
  const [whole = "0", fraction = ""] = digits.split(".");
  const kept = fraction.replace(/0+$/u, "");
  return withThousands(whole) + (kept === "" ? "" : `.${kept}`);
}

/**
 * The digits after the point that keep three to four figures of a number from zero up: none from 1,000, one from 100,
 * two from 1, three from 0.1, and so on to six. Common practice.
 */
export function sensibleDecimals(value: Rational): number {
  const thousandfold = roundToWhole({ numerator: value.numerator * 1000n, denominator: value.denominator }, "down");
  if (thousandfold >= 1_000_000n) return 0;
  if (thousandfold >= 100_000n) return 1;
  if (thousandfold >= 1_000n) return 2;
  if (thousandfold >= 100n) return 3;
  if (thousandfold >= 10n) return 4;
  return thousandfold >= 1n ? 5 : 6;
}
