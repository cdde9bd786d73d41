import { settingInWords } from "#domain/equipment/dial";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { formatRate } from "#domain/quantities/format-rate";
import { compareRates, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import {
  addRational,
  compareRational,
  divideRational,
  multiplyRational,
  type Rational,
  reduce,
  subtractRational,
} from "#domain/quantities/rational";

type ProductRate = Rate<"product-mass-per-area">;

/** What one setting gave with one product. A dial with letters is entered by the place of its marks. */
export interface SettingTest {
  readonly product: string;
  readonly setting: Rational;
  readonly rate: ProductRate;
}

/** A setting between tested ones, and the tests that it lies between (one and the same where it was tested itself). */
export interface FoundSetting {
  readonly setting: Rational;
  readonly rate: ProductRate;
  readonly between: readonly [SettingTest, SettingTest];
}

type Tests = readonly [SettingTest, ...SettingTest[]];

/**
 * The setting for a wanted rate of one product, on the straight line between the two tested settings around it. Only
 * that product's tests count. Refused: a product that was not tested on this spreader and tests that contradict one
 * another (`tests`), a `rate` beyond the tested ones. The straight line is common practice.
 */
export function settingForRate(
  tests: readonly SettingTest[],
  product: string,
  wanted: ProductRate,
): Outcome<FoundSetting> {
  const own = orderedTests(tests, product);
  if (!own.ok) return own;
  const [lower, upper] = around(own.value, (test) => compareRates(test.rate, wanted));
  if (lower === undefined || upper === undefined) return refuseBeyond("rate", formatRate(wanted, "us"), own.value, product);
  const along = partOfWay(ratioOf(lower.rate), ratioOf(upper.rate), ratioOf(wanted));
  return accept({ setting: onTheWay(lower.setting, upper.setting, along), rate: wanted, between: [lower, upper] });
}

/**
 * The rate that a setting gives with one product. Refused as settingForRate refuses, and a `setting` beyond the tested
 * ones.
 */
export function rateAtSetting(tests: readonly SettingTest[], product: string, setting: Rational): Outcome<FoundSetting> {
  const own = orderedTests(tests, product);
  if (!own.ok) return own;
  const [lower, upper] = around(own.value, (test) => compareRational(test.setting, setting));
  if (lower === undefined || upper === undefined) return refuseBeyond("setting", settingInWords(setting), own.value, product);
  const along = partOfWay(lower.setting, upper.setting, setting);
  const { numerator, denominator } = onTheWay(ratioOf(lower.rate), ratioOf(upper.rate), along);
  const rate = rateFromAmounts("product-mass-per-area", numerator, denominator);
  return accept({ setting, rate, between: [lower, upper] });
}

/** The tests of one product by setting. A wider setting must give more, or the tests contradict one another. */
function orderedTests(tests: readonly SettingTest[], product: string): Outcome<Tests> {
  const [first, ...rest] = tests
    .filter((test) => test.product === product)
    .sort((left, right) => compareRational(left.setting, right.setting));
  if (first === undefined) {
    const sentence = `${product} has not been tested on this spreader. Another product's settings say nothing about it.`;
    return missingFact("tests", "a test of this product", sentence);
  }
  let before = first;
  for (const test of rest) {
    const isWider = compareRational(test.setting, before.setting) > 0;
    if (!isWider || compareRates(test.rate, before.rate) <= 0) {
      const found = `${settingInWords(before.setting)} and ${settingInWords(test.setting)}`;
      const sentence = isWider
        ? `With ${product}, setting ${settingInWords(test.setting)} gave no more than ${settingInWords(before.setting)}. Test both again.`
        : `With ${product}, setting ${settingInWords(test.setting)} was tested twice. Keep the test that holds.`;
      return badInput("tests", found, "one test a setting, and more from a wider one", sentence);
    }
    before = test;
  }
  return accept([first, ...rest]);
}

/** The last test at or below what is asked, and the first at or above it; undefined where there is none. */
function around(
  tests: Tests,
  compare: (test: SettingTest) => number,
): readonly [SettingTest | undefined, SettingTest | undefined] {
  return [tests.findLast((test) => compare(test) <= 0), tests.find((test) => compare(test) >= 0)];
}

function partOfWay(from: Rational, to: Rational, at: Rational): Rational {
  const way = subtractRational(to, from);
  return way.numerator === 0n ? way : divideRational(subtractRational(at, from), way);
}

function onTheWay(from: Rational, to: Rational, part: Rational): Rational {
  return reduce(addRational(from, multiplyRational(subtractRational(to, from), part)));
}

function ratioOf(rate: ProductRate): Rational {
  return { numerator: rate.amount, denominator: rate.per };
}

function refuseBeyond(field: "rate" | "setting", found: string, tests: Tests, product: string) {
  const last = tests.at(-1) ?? tests[0];
  const allowed =
    field === "rate"
      ? `from ${formatRate(tests[0].rate, "us")} to ${formatRate(last.rate, "us")}`
      : `from ${settingInWords(tests[0].setting)} to ${settingInWords(last.setting)}`;
  const sentence = `${product} was tested ${allowed} only; ${found} lies beyond. Test a setting nearer to it.`;
  return badInput(field, found, allowed, sentence);
}
