import { spreadSentence } from "#domain/equipment/calibration-working";
import { effectiveSwath, type PanLine } from "#domain/equipment/pan-line";
import { type DrivingPattern, judgeVariation, overlappedCatches, searchSwaths, type SwathSearch, USUAL_VARIATION_LIMIT, variationAtSwath, type WidthVariation } from "#domain/equipment/spread-pattern";
import { rateFromCollected, ratePerPass, type SpreaderPasses, type SpreaderRate } from "#domain/equipment/spreader-calibration";
import { judgeRate, SPREADER_TOLERANCE } from "#domain/equipment/target-rate";
import { readSpreaderTest, typedLines } from "#domain/equipment/typed-test";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { conversionLines, figure, inUnit, perThousand, unitOf } from "#domain/mixing/ticket-working-words";
import { type ExactQuantity, type Measure, sumExact } from "#domain/quantities/exact-quantity";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { listParts } from "#domain/quantities/list-parts";
import { rateIn, times } from "#domain/quantities/rate";
import { fromNumber, type Rational } from "#domain/quantities/rational";
import { type Unit } from "#domain/quantities/units";
import { acreLines, amountBothWays, amountWords, areaInput, averageLines, numberWords, rateBothWays, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { panLines } from "#domain/worksheets/pan-lines";
import { ifTyped, readAmountField, readChoice, readListField, readNumberField, readRateField, readTogether, refuseEmpty, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

const SPREADER_PASSES = ["one-pass", "two-passes-crosswise"] as const satisfies readonly SpreaderPasses[];
const DRIVING_PATTERNS = ["round-and-round", "back-and-forth"] as const satisfies readonly DrivingPattern[];

/** The fields of a test area. */
export type TestAreaField = "area" | "collected" | "wanted" | "passes";
/** The fields of a line of pans. */
export type PanLineField = "spacing" | "catches" | "swath" | "pattern";

const UMASS = "UMass Extension, Rotary Spreader Calibration, https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures";
const ARIZONA = "Kopec, University of Arizona (April 1999), http://turf.arizona.edu/tips499.htm";
const OHIO = "Ohio State Bulletin 817, http://ohioline.osu.edu/b817/b817_13.html";

export const TEST_AREA_EXAMPLE: WorksheetExample<TestAreaField> = {
  typed: { area: "125 sq ft", collected: "5 oz wt", wanted: "5 lb per 1,000 sq ft", passes: "two-passes-crosswise" },
  from: `${ARIZONA} (a 30 in hopper over 50 ft is 125 sq ft); ${UMASS} (5 lb in two passes of 2.5 lb). The catch is made up to fit`,
};
export const PAN_LINE_EXAMPLE: WorksheetExample<PanLineField> = {
  typed: { spacing: "2 ft", catches: "0, 1, 2, 3, 4, 4, 4, 3, 2, 1, 0", swath: "", pattern: "round-and-round" },
  from: `${OHIO} (4 in of product in the middle, 2 in at 6 ft on either side). The vials between are made up to fit`,
};

/**
 * A spreader over a measured area: what it gave, over that area, held against the wanted rate of a pass within 5
 * percent. Refused by field: what is missing or can't be read, and what rateFromCollected refuses.
 */
export function testAreaWorksheet(typed: Typed<TestAreaField>): WorksheetOutcome {
  const read = readTogether({
    area: refuseEmpty({ field: "area", what: "the test area", such: "1,000 sq ft" }, typed.area) ?? accept(undefined),
    collected: refuseEmpty({ field: "collected", what: "what the spreader gave", such: "3.5 lb" }, typed.collected) ?? accept(undefined),
    wanted: ifTyped(typed.wanted, (text) =>
      readRateField({ field: "wanted", what: "the wanted rate", such: "3.5 lb per 1,000 sq ft" }, text, { bases: ["product-mass-per-area"], unitWhenNone: "lb per 1,000 sq ft" }),
    ),
    passes: readChoice("passes", typed.passes, SPREADER_PASSES),
  });
  if (!read.ok) return read;
  const runs = readSpreaderTest({ area: typed.area, collected: typed.collected });
  if (!runs.ok) return refuseOne(runs.refusal);
  const found = rateFromCollected(runs.value);
  if (!found.ok) return refuseOne(found.refusal);
  const { rate } = found.value;
  const testArea = runs.value[0]?.area;
  invariant(testArea !== undefined, "a spreader's rate is of one run or more");
  const { wanted, passes } = read.value;
  const perPass = wanted === undefined ? undefined : ratePerPass(wanted, passes);
  const judged = perPass === undefined ? undefined : judgeRate("The spreader", rate, perPass, SPREADER_TOLERANCE);
  const wantedSteps =
    wanted === undefined || perPass === undefined
      ? []
      : [passes === "one-pass" ? `Wanted in one pass: ${stepRate(perPass, "lb")}.` : `Wanted in each of two passes: ${perThousand(wanted, "lb")} ÷ 2 = ${stepRate(perPass, "lb")}.`];
  return accept({
    answers: [{ figure: numberWords(rateIn(rate, "lb per 1,000 sq ft")), unit: "lb per 1,000 sq ft", of: "at this setting, in one pass" }],
    working: {
      title: "Spreader rate at this setting",
      formula: "Rate = what the spreader gave ÷ the test area × 1,000 sq ft.",
      inputs: [
        { name: "Test area (swath × course)", figure: areaInput(testArea, typed.area) },
        { name: "Given in a run", figure: givenWords(found.value, testArea, typedLines(typed.collected)) },
        ...(wanted === undefined ? [] : [{ name: "Wanted on the lawn", figure: withTyped(stepRate(wanted, "lb"), typed.wanted) }]),
      ],
      steps: [...acreLines(testArea, typed.area), ...givenLines(found.value, testArea), ...wantedSteps, ...(judged?.findings.length === 0 ? ["It is within 5% of what is wanted: the setting holds."] : [])],
      result: `${rateBothWays(rate)}. ${spreadSentence(found.value.uncertainty)}`,
      source: UMASS,
    },
    findings: judged?.findings ?? [],
    tables: [],
  });
}

/** Runs are added up in pounds, or in ounces where one run on average is less than a pound. */
function runUnit({ rate }: SpreaderRate, area: Measure<"area">): Unit {
  return unitOf(times(rate, area));
}

function givenWords(found: SpreaderRate, area: Measure<"area">, typed: readonly string[]): string {
  const unit = runUnit(found, area);
  return found.runs.map(({ collected }, place) => withTyped(inUnit(collected, unit), typed[place] ?? "")).join(", ");
}

/** From what was given to the rate on 1,000 sq ft. */
function givenLines(found: SpreaderRate, area: Measure<"area">): readonly string[] {
  const { rate, runs } = found;
  const unit = runUnit(found, area);
  const average = times(rate, area);
  const all = sumExact("mass", runs.map(({ collected }) => collected));
  return [
    ...averageLines("runs", runs.map(({ collected }) => inUnit(collected, unit)), inUnit(all, unit), inUnit(average, unit)),
    ...conversionLines(average, unit, "lb").map((line) => `In pounds: ${line}.`),
    `Rate: ${inUnit(average, "lb")} ÷ ${inUnit(area, "sq ft")} × 1,000 sq ft = ${stepRate(rate, "lb")}.`,
  ];
}

function readCatches(text: string): Outcome<readonly Rational[]> {
  const ask = { field: "catches", what: "what each pan caught", such: "0, 1, 3, 4, 3, 1, 0" };
  const read = readListField(ask, listParts(text), (part) => readNumberField(ask, part, { lowest: "0", highest: "10000", unit: "" }));
  if (!read.ok || read.value.length % 2 === 1) return read;
  return badInput("catches", `${read.value.length} pans`, "an odd number of pans", `These are ${read.value.length} pans. With one pan under the middle and as many on either side the number is odd.`);
}

const TO_PAN_FIELD: Readonly<Record<string, PanLineField>> = { middle: "catches", catches: "catches", spacing: "spacing", swath: "swath" };

function atPanField(refusal: InputRefusal) {
  return refuseOne({ ...refusal, field: TO_PAN_FIELD[refusal.field] ?? "catches" });
}

/**
 * A line of pans: the effective swath, how even the lawn comes out at it (or at the swath that was typed), and which
 * swaths are even enough. Passes go by the effective swath only where that is one of them. The middle pan stands under the spreader. Refused by field: what is missing or can't be read,
 * an even number of pans, and what effectiveSwath and overlappedCatches refuse.
 */
export function panLineWorksheet(typed: Typed<PanLineField>): WorksheetOutcome {
  const read = readTogether({
    spacing: readAmountField({ field: "spacing", what: "how far apart the pans are", such: "1 ft" }, typed.spacing, { dimension: "length", unitWhenNone: "ft" }),
    catches: readCatches(typed.catches),
    swath: ifTyped(typed.swath, (text) => readAmountField({ field: "swath", what: "the swath", such: "12 ft" }, text, { dimension: "length", unitWhenNone: "ft" })),
    pattern: readChoice("pattern", typed.pattern, DRIVING_PATTERNS),
  });
  if (!read.ok) return read;
  const { spacing, catches, pattern } = read.value;
  const line: PanLine = { spacing, catches, middle: (catches.length - 1) / 2 };
  const effective = effectiveSwath(line);
  if (!effective.ok) return atPanField(effective.refusal);
  const swath = read.value.swath ?? effective.value.swath;
  const [overlapped, variation, search] = [overlappedCatches(line, swath, pattern), variationAtSwath(line, swath, pattern), searchSwaths(line, pattern, USUAL_VARIATION_LIMIT.percent)];
  if (!overlapped.ok) return atPanField(overlapped.refusal);
  if (!variation.ok) return atPanField(variation.refusal);
  if (!search.ok) return atPanField(search.refusal);
  const variationWords = percentWords(variation.value.variationPercent);
  return accept({
    answers: [
      { ...writeQuantity(effective.value.swath, "us"), of: `effective swath: ${passesWords(variationAtSwath(line, effective.value.swath, pattern), search.value)}` },
      { figure: variationWords, unit: "CV", of: `at a swath of ${amountWords(swath)}; 15% or less is even enough` },
    ],
    working: {
      title: "Swath and evenness from a line of pans",
      formula: "Effective swath = distance from where half of the middle's catch falls on the left to where it falls on the right. CV = 100 × standard deviation ÷ average of the overlapped catches.",
      inputs: [
        { name: "Pans apart, middle to middle", figure: withTyped(inUnit(spacing, "ft"), typed.spacing) },
        { name: "Caught, from left to right", figure: catches.map(figure).join(", ") },
        ...(read.value.swath === undefined ? [] : [{ name: "Swath", figure: withTyped(inUnit(swath, "ft"), typed.swath) }]),
        { name: "Passes", figure: pattern === "back-and-forth" ? "back and forth" : "round and round" },
      ],
      steps: panLines({ line, swath, effective: effective.value, pattern, overlapped: overlapped.value }),
      result: `Swath ${amountBothWays(effective.value.swath)}; CV ${variationWords} at ${amountWords(swath)}. ${acceptedWords(search.value)}`,
      source: `${OHIO}; ${USUAL_VARIATION_LIMIT.citation}`,
    },
    findings: [...effective.value.findings, ...judgeVariation(variation.value, USUAL_VARIATION_LIMIT)],
    tables: [
      {
        caption: "How even it comes out at other swaths",
        columns: [{ head: "Swath", align: "figure" }, { head: "CV", align: "figure" }, { head: "Even enough", align: "word" }],
        rows: search.value.table.map(({ swath: tried, variationPercent }) => [amountWords(tried), percentWords(variationPercent), variationPercent <= USUAL_VARIATION_LIMIT.percent ? "yes" : "no"]),
      },
    ],
  });
}

function percentWords(percent: number): string {
  return `${numberWords(fromNumber(Math.round(percent * 10) / 10, 1))}%`;
}

/** Whether the passes go by the effective swath: only where the lawn comes out even at it. */
function passesWords(atEffective: Outcome<WidthVariation>, search: SwathSearch): string {
  const isEven = atEffective.ok && atEffective.value.variationPercent <= USUAL_VARIATION_LIMIT.percent;
  if (isEven) return "make the passes this far apart";
  const uneven = atEffective.ok ? `not even enough, with a CV of ${percentWords(atEffective.value.variationPercent)}` : "too narrow for pans this far apart to show how even it comes out";
  const ranges = acceptedRanges(search);
  return ranges.length === 0 ? `${uneven}. No swath is: set the spreader anew before it goes on a lawn` : `${uneven}. Make the passes ${ranges.join(" or ")} apart`;
}

function acceptedWords(search: SwathSearch): string {
  const ranges = acceptedRanges(search);
  return ranges.length === 0 ? "No swath is even enough." : `Even enough: ${ranges.join("; ")}.`;
}

function acceptedRanges({ accepted }: SwathSearch): readonly string[] {
  const range = (from: ExactQuantity<"length">, to: ExactQuantity<"length">) => (amountWords(from) === amountWords(to) ? amountWords(from) : `${amountWords(from)} to ${amountWords(to)}`);
  return accepted.map(({ from, to }) => range(from as ExactQuantity<"length">, to as ExactQuantity<"length">));
}
