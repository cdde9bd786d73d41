import { EARLIEST_EPOCH_MILLISECONDS, LATEST_EPOCH_MILLISECONDS } from "#domain/foundation/calendar-date";
import { badInput, missingFact } from "#domain/foundation/outcome";
import { refuseImpossibleAftercare } from "#domain/label/aftercare-range";
import { type AftercareEstimates } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { beganBefore } from "#domain/mixing/earlier-products";
import { type MowingHabit } from "#domain/mixing/mowing-aftercare";
import { type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
import { refuseImpossibleHours } from "#domain/mixing/watering-hours";
import { type WateringQuestion } from "#domain/mixing/watering-window";
import { type AmountLimit, type Refused, amountRange, refuseOutOfRange } from "#domain/turf/physical-range";
import { isTimeZone } from "#domain/weather/local-hours";
import { type Place, placeRanges } from "#domain/weather/sun-times";

/** The look that a program asks for some days after the visit. */
export interface SecondLookRule {
  readonly daysAfter: number;
  readonly programName: string;
}

/** Everything that the aftercare of one zone after one visit hangs on. */
export interface AftercareQuestion extends WateringQuestion {
  /** The version of the time zone data that reads the clock here, kept with the result: "2026a". */
  readonly zoneDataVersion: string;
  readonly mowing: MowingHabit;
  /** Seed of the zone's history and of its plan. */
  readonly seedings: readonly ZoneSeeding[];
  readonly place: Place | "unknown";
  readonly secondLook: SecondLookRule | "none";
}

/**
 * Refuses a question that can't be meant: no known time zone or no version of its data, work that ends before it begins
 * or lies outside its visit, an earlier visit that begins after this one, no place on earth, impossible hours, estimates,
 * weekdays, times of mowing, second looks or label facts. Each at its own field; undefined when it is fine.
 */
export function refuseImpossibleQuestion(question: AftercareQuestion): Refused | undefined {
  const { timeZone, zoneDataVersion, hours, products } = question;
  if (!isTimeZone(timeZone)) {
    const sentence = `"${timeZone}" is not a known time zone.`;
    return badInput("timeZone", timeZone, "a time zone such as America/New_York", sentence);
  }
  if (zoneDataVersion.trim() === "") {
    const sentence = "The version of the time zone data is not known, and it is kept with the result.";
    return missingFact("zoneDataVersion", "a version such as 2026a", sentence);
  }
  return (
    refuseTimes(question) ??
    refuseHabits(question) ??
    (question.place === "unknown" ? undefined : refuseOutOfRange(placeRanges(question.place))) ??
    refuseImpossibleHours(hours) ??
    firstRefusal(products.map(({ label }) => refuseImpossibleAftercare(label)))
  );
}

function firstRefusal(refusals: readonly (Refused | undefined)[]): Refused | undefined {
  return refusals.find((refusal) => refusal !== undefined);
}

/** Whole milliseconds in the years that calendar dates are read in: what is reckoned from them is a date too. */
function isInstant(value: number): boolean {
  return Number.isInteger(value) && value >= EARLIEST_EPOCH_MILLISECONDS && value <= LATEST_EPOCH_MILLISECONDS;
}

/** A second look is taken within a year; later it is another season's visit (common practice). */
const LATEST_SECOND_LOOK_DAYS = 365;

/** Nothing takes longer than a week to dry or settle (common practice): a longer estimate is a slip of a unit. */
const LONGEST_ESTIMATE: AmountLimit = { highest: 10_080, unit: "min" };

function refuseTimes({ visit, products }: AftercareQuestion): Refused | undefined {
  const { fromEpochMilliseconds, untilEpochMilliseconds } = visit;
  if (!isInstant(fromEpochMilliseconds) || !isInstant(untilEpochMilliseconds) || fromEpochMilliseconds > untilEpochMilliseconds) {
    const found = `${fromEpochMilliseconds} to ${untilEpochMilliseconds}`;
    return badInput("visit", found, "a start and an end that is not before it", "The visit ends before it starts.");
  }
  return firstRefusal(products.map((applied) => refuseProductTimes(applied, visit)));
}

function refuseProductTimes(applied: AppliedProduct, visit: AftercareQuestion["visit"]): Refused | undefined {
  const { label, application, appliedIn, wateredInAtEpochMilliseconds: wateredIn } = applied;
  const { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: posted } = application;
  const refuseTime = (sentence: string) =>
    badInput(`${label.productName} application`, `${start} to ${end}`, "times that follow each other", sentence);
  const given = [start, end, ...[posted, wateredIn].filter((value) => typeof value === "number")];
  if (!given.every(isInstant) || start > end) return refuseTime(`The application of ${label.productName} ends before it starts.`);
  const refuseWatering = (sentence: string) =>
    badInput(`${label.productName} wateredIn`, String(wateredIn), "after it was put down, before this visit ends", sentence);
  if (appliedIn === "earlier-visit") {
    if (!beganBefore(application, visit)) {
      return refuseTime(`The earlier application of ${label.productName} starts after this visit ends.`);
    }
    const isOutside = typeof wateredIn === "number" && (wateredIn < start || wateredIn > visit.untilEpochMilliseconds);
    return isOutside ? refuseWatering(`${label.productName} can't have been watered in then.`) : undefined;
  }
  if (start < visit.fromEpochMilliseconds || end > visit.untilEpochMilliseconds) {
    return refuseTime(`The application of ${label.productName} lies outside the visit.`);
  }
  if (wateredIn === "not-yet") return undefined;
  return refuseWatering(`${label.productName} is put down in this visit and can't have been watered in before.`);
}

function refuseHabits({ mowing, estimates, secondLook }: AftercareQuestion): Refused | undefined {
  const { weekday, lastMowedAtEpochMilliseconds: lastMowed } = mowing;
  if (typeof weekday === "number" && !isWholeWithin(weekday, 6)) {
    const sentence = "The mowing day must be a day of the week, 0 for Sunday to 6.";
    return badInput("mowing.weekday", String(weekday), "a whole number from 0 to 6", sentence);
  }
  if (typeof lastMowed === "number" && !isInstant(lastMowed)) {
    const sentence = "The last mowing must be a time between 1900 and 2199, or not known.";
    return badInput("mowing.lastMowedAtEpochMilliseconds", String(lastMowed), "an instant from 1900 to 2199", sentence);
  }
  if (secondLook !== "none" && !isWholeWithin(secondLook.daysAfter, LATEST_SECOND_LOOK_DAYS)) {
    const sentence = "The second look must be a whole number of days after the visit, within a year.";
    return badInput("secondLook.daysAfter", String(secondLook.daysAfter), `whole days from 0 to ${LATEST_SECOND_LOOK_DAYS}`, sentence);
  }
  return refuseOutOfRange(
    estimateNames.flatMap((name) => {
      const estimate = estimates[name];
      return estimate === "unknown" ? [] : [amountRange(`estimates.${name}`, "An estimate", estimate.durationMinutes, LONGEST_ESTIMATE)];
    }),
  );
}

function isWholeWithin(value: number, highest: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= highest;
}

const estimateNames = ["untilDry", "untilDustSettled", "untilDryAfterWatering"] as const satisfies readonly (keyof AftercareEstimates)[];
