import { lowCans, measureStation } from "#domain/equipment/catch-can-test";
import { averageMeasure } from "#domain/equipment/repeats";
import { isEmptyCan } from "#domain/equipment/station-test";
import { type Finding } from "#domain/foundation/finding";
import { accept, badInput, type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { type WorkingInput } from "#domain/foundation/working";
import { depthFrom, depthWords, exactMinutes, type IrrigationStation, irrigationRun, type StationRun } from "#domain/mixing/irrigation-run";
import { figure, inUnit, sumLine } from "#domain/mixing/ticket-working-words";
import { compareExact, type ExactQuantity, fromExactAmount, measureInUnit, multiplyExact, sumExact } from "#domain/quantities/exact-quantity";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { lengthParts } from "#domain/quantities/list-of-lengths";
import { compareRational, divideRational, type Rational, rational, reduce, roundToWhole, toNumber } from "#domain/quantities/rational";
import { stepPercent, withTyped } from "#domain/worksheets/figure-words";
import { type FieldAsk, ifTyped, readAmountField, readListField, readNumberField, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorkedWorksheet, type WorksheetAnswer, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

type Cycle = "longestRun" | "soak";
/** The fields of minutes by a known rate. */
export type KnownRateField = "depth" | "rate" | Cycle;
/** The fields of minutes by catch cans. */
export type CansField = "depth" | "cans" | "minutes" | "wind" | Cycle;

const KLICKITAT = "Klickitat PUD, https://www.kpud.org/sprinklerRates.php";
const CALCADY = "https://calcady.com/trade/landscaping/precipitation-rate";
const NMSU = "New Mexico State University Guide H-510 (Kent and Leinauer)";
const NC_STATE = "spreval (Grabow, NC State), https://glgrabow.github.io/spreval/reference/DU.html";

export const KNOWN_RATE_EXAMPLE: WorksheetExample<KnownRateField> = {
  typed: { depth: "1/2 in", rate: "1.28 in per hour", longestRun: "12", soak: "30" },
  from: `${CALCADY} (1.28 in an hour, 1/2 in: 23.4 min; run 12, soak 30, run 12)`,
};
export const CANS_EXAMPLE: WorksheetExample<CansField> = {
  typed: { depth: "1/4 in", cans: "0.20, 0.25, 0.22, 0.18, 0.24, 0.23, 0.19, 0.25", minutes: "15", wind: "3", longestRun: "", soak: "" },
  from: "made up",
};

const STATION = "The station";
const MINUTES = { lowest: "1", highest: "1440", unit: "min", isWhole: true } as const;

type Length = ExactQuantity<"length">;

/** A foot of water at once, and as much in an hour, is beyond every lawn and every sprinkler (common practice): a unit is wrong. */
const MOST_WATER = rational(12n);
/** A station that would have to run longer than a day for a depth is no answer: its rate or the depth is wrong (common practice). */
const LONGEST_RUN_MINUTES = 1440;

function upToAFoot(ask: FieldAsk, text: string, read: Outcome<Length>): Outcome<Length> {
  if (!read.ok || compareRational(measureInUnit(read.value, "in"), MOST_WATER) <= 0) return read;
  return badInput(ask.field, text.trim(), "more than 0 and up to 12 in", `"${text.trim()}" is no answer for ${ask.what}: it takes up to 12 in.`);
}

function readDepth(text: string): Outcome<Length> {
  const ask: FieldAsk = { field: "depth", what: "the depth of water", such: "1/2 in" };
  return upToAFoot(ask, text, readAmountField(ask, text, { dimension: "length", unitWhenNone: "in" }));
}

/** Reads "1.28 in per hour"; what it is over may be left out. */
function readRate(text: string): Outcome<Length> {
  const ask: FieldAsk = { field: "rate", what: "what the station gives in an hour", such: "1.2 in per hour" };
  return upToAFoot(ask, text, readAmountField(ask, text.replace(/\s*(?:\/|per|an)\s*(?:h|hr|hour)\s*$/iu, ""), { dimension: "length", unitWhenNone: "in" }));
}

interface TypedCycle {
  readonly longestRun: Rational | undefined;
  readonly soak: Rational | undefined;
}

function readCycle(typed: Typed<Cycle>) {
  return {
    longestRun: ifTyped(typed.longestRun, (text) => readNumberField({ field: "longestRun", what: "the longest run", such: "12" }, text, MINUTES)),
    soak: ifTyped(typed.soak, (text) => readNumberField({ field: "soak", what: "the rest between runs", such: "30" }, text, { ...MINUTES, lowest: "0" })),
  };
}

/** One of the two alone says nothing. */
function cycleOf({ longestRun, soak }: TypedCycle): Outcome<IrrigationStation["cycle"]> {
  if (longestRun === undefined && soak === undefined) return accept("none");
  if (longestRun === undefined) return badInput("longestRun", "nothing", "whole minutes from 1", "Give the longest run too: after how many minutes water begins to stand or run off.");
  if (soak === undefined) return badInput("soak", "nothing", "whole minutes", "Give the rest too: how long the soil needs until the water is gone.");
  return accept({ longestRunMinutes: toNumber(longestRun), soakMinutes: toNumber(soak) });
}

function inchesAnHour(depth: Length): string {
  return `${inUnit(depth, "in")} an hour`;
}

interface Plan {
  readonly depth: Length;
  readonly rate: Length | "not-tested";
  readonly cycle: IrrigationStation["cycle"];
  readonly inputs: readonly WorkingInput[];
  /** The steps that lead to the rate. */
  readonly before: readonly string[];
  readonly source: string;
  readonly findings: readonly Finding[];
}

function plan({ depth, rate, cycle, inputs, before, source, findings }: Plan): WorksheetOutcome {
  const run = irrigationRun({ stationName: STATION, depthPerHour: rate, cycle }, { least: depth, most: "none" }, "us");
  if (!run.ok) return refuseOne({ ...run.refusal, field: "rate" });
  if (rate !== "not-tested" && run.value.kind === "no-minutes") return refuseOne(tooLong(depth, rate));
  const told = rate === "not-tested" || run.value.kind !== "run" ? untested(depth, run.value.sentence) : tested(depth, rate, run.value);
  return accept({
    answers: told.answers,
    working: { title: "Irrigation minutes", formula: "Minutes = 60 × depth ÷ depth per hour, made whole upwards.", inputs, steps: [...before, ...told.steps], result: told.result, source },
    findings,
    tables: [],
  });
}

/** Without a most there are minutes for every depth, unless they are more than a day. */
function tooLong(depth: Length, rate: Length): InputRefusal {
  const minutes = roundToWhole(exactMinutes(rate, depth), "up");
  const sentence = `${formatQuantityIn(depth, "in")} would take ${minutes} min, more than a day: see whether the depth and what the station gives are right.`;
  return { kind: "bad-input", field: "depth", found: formatQuantityIn(depth, "in"), allowed: `what the station gives within ${LONGEST_RUN_MINUTES} min`, sentence };
}

type Told = Pick<WorkedWorksheet, "answers"> & { readonly steps: readonly string[]; readonly result: string };

function untested(depth: Length, sentence: string): Told {
  return {
    answers: [{ figure: formatQuantityIn(depth, "in", 2).replace(/ in$/u, ""), unit: "in", of: "is all that can be said: the station has not been tested" }],
    steps: [
      "Set out eight straight-sided cans or more, evenly across the lawn that the station waters, on a calm day (wind 5 mph or less).",
      "Run the station for 15 min and measure the depth in each can.",
      "Take four times the average as the depth per hour, and enter the cans here.",
    ],
    result: sentence,
  };
}

function tested(depth: Length, rate: Length, run: Extract<StationRun, { kind: "run" }>): Told {
  const exact = reduce(divideRational(multiplyExact(depth, rational(60n)).exactAmount, rate.exactAmount));
  const { totalMinutes, runsMinutes, soakMinutes, elapsedMinutes } = run;
  const reached = depthFrom(run.depthReached);
  const cycles =
    runsMinutes.length < 2
      ? []
      : [
          `Cycle and soak: ${runsMinutes.join(", then ")} min, with ${soakMinutes} min of rest between.`,
          `From first to last: ${runsMinutes.join(` + ${soakMinutes} + `)} = ${elapsedMinutes} min.`,
        ];
  const answers: WorksheetAnswer[] = [{ figure: String(totalMinutes), unit: "min", of: `gives ${depthWords(depth, "us")}` }];
  if (runsMinutes.length > 1) answers.push({ figure: runsMinutes.join(" + "), unit: "min", of: `with ${soakMinutes} min of rest between; ${elapsedMinutes} min in all` });
  return {
    answers,
    steps: [
      `Minutes: 60 × ${inUnit(depth, "in")} ÷ ${inUnit(rate, "in")} = ${figure(exact)} min.`,
      `In whole minutes, upwards, ${totalMinutes} min give: ${inUnit(rate, "in")} × ${totalMinutes} ÷ 60 = ${inUnit(reached, "in")}.`,
      ...cycles,
    ],
    result: `${totalMinutes} min give ${formatQuantityIn(reached, "in")} (${depthWords(reached, "metric")}).`,
  };
}

function cycleInputs(cycle: IrrigationStation["cycle"]): readonly WorkingInput[] {
  return cycle === "none" ? [] : [{ name: "Longest run before water stands", figure: `${cycle.longestRunMinutes} min` }, { name: "Rest until it is gone", figure: `${cycle.soakMinutes} min` }];
}

/**
 * Minutes from a station's known rate, in cycles where a longest run and a rest are given. An empty rate is answered
 * with how to test the station. Refused by field: what is missing or can't be read, a depth or a rate over 12 in, one
 * of the two of a cycle alone, more than a day of minutes.
 */
export function knownRateWorksheet(typed: Typed<KnownRateField>): WorksheetOutcome {
  const read = readTogether({ depth: readDepth(typed.depth), rate: ifTyped(typed.rate, readRate), ...readCycle(typed) });
  if (!read.ok) return read;
  const cycle = cycleOf(read.value);
  if (!cycle.ok) return refuseOne(cycle.refusal);
  const { depth, rate } = read.value;
  return plan({
    depth,
    rate: rate ?? "not-tested",
    cycle: cycle.value,
    inputs: [{ name: "Depth of water", figure: withTyped(inUnit(depth, "in"), typed.depth) }, { name: "The station gives", figure: rate === undefined ? "not tested" : withTyped(inchesAnHour(rate), typed.rate) }, ...cycleInputs(cycle.value)],
    before: [],
    source: rate === undefined ? `${NMSU}; common practice` : KLICKITAT,
    findings: [],
  });
}

/**
 * Minutes from a test with catch cans: the average depth over the time is the rate. Refused by field: what
 * knownRateWorksheet refuses, and at `cans` what measureStation does.
 */
export function cansWorksheet(typed: Typed<CansField>): WorksheetOutcome {
  const ask: FieldAsk = { field: "cans", what: "the depth in each can", such: "0.2, 0.25, 0.2, 0.22" };
  const parts = lengthParts(typed.cans, { field: "cans", unitWhenNone: "in" });
  const read = readTogether({
    depth: readDepth(typed.depth),
    cans: parts.ok ? readListField(ask, parts.value, readCan) : parts,
    minutes: readNumberField({ field: "minutes", what: "how long the station ran", such: "15" }, typed.minutes, { lowest: "1", highest: "240", unit: "min" }),
    wind: ifTyped(typed.wind, (text) => readNumberField({ field: "wind", what: "the wind", such: "3" }, text, { lowest: "0", highest: "60", unit: "mph" })),
    ...readCycle(typed),
  });
  if (!read.ok) return read;
  const cycle = cycleOf(read.value);
  if (!cycle.ok) return refuseOne(cycle.refusal);
  const { depth, cans, minutes, wind } = read.value;
  const station = measureStation({ station: STATION, runMinutes: toNumber(minutes), cans: { kind: "depths", depths: cans }, windMph: wind === undefined ? "not-taken" : toNumber(wind) });
  if (!station.ok) return refuseOne({ ...station.refusal, field: "cans" });
  const { depthPerHour, lowerQuarterUniformity, findings } = station.value;
  const [average, typedCans] = [averageMeasure("length", cans), parts.ok ? parts.value : []];
  return plan({
    depth,
    rate: depthPerHour,
    cycle: cycle.value,
    inputs: [
      { name: "Depth of water", figure: withTyped(inUnit(depth, "in"), typed.depth) },
      { name: "In the cans", figure: cans.map((can, place) => withTyped(inUnit(can, "in"), typedCans[place] ?? "")).join(", ") },
      { name: "The station ran", figure: `${figure(minutes)} min` },
      ...cycleInputs(cycle.value),
    ],
    before: [
      ...averageLines(`${cans.length} cans`, cans, average),
      `In an hour: ${inUnit(average, "in")} × 60 ÷ ${figure(minutes)} = ${inchesAnHour(depthPerHour)}.`,
      ...evennessLines(cans, average, lowerQuarterUniformity),
    ],
    source: `${NMSU}; DU: ${NC_STATE}`,
    findings,
  });
}

/** A quarter of the cans to the nearest, those with the least water, as the DU takes them. */
function lowestQuarter(cans: readonly Length[]): readonly Length[] {
  return cans.toSorted(compareExact).slice(0, lowCans(cans.length, "lower-quarter"));
}

function averageLines(which: string, cans: readonly Length[], average: Length): readonly string[] {
  const all = sumExact("length", cans);
  return [`The ${which} together: ${sumLine(cans, all, "in")}.`, `Average of the ${which}: ${inUnit(all, "in")} ÷ ${cans.length} = ${inUnit(average, "in")}.`];
}

/** The driest quarter against all; more minutes help it only where it gets any water. */
function evennessLines(cans: readonly Length[], average: Length, uniformity: Rational): readonly string[] {
  const lowest = lowestQuarter(cans);
  const low = averageMeasure("length", lowest);
  return [
    ...averageLines(`driest quarter, ${lowest.length} of the cans`, lowest, low),
    `Evenness (DU), the driest quarter over all: ${inUnit(low, "in")} ÷ ${inUnit(average, "in")} = ${stepPercent(uniformity)}.`,
    ...(uniformity.numerator === 0n ? [] : [`For the driest quarter to get the whole depth, so many times the minutes: 1 ÷ ${stepPercent(uniformity)} = ${figure(divideRational(rational(1n), uniformity))}.`]),
  ];
}

/** The depth in one can, which may be nothing. */
function readCan(part: string): Outcome<Length> {
  if (isEmptyCan(part)) return accept(fromExactAmount("length", rational(0n)));
  return readAmountField({ field: "cans", what: "the depth in each can", such: "0.2 in" }, part, { dimension: "length", unitWhenNone: "in" });
}
