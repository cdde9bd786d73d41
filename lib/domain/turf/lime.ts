import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type ExactValue, exactValue } from "#domain/quantities/quantity";
import { type Rate, rateOf, scaleRate } from "#domain/quantities/rate";
import { compareRational, decimal, type Rational, toDecimalString } from "#domain/quantities/rational";
import { type SplitRate, splitRate } from "#domain/turf/split-rate";

/** The pH that the lime is to bring the soil to: the three columns of the table. */
export type TargetPh = "7.0" | "6.5" | "6.0";

/** How the lab found the lime requirement. A table serves one method only. */
export type LimeTest =
  | {
      readonly method: "Mehlich buffer, exchangeable acidity";
      /** Milliequivalents per 100 g of soil, as on the lab's report. */
      readonly exchangeableAcidity: Rational;
    }
  | { readonly method: "another"; readonly name: string };

type Row = readonly [acidity: string, to7: string, to65: string, to6: string];

/**
 * Lime in lb of calcium carbonate equivalent per 1,000 sq ft, by exchangeable acidity. Source: Penn State Agricultural
 * Analytical Services Laboratory, turf handbook, Table 1 "Lime Recommendation",
 * https://agsci.psu.edu/aasl/soil-testing/fertility/handbooks/turf/tables/lime-recommendations-turf
 */
const TABLE: readonly Row[] = [
  ["2.0", "50", "50", "50"],
  ["2.6", "70", "50", "50"],
  ["3.3", "70", "50", "50"],
  ["3.9", "90", "70", "50"],
  ["4.6", "110", "70", "50"],
  ["5.2", "110", "90", "50"],
  ["5.8", "140", "90", "50"],
  ["6.5", "160", "110", "70"],
  ["7.1", "160", "110", "90"],
  ["7.8", "180", "140", "90"],
  ["8.4", "180", "140", "110"],
  ["9.0", "210", "160", "110"],
  ["9.7", "230", "180", "140"],
  ["10.3", "230", "180", "140"],
  ["11.0", "250", "210", "160"],
  ["11.6", "280", "210", "160"],
  ["12.3", "280", "230", "180"],
  ["12.9", "300", "250", "180"],
  ["13.5", "320", "250", "210"],
  ["14.2", "320", "280", "210"],
  ["14.8", "340", "280", "230"],
  ["15.5", "370", "300", "230"],
  ["16.1", "370", "320", "250"],
  ["16.8", "390", "320", "250"],
  ["17.4", "390", "340", "280"],
  ["18.0", "410", "340", "280"],
  ["18.7", "440", "370", "300"],
  ["19.3", "440", "390", "300"],
  ["20.0", "460", "390", "320"],
  ["20.6", "480", "410", "320"],
  ["21.2", "480", "410", "340"],
  ["21.9", "510", "460", "340"],
  ["22.5", "530", "460", "370"],
  ["23.2", "530", "460", "370"],
  ["23.8", "550", "480", "390"],
  ["24.5", "570", "480", "390"],
  ["25.1", "570", "510", "410"],
  ["25.7", "600", "530", "410"],
];

const COLUMN = { "7.0": 1, "6.5": 2, "6.0": 3 } as const satisfies Readonly<Record<TargetPh, number>>;

const LIME_TABLE_SOURCE =
  "Penn State Agricultural Analytical Services Laboratory, turf handbook, Table 1, Lime Recommendation";

/** What the table recommends, and by which row. */
export interface LimeRecommendation {
  /** As if the material were pure calcium carbonate. */
  readonly calciumCarbonateEquivalent: Rate<"product-mass-per-area">;
  /** The acidity of the row that was used, which is at or below the one reported. */
  readonly rowAcidity: Rational;
  readonly source: string;
}

/**
 * The lime that the Penn State table recommends. Between two rows the one below is used, because lime that was spread
 * can't be taken up again. Refused: a test by another method ("lime test"), and an acidity outside the table
 * ("exchangeable acidity"). Source: as for the table.
 */
export function recommendLime(test: LimeTest, target: TargetPh): Outcome<LimeRecommendation> {
  if (test.method === "another") {
    return badInput(
      "lime test",
      test.name,
      "Mehlich buffer, exchangeable acidity",
      `There is no lime table on file for ${test.name}. Enter the lab's own recommendation.`,
    );
  }
  const acidity = test.exchangeableAcidity;
  const row = TABLE.findLast(([from]) => compareRational(decimal(from), acidity) <= 0);
  const last = TABLE.at(-1);
  invariant(last !== undefined, "the lime table has rows");
  if (row === undefined || compareRational(acidity, decimal(last[0])) > 0) {
    const found = toDecimalString(acidity, 1, "nearest");
    return badInput(
      "exchangeable acidity",
      found,
      "2.0 to 25.7 meq per 100 g",
      `The lime table goes from 2.0 to 25.7 meq per 100 g; it says nothing about ${found}.`,
    );
  }
  return accept({
    calciumCarbonateEquivalent: rateOf("product-mass-per-area", row[COLUMN[target]], "lb per 1,000 sq ft"),
    rowAcidity: decimal(row[0]),
    source: LIME_TABLE_SOURCE,
  });
}

/**
 * The liming material that does the work of so much calcium carbonate: more where its equivalent is under 100 percent,
 * less where it is above. Refused ("calcium carbonate equivalent") at zero, and above 250: magnesium oxide, the
 * strongest, has 248 (from its molar mass). Source of the way: Penn State, as for the table.
 */
export function limingMaterialFor(
  calciumCarbonateEquivalent: Rate<"product-mass-per-area">,
  equivalentPercent: ExactValue,
): Outcome<Rate<"product-mass-per-area">> {
  const percent = exactValue(equivalentPercent);
  if (percent.numerator <= 0n || compareRational(percent, decimal("250")) > 0) {
    const found = `${toDecimalString(percent, 1, "nearest")}%`;
    return badInput(
      "calcium carbonate equivalent",
      found,
      "above 0 and at most 250 percent",
      `No liming material has a calcium carbonate equivalent of ${found}.`,
    );
  }
  return accept(
    scaleRate(calciumCarbonateEquivalent, { numerator: percent.denominator * 100n, denominator: percent.numerator }),
  );
}

/** The most lime for one surface application, and how long to wait. Sources disagree: the company chooses one. */
export interface LimeCap {
  readonly perApplication: Rate<"product-mass-per-area">;
  readonly monthsApart: { readonly least: number; readonly most: number };
  readonly source: string;
}

/** The published caps, to choose from. Nothing here is taken when none is chosen. */
export const publishedLimeCaps: readonly LimeCap[] = [
  {
    perApplication: rateOf("product-mass-per-area", "100", "lb per 1,000 sq ft"),
    monthsApart: { least: 4, most: 6 },
    source:
      "Penn State Agricultural Analytical Services Laboratory, Home Lawn - Maintain, https://agsci.psu.edu/aasl/online-report/home-lawn-maintain",
  },
  {
    perApplication: rateOf("product-mass-per-area", "50", "lb per 1,000 sq ft"),
    monthsApart: { least: 6, most: 6 },
    source: "NC State Extension agent, Lee County, as quoted at https://www.jackjeffcoat.com/1182.news",
  },
];

/** A rate of liming material in equal applications, with the cap that they keep to. */
export interface LimeSplit extends SplitRate<"product-mass-per-area"> {
  readonly cap: LimeCap;
}

/**
 * Splits a rate of liming material into equal applications, as few as the cap allows. The cap is held against the
 * material as it is spread, which for a material under 100 percent is the stricter reading. Throws at a cap of zero.
 */
export function splitLime(material: Rate<"product-mass-per-area">, cap: LimeCap): LimeSplit {
  return { ...splitRate(material, cap.perApplication), cap };
}
