import { listWords } from "#domain/foundation/list-words";
import { type Working } from "#domain/foundation/working";
import { type ExactQuantity, multiplyExact } from "#domain/quantities/exact-quantity";
import { type Rational, rational } from "#domain/quantities/rational";
import { type AftercareTimeline } from "#domain/mixing/aftercare";
import { depthFrom, type StationRun } from "#domain/mixing/irrigation-run";
import { type WateringWindow } from "#domain/mixing/watering-window";
import { figure, inUnit } from "#domain/mixing/ticket-working-words";

type Run = Extract<StationRun, { readonly kind: "run" }>;

/**
 * How the minutes of each station come about from the depth and the station's own rate, and in which order stations run
 * that take turns in each other's rests. The rate is what the aftercare keeps: what the minutes put down, over the
 * minutes. A station without a test has no minutes and no working.
 */
export function wateringWorkings({ watering }: AftercareTimeline): readonly Working[] {
  if (watering.kind !== "window" || watering.leastDepth === null) return [];
  const least = depthFrom(watering.leastDepth);
  const minutes = watering.stations.flatMap((run) => (run.kind === "run" && run.totalMinutes > 0 ? [stationWorking(run, least, watering)] : []));
  return [...minutes, ...orderWorking(watering)];
}

/**
 * Mix tickets that were issued before stations took turns have no order. Where stations of other lawns run in between, the
 * lawns' own runs do not tell why each stands where it does, and there is none either.
 */
function orderWorking({ stations, starts = [], isWithOthers }: WateringWindow): readonly Working[] {
  const runs = stations.filter((station) => station.kind === "run");
  if (isWithOthers === true || runs.length < 2 || starts.length <= runs.length) return [];
  let until = 0;
  const steps = starts.flatMap(({ stationName, startsAfterMinutes: from, runMinutes }) => {
    const waits = from > until ? [`None is rested before ${String(from)} min.`] : [];
    until = from + runMinutes;
    return [...waits, `${String(from)} min + ${String(runMinutes)} min = ${String(until)} min, ${stationName}`];
  });
  return [
    {
      title: "The order of the stations",
      formula: "whenever no station runs, of those whose rest is over the one starts that still needs the longest, its rests counted",
      inputs: [
        { name: "First drop", figure: "0 min" },
        ...runs.map(({ stationName, runsMinutes, soakMinutes }) => ({
          name: `Station ${stationName}`,
          figure: `${listWords(runsMinutes.map(String))} min${runsMinutes.length > 1 ? `, ${String(soakMinutes)} min of rest between` : ""}`,
          from: "its minutes as worked out",
        })),
      ],
      steps,
      result: `${String(until)} min from the first drop to the last, one station at a time.`,
      source: "common practice; another order may end somewhat sooner",
    },
  ];
}

function stationWorking(run: Run, least: ExactQuantity<"length">, watering: WateringWindow): Working {
  const { stationName, totalMinutes, runsMinutes, soakMinutes } = run;
  const reached = depthFrom(run.depthReached);
  const perHour = multiplyExact(reached, rational(60n, BigInt(totalMinutes)));
  const exact: Rational = {
    numerator: least.exactAmount.numerator * perHour.exactAmount.denominator * 60n,
    denominator: least.exactAmount.denominator * perHour.exactAmount.numerator,
  };
  // Mix tickets from before it was kept whose depth counts name all that ask for water.
  const products = watering.leastDepthOf ?? [...new Set(watering.reasons.filter(({ kind }) => kind === "watering-in").map(({ productName }) => productName))];
  const pauses = runsMinutes.length - 1;
  return {
    title: `Minutes of station ${stationName}`,
    formula: "minutes = depth ÷ what the station puts down in an hour × 60, up to a whole minute",
    inputs: [
      { name: "Depth", figure: inUnit(least, "in"), from: products.length === 0 ? "the label" : `the label of ${listWords(products)}` },
      { name: "Station", figure: `${inUnit(perHour, "in")} an hour`, from: "its own test with cans" },
      ...(watering.mostDepth === null ? [] : [{ name: "At most", figure: inUnit(depthFrom(watering.mostDepth), "in"), from: "the label" }]),
      ...(pauses > 0 ? [{ name: "Runs", figure: String(runsMinutes.length), from: "none longer than the soil can take at once" }] : []),
      ...(pauses > 0 ? [{ name: "Rest between runs", figure: `${String(soakMinutes)} min`, from: "common practice" }] : []),
    ],
    steps: [
      `${inUnit(least, "in")} ÷ ${inUnit(perHour, "in")} × 60 min = ${figure(exact)} min`,
      ...roundingStep(run, perHour, watering),
      ...(pauses > 0 ? cycleSteps(run) : []),
    ],
    result: run.sentence,
    source: `the depth: the label; the station’s rate: its test with cans in little wind (NMSU Guide H-510, Kent and Leinauer)${pauses > 0 ? "; the rest between runs: common practice" : ""}`,
  };
}

/** The total in runs, and the time with the rests between them. */
function cycleSteps({ totalMinutes, runsMinutes, soakMinutes, elapsedMinutes }: Run): readonly string[] {
  const count = runsMinutes.length;
  const average = figure(rational(BigInt(totalMinutes), BigInt(count)));
  return [
    `${String(totalMinutes)} min ÷ ${String(count)} = ${average} min a run, in whole minutes ${listWords(runsMinutes.map(String))}`,
    `${runsMinutes.map((minutes) => `${String(minutes)} min`).join(" + ")} = ${String(totalMinutes)} min`,
    `${String(totalMinutes)} min + ${String(count - 1)} × ${String(soakMinutes)} min = ${String(elapsedMinutes)} min from the first drop to the last`,
  ];
}

function roundingStep({ totalMinutes, rounding, depthReached }: Run, perHour: ExactQuantity<"length">, { mostDepth }: WateringWindow): readonly string[] {
  const putsDown = (minutes: number) => `${String(minutes)} min ÷ 60 min × ${inUnit(perHour, "in")} = ${inUnit(multiplyExact(perHour, rational(BigInt(minutes), 60n)), "in")}`;
  switch (rounding) {
    case "unchanged":
      return [];
    case "up-to-whole-minute":
      return [`Up to a whole minute: ${String(totalMinutes)} min, which put down ${inUnit(depthFrom(depthReached), "in")}.`];
    case "down-to-stay-within-most":
      return [
        `${putsDown(totalMinutes + 1)}, which is more than ${mostDepth === null ? "is allowed" : `the ${inUnit(depthFrom(mostDepth), "in")} that are allowed`}`,
        `So down to a whole minute: ${String(totalMinutes)} min, which put down ${inUnit(depthFrom(depthReached), "in")}.`,
      ];
  }
}
