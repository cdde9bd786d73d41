import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { formatFigure } from "#domain/quantities/format-number";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { compareRational, multiplyRational, ONE, type Rational, rational, reduce } from "#domain/quantities/rational";

/** A hundredth of a percent is as fine as anybody states a part of a lawn (common practice). */
const BASIS_POINTS = 10_000n;
/** The share of what goes all over a lawn, in hundredths of a percent. */
export const WHOLE_LAWN = 10_000;

/** The share as a part of one. Shares are whole hundredths of a percent; others throw. */
export function partOfShare(shareBasisPoints: number): Rational {
  return reduce(rational(BigInt(shareBasisPoints), BASIS_POINTS));
}

/** "5%", "2.5%", "0.25%", from a share in hundredths of a percent. */
export function shareWords(shareBasisPoints: number): string {
  return `${formatFigure(rational(BigInt(shareBasisPoints), 100n), { decimals: 2, quarters: false })}%`;
}

/** The share as a form's field has it; empty where none was stated. */
export function typedShareOf(shareBasisPoints: number | null | undefined): string {
  return typeof shareBasisPoints === "number" ? shareWords(shareBasisPoints) : "";
}

/** What follows a rate in words: " on spots, 5% of the lawn", " on the whole lawn"; nothing where no share was stated. */
export function onSpotsWords(shareBasisPoints: number | null | undefined): string {
  if (typeof shareBasisPoints !== "number") return "";
  return shareBasisPoints === WHOLE_LAWN ? " on the whole lawn" : ` on spots, ${shareWords(shareBasisPoints)} of the lawn`;
}

/** A percentage by its sign or its word, as the text ends with it. */
export const PERCENT_SIGN = / ?(?:%|percent|pct)$/iu;

/**
 * What is to be written instead of a figure under one without a sign: "1/2" and "0.48" may be half a percent and half of
 * the whole. Undefined where the figure is none such, or nothing at all.
 */
export function askPartOrPercent(text: string, value: Rational): string | undefined {
  if (PERCENT_SIGN.test(plainCharacters(text)) || value.numerator === 0n || compareRational(value, ONE) >= 0) return undefined;
  const words = (percent: Rational) => `${formatFigure(percent, { decimals: 4, quarters: false })}%`;
  return `"${text.trim()}" may be ${words(value)} or ${words(multiplyRational(value, rational(100n)))}. Write the one that is meant, with its sign.`;
}

/**
 * Reads a share of a lawn as people type it: "5", "5 %", "2.5 percent". In hundredths of a percent.
 * Refused: nothing typed, none of it, more than all of it, more figures than hundredths of a percent have, and a figure
 * under one without its sign, which may be a part of one ("1/2").
 */
export function parseShare(field: string, text: string): Outcome<number> {
  const found = text.trim();
  const allowed = "above 0 and at most 100 percent";
  if (found === "") return missingFact(field, allowed, "Say how much of the lawn it goes on, such as 5%.");
  const ofWhat = plainCharacters(found).replace(/ of the (?:lawn|area)$/iu, "");
  const percent = parseNumber(field, ofWhat.replace(PERCENT_SIGN, ""));
  if (!percent.ok) return badInput(field, found, allowed, `"${found}" is no share of a lawn. Write it as in 5%.`);
  if (percent.value.numerator <= 0n) return badInput(field, found, allowed, "Nothing of the lawn is none of this work.");
  if (compareRational(percent.value, rational(100n)) > 0) return badInput(field, found, allowed, `"${found}" is more than the whole lawn.`);
  const question = askPartOrPercent(ofWhat, percent.value);
  if (question !== undefined) return badInput(field, found, allowed, question);
  const points = multiplyRational(percent.value, rational(100n));
  if (points.numerator % points.denominator !== 0n) return badInput(field, found, allowed, "Write at most two figures after the point, as in 2.25%.");
  return accept(Number(points.numerator / points.denominator));
}
