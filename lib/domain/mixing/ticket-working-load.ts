import { marksWithin, nearestMarks } from "#domain/quantities/rounding";
import { invariant } from "#domain/foundation/invariant";
import { type Working } from "#domain/foundation/working";
import { type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { times } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { halfOf } from "#domain/mixing/mixing-steps";
import { type SprayMix, type SprayTreatment, type TankLoad } from "#domain/mixing/spray-mix";
import { isTooLittle, leastSpray } from "#domain/mixing/spray-volume";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { placeOf } from "#domain/mixing/ticket-working-area";
import { areaTimesRate, figure, inUnit, manyTimes, perThousand, sumLine, timesIn, unitOf } from "#domain/mixing/ticket-working-words";

/** What a working of a spray looks at: the mix, the treatments in it in its order, and the question it answers. */
export interface SprayAsked {
  readonly mix: SprayMix;
  readonly treatments: readonly SprayTreatment[];
  readonly settings: TicketQuestion["settings"];
  /** The ground of the whole spray. */
  readonly area: Quantity<"area">;
}

const TANK_SOURCE = "finished spray is area times what the sprayer puts out: Oklahoma State University, “Sprayer Calibration”; the mark: common practice";

/** The marks of the gauge up to which a volume is filled; stored volumes are whole canonical units, so to the nearest. */
export function marksOf(volume: Measure<"volume">, { settings }: SprayAsked): bigint {
  return nearestMarks(volume, settings.tankMark);
}

/** How the finished spray of the visit comes about: ground times what the sprayer puts out, to a mark of the gauge. */
export function finishedWorking(asked: SprayAsked): Working {
  const { mix, settings, area, treatments } = asked;
  const { rate, words } = mix.carrier;
  const unit = unitOf(mix.finished);
  const least = leastSpray(treatments, rate, area);
  const wanted = times(rate, area);
  const nearest = marksOf(wanted, asked);
  const marks = marksOf(mix.finished, asked);
  const puts = perThousand(rate, unit);
  const manyMarks = (count: bigint) => multiplyExact(settings.tankMark, rational(count));
  return {
    title: "Finished spray in all",
    formula: "finished spray = treated area ÷ 1,000 sq ft × what the sprayer puts out, to the nearest mark of the gauge, and to the next where that is more than 2% too little or less than a label wants",
    inputs: [
      ...mix.lawns.map((lawn) => ({ name: placeOf(lawn), figure: inUnit(lawn.treatedArea, "sq ft"), from: "treated area" })),
      { name: "Puts out", figure: `${puts} per 1,000 sq ft`, from: words },
      { name: "One mark of the gauge", figure: inUnit(settings.tankMark, unit) },
    ],
    steps: [
      ...(mix.lawns.length > 1 ? [sumLine(mix.lawns.map(({ treatedArea }) => treatedArea), area, "sq ft")] : []),
      areaTimesRate(area, rate, unit),
      `${timesIn(wanted, settings.tankMark, unit)} marks, to the nearest ${figure(rational(nearest))}`,
      ...(marks === nearest ? [] : [`${figure(rational(nearest))} + 1 = ${figure(rational(marks))} marks, because the nearest is ${tooLittleWords(manyMarks(nearest), wanted, least, unit)}`]),
      manyTimes(marks, settings.tankMark, unit),
    ],
    result: formatQuantity(mix.finished, "us"),
    source: `${mix.gearName}, ${words}; ${TANK_SOURCE}`,
  };
}

function tooLittleWords(nearest: ExactQuantity<"volume">, wanted: ExactQuantity<"volume">, least: ExactQuantity<"volume"> | undefined, unit: ReturnType<typeof unitOf>): string {
  return least === undefined || isTooLittle(nearest, wanted) ? "more than 2% too little" : `less than the ${inUnit(least, unit)} that the label wants on this ground`;
}

function capacityOf({ treatments: [first] }: SprayAsked): Quantity<"volume"> {
  invariant(first !== undefined, "a spray has a product, and with it a tank");
  return first.gear.capacity;
}

/**
 * How much one load is: the visit's marks shared among as few loads as the whole marks of a tank allow, since no load is
 * filled between two marks. Throws for a spray without a treatment.
 */
export function loadWorking(asked: SprayAsked, load: TankLoad): Working {
  const { mix, settings } = asked;
  const unit = unitOf(load.finished);
  const capacity = capacityOf(asked);
  const count = mix.loads.length;
  const [all, perTank] = [marksOf(mix.finished, asked), marksWithin(capacity, settings.tankMark)];
  return {
    title: count === 1 ? "The load" : `Load ${String(load.number)} of ${String(count)}`,
    formula: settings.tankLoads === "same-size-every-time" ? "as few loads as the tank takes, as equal as the marks of the gauge go" : "full tanks, and what is left in a last one",
    inputs: [
      { name: "Finished spray in all", figure: inUnit(mix.finished, unit) },
      { name: "Tank", figure: inUnit(capacity, unit), from: mix.gearName },
      { name: "One mark of the gauge", figure: inUnit(settings.tankMark, unit) },
    ],
    steps: [
      `${timesIn(capacity, settings.tankMark, unit)} marks, so a full tank is ${figure(rational(perTank))}`,
      `${timesIn(mix.finished, settings.tankMark, unit)} marks`,
      `${figure(rational(all))} ÷ ${figure(rational(perTank))} = ${figure(rational(all, perTank))} tanks, so ${count === 1 ? "one load" : `${String(count)} loads`}`,
      ...shareSteps(asked, load),
      manyTimes(marksOf(load.finished, asked), settings.tankMark, unit),
    ],
    result: formatQuantity(load.finished, "us"),
    source: "the company’s setting for loads",
  };
}

/** How many of the visit's marks one of several loads gets. */
function shareSteps(asked: SprayAsked, load: TankLoad): readonly string[] {
  const { mix, settings } = asked;
  const count = mix.loads.length;
  const [first] = mix.loads;
  if (count === 1 || first === undefined) return [];
  const [all, own, full] = [marksOf(mix.finished, asked), marksOf(load.finished, asked), marksOf(first.finished, asked)];
  if (settings.tankLoads === "same-size-every-time") {
    return [`${figure(rational(all))} ÷ ${String(count)} = ${figure(rational(all, BigInt(count)))} marks on the average; load ${String(load.number)} gets ${figure(rational(own))}`];
  }
  return load.number < count ? [] : [`${figure(rational(all))} − ${String(count - 1)} × ${figure(rational(full))} = ${figure(rational(own))} marks are left for the last`];
}

/** The part of the visit's ground that a load covers: as many parts as it has marks of the gauge. */
export function groundOfLoad(asked: SprayAsked, load: TankLoad): ExactQuantity<"area"> {
  return multiplyExact(asked.area, rational(marksOf(load.finished, asked), marksOf(asked.mix.finished, asked)));
}

/** What of each load's water goes in first: half of it, as the order in the tank says. */
export function halfWorking({ mix }: SprayAsked): Working {
  const loads = mix.loads.map(({ number, water }) => {
    const half = halfOf(water);
    return { name: mix.loads.length === 1 ? "Water" : `Water of load ${String(number)}`, water, half, unit: unitOf(half) };
  });
  return {
    title: "Half of the water",
    formula: "what goes in first = water of the load ÷ 2, about",
    inputs: loads.map(({ name, water, unit }) => ({ name, figure: inUnit(water, unit), from: "finished spray less what the liquid products take up" })),
    steps: loads.map(({ name, water, half, unit }) => `${name}: ${inUnit(water, unit)} ÷ 2 = ${inUnit(half, unit)}`),
    result: mix.steps[0] ?? "",
    source: "common practice",
  };
}
