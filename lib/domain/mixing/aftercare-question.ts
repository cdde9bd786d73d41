import { badInput, missingFact } from "#domain/foundation/outcome";
import { refuseImpossibleAftercare } from "#domain/label/aftercare-range";
import { type AftercareEstimates } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type MowingHabit } from "#domain/mixing/mowing-aftercare";
import { type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
import { refuseImpossibleHours } from "#domain/mixing/watering-hours";
import { type WateringQuestion } from "#domain/mixing/watering-window";
import { type Refused, amountRange, refuseOutOfRange } from "#domain/turf/physical-range";
import { isTimeZone } from "#domain/weather/local-hours";
import { type Place } from "#domain/weather/sun-times";

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
 * or lies outside its visit, an earlier visit that comes later, impossible hours, estimates, weekdays or label facts.
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
    refuseImpossibleHours(hours) ??
    firstRefusal(products.map(({ label }) => refuseImpossibleAftercare(label)))
  );
}

function firstRefusal(refusals: readonly (Refused | undefined)[]): Refused | undefined {
  return refusals.find((refusal) => refusal !== undefined);
}

/** Instants that a date can hold, as whole milliseconds. */
function isInstant(value: number): boolean {
  return Number.isInteger(value) && Math.abs(value) <= 8.64e15;
}

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
    if (end > visit.fromEpochMilliseconds) {
      return refuseTime(`The earlier application of ${label.productName} ends after this visit starts.`);
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
  const { weekday } = mowing;
  if (typeof weekday === "number" && !(Number.isInteger(weekday) && weekday >= 0 && weekday <= 6)) {
    const sentence = "The mowing day must be a day of the week, 0 for Sunday to 6.";
    return badInput("mowing.weekday", String(weekday), "a whole number from 0 to 6", sentence);
  }
  if (secondLook !== "none" && !(Number.isInteger(secondLook.daysAfter) && secondLook.daysAfter >= 0)) {
    const sentence = "The second look must be a whole number of days after the visit.";
    return badInput("secondLook.daysAfter", String(secondLook.daysAfter), "whole days from 0", sentence);
  }
  return refuseOutOfRange(
    estimateNames.flatMap((name) => {
      const estimate = estimates[name];
      return estimate === "unknown" ? [] : [amountRange(`estimates.${name}`, "An estimate", estimate.durationMinutes, "min")];
    }),
  );
}

const estimateNames = ["untilDry", "untilDustSettled", "untilDryAfterWatering"] as const satisfies readonly (keyof AftercareEstimates)[];
