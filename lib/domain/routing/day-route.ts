import { type InputRefusal, badInput } from "#domain/foundation/outcome";
import { type TravelBasis, type TravelMatrix } from "#domain/routing/travel-time";

/** When work at a stop may begin, in minutes of the local day; both ends belong to it. */
export interface ServiceWindow {
  readonly fromMinute: number;
  readonly toMinute: number;
}

/** A stop that wants a place in the day. */
export interface RouteStop {
  readonly stopId: string;
  /** Its row and column in the travel matrix. */
  readonly placeIndex: number;
  readonly serviceMinutes: number;
  /** Work begins within one of them: each is a promise or a rule, and none is ever broken. Without any, any time will do. */
  readonly windows: readonly ServiceWindow[];
  /** What it weighs in deciding who is left out, 1 or more: the later a visit is, the more. The heavier sum is served. */
  readonly dueWeight: number;
  /** The place in the order, from 1, at which a person has pinned it. */
  readonly pinnedPosition?: number;
}

/** One crew's day. Times are seconds of the local day. */
export interface RouteDayQuestion {
  readonly startPlaceIndex: number;
  readonly endPlaceIndex: number;
  readonly dayStartSeconds: number;
  /** When the crew should be back. */
  readonly dayEndSeconds: number;
  /** How much later it may get to serve what is due; zero where overtime is out of the question. */
  readonly longestOvertimeSeconds: number;
  readonly stops: readonly RouteStop[];
}

/** A stop in its place. Times are seconds of the local day; the drive is the way to it from the place before. */
export interface PlannedStop {
  readonly stopId: string;
  /** From 1. */
  readonly position: number;
  readonly driveSeconds: number;
  readonly driveMeters: number;
  readonly arrivalSeconds: number;
  readonly waitSeconds: number;
  readonly startSeconds: number;
  readonly departureSeconds: number;
}

/** Why a stop has no place in the day. */
export type LeftOutReason =
  | "window-passed-on-arrival"
  | "window-too-late-for-day"
  | "day-too-short"
  | "pinned-position-out-of-reach"
  | "windows-of-day"
  | "day-is-over";

/** A stop without a place, and why, as a sentence. */
export interface LeftOutStop {
  readonly stopId: string;
  readonly reason: LeftOutReason;
  readonly sentence: string;
}

/** Sums over the day, the way home included. */
export interface RouteTotals {
  readonly servedWeight: number;
  readonly driveSeconds: number;
  readonly driveMeters: number;
  readonly waitSeconds: number;
  readonly serviceSeconds: number;
  readonly overtimeSeconds: number;
}

/** The day in order. The crew leaves at the day's start; on a day without stops it doesn't leave. */
export interface DayRoute {
  readonly travelBasis: TravelBasis;
  readonly stops: readonly PlannedStop[];
  readonly homeDriveSeconds: number;
  readonly homeDriveMeters: number;
  /** When the crew is at its end place. */
  readonly returnSeconds: number;
  readonly totals: RouteTotals;
  /** In the order in which the question lists them. */
  readonly leftOut: readonly LeftOutStop[];
}

const MINUTES_A_DAY = 1440;
const SECONDS_A_DAY = 86_400;

/**
 * The first thing in a question that can't be: a place the matrix doesn't have, a day or a window that ends before it
 * begins, a part of a minute, a stop twice, two stops pinned to one position, a position beyond the number of stops.
 */
export function refuseRouteDay(question: RouteDayQuestion, travel: TravelMatrix): InputRefusal | undefined {
  const { stops, dayStartSeconds, dayEndSeconds, longestOvertimeSeconds } = question;
  const lastPlace = travel.seconds.length - 1;
  const wrong =
    wrongNumber("startPlaceIndex", "The start's place", question.startPlaceIndex, 0, lastPlace) ??
    wrongNumber("endPlaceIndex", "The end's place", question.endPlaceIndex, 0, lastPlace) ??
    wrongNumber("dayStartSeconds", "The day's start", dayStartSeconds, 0, SECONDS_A_DAY) ??
    wrongNumber("dayEndSeconds", "The day's end", dayEndSeconds, dayStartSeconds, SECONDS_A_DAY) ??
    wrongNumber("longestOvertimeSeconds", "The longest overtime", longestOvertimeSeconds, 0, SECONDS_A_DAY);
  if (wrong !== undefined) return wrong;
  const ids = new Set<string>();
  const pins = new Set<number>();
  for (const stop of stops) {
    const refusal = refuseStop(stop, lastPlace, stops.length);
    if (refusal !== undefined) return refusal;
    if (ids.has(stop.stopId)) return bad("stopId", stop.stopId, "each stop once", `The stop ${stop.stopId} is listed twice.`);
    ids.add(stop.stopId);
    if (stop.pinnedPosition === undefined) continue;
    if (pins.has(stop.pinnedPosition)) {
      const position = String(stop.pinnedPosition);
      return bad("pinnedPosition", position, "one stop at each position", `Two stops are pinned to position ${position}.`);
    }
    pins.add(stop.pinnedPosition);
  }
  return undefined;
}

function refuseStop(stop: RouteStop, lastPlace: number, stopCount: number): InputRefusal | undefined {
  const of = (what: string) => `The ${what} of the stop ${stop.stopId}`;
  const wrong =
    wrongNumber("placeIndex", of("place"), stop.placeIndex, 0, lastPlace) ??
    wrongNumber("serviceMinutes", of("service time in minutes"), stop.serviceMinutes, 0, MINUTES_A_DAY) ??
    wrongNumber("dueWeight", of("weight"), stop.dueWeight, 1, 1_000_000);
  if (wrong !== undefined) return wrong;
  for (const { fromMinute, toMinute } of stop.windows) {
    const wrongWindow =
      wrongNumber("fromMinute", of("window's beginning"), fromMinute, 0, MINUTES_A_DAY) ??
      wrongNumber("toMinute", of("window's end"), toMinute, fromMinute, MINUTES_A_DAY);
    if (wrongWindow !== undefined) return wrongWindow;
  }
  if (stop.pinnedPosition === undefined) return undefined;
  return wrongNumber("pinnedPosition", of("pinned position"), stop.pinnedPosition, 1, stopCount);
}

function wrongNumber(field: string, words: string, value: number, lowest: number, highest: number): InputRefusal | undefined {
  if (Number.isSafeInteger(value) && value >= lowest && value <= highest) return undefined;
  const allowed = `a whole number from ${lowest} to ${highest}`;
  return bad(field, String(value), allowed, `${words} is ${value}; it must be ${allowed}.`);
}

function bad(field: string, found: string, allowed: string, sentence: string): InputRefusal {
  return badInput(field, found, allowed, sentence).refusal;
}
