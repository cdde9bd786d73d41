import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type DegreeDayLine, type DegreeDayMethod, type DegreeDaySum, methodWords, openingLine } from "#domain/turf/degree-days";

/** Where the count of a window begins. */
export type DegreeDayStart =
  | { readonly kind: "calendar"; readonly month: number; readonly day: number }
  | { readonly kind: "last-application" }
  /** The source prints no date, so whoever uses the window has to choose one and to say so. */
  | { readonly kind: "not-printed" };

/** A published range of degree days for one piece of work, with what it was found on and where it is printed. */
export interface DegreeDayWindow {
  readonly purpose: string;
  readonly madeFor: string;
  readonly method: DegreeDayMethod;
  readonly start: DegreeDayStart;
  readonly opensAtDegreeDays: number;
  /** Left out where the source gives only a beginning. */
  readonly closesAtDegreeDays?: number;
  readonly source: string;
  /** Whether the source itself was read, or a text that quotes it. */
  readonly reading: "read" | "read-second-hand";
}

const MEAN_ABOVE_FREEZING_C: DegreeDayMethod = { kind: "simple-average", scale: "celsius", baseDegrees: 0 };
const MEAN_ABOVE_FREEZING_F: DegreeDayMethod = { kind: "simple-average", scale: "fahrenheit", baseDegrees: 32 };
const MEAN_ABOVE_50_F: DegreeDayMethod = { kind: "simple-average", scale: "fahrenheit", baseDegrees: 50 };
const FIFTEENTH_OF_FEBRUARY: DegreeDayStart = { kind: "calendar", month: 2, day: 15 };

/**
 * The published windows, by purpose. They are starting points for a round's window and none is a rule: a
 * growth regulator's label and the office's own experience come first.
 */
export const PUBLISHED_DEGREE_DAY_WINDOWS = {
  trinexapacAgain: {
    purpose: "trinexapac-ethyl again, before growth rebounds at 250 to 300",
    madeFor: "creeping bentgrass putting green",
    method: MEAN_ABOVE_FREEZING_C,
    start: { kind: "last-application" },
    opensAtDegreeDays: 200,
    closesAtDegreeDays: 250,
    source: "Kreuser & Soldat 2009, ASA-CSSA-SSSA abstract 55177",
    reading: "read",
  },
  paclobutrazolAgain: {
    purpose: "paclobutrazol again",
    madeFor: "creeping bentgrass putting green",
    method: MEAN_ABOVE_FREEZING_C,
    start: { kind: "last-application" },
    opensAtDegreeDays: 300,
    source: "Golfdom, December 15, 2014",
    reading: "read",
  },
  trinexapacAgainBermuda: {
    purpose: "growth regulator again",
    madeFor: "ultradwarf bermudagrass greens",
    method: { kind: "simple-average", scale: "celsius", baseDegrees: 10 },
    start: { kind: "last-application" },
    opensAtDegreeDays: 220,
    source: "Parkes & Reasor, Mississippi Turfgrass, winter 2019",
    reading: "read",
  },
  crabgrassPreEmergent: {
    purpose: "pre-emergent against crabgrass",
    madeFor: "cool-season turf, Michigan",
    method: MEAN_ABOVE_FREEZING_F,
    start: FIFTEENTH_OF_FEBRUARY,
    opensAtDegreeDays: 250,
    closesAtDegreeDays: 500,
    source: "University of Wisconsin crabgrass timer, after Calhoun, Michigan State University 2004",
    reading: "read",
  },
  crabgrassGermination: {
    purpose: "crabgrass germinates",
    madeFor: "lawns, Indiana",
    method: MEAN_ABOVE_50_F,
    start: { kind: "not-printed" },
    opensAtDegreeDays: 200,
    source: "Purdue University, When will crabgrass germinate, after Calhoun",
    reading: "read",
  },
  crabgrassEmergence: {
    purpose: "crabgrass emergence begins",
    madeFor: "lawns, Virginia",
    method: MEAN_ABOVE_50_F,
    start: { kind: "not-printed" },
    opensAtDegreeDays: 70,
    closesAtDegreeDays: 140,
    source: "Virginia Tech, January 2007, quoted by Kent County Extension (Delaware), March 2008",
    reading: "read-second-hand",
  },
  annualBluegrassSeedheads: {
    purpose: "first application against annual bluegrass seedheads",
    madeFor: "annual bluegrass, Michigan",
    method: MEAN_ABOVE_FREEZING_F,
    start: FIFTEENTH_OF_FEBRUARY,
    opensAtDegreeDays: 220,
    source: "Frank, Michigan State University 2019",
    reading: "read",
  },
} as const satisfies Readonly<Record<string, DegreeDayWindow>>;

/** How a running sum stands to a window. */
export type DegreeDayWindowState =
  | { readonly kind: "before"; readonly remainingDegreeDays: number }
  | { readonly kind: "open"; readonly openedOn: DegreeDayLine }
  | { readonly kind: "past"; readonly openedOn: DegreeDayLine; readonly closedOn: DegreeDayLine };

/**
 * Says whether a window has opened or closed by the end of a running sum, and on which day. Refuses, by name, a sum
 * that was made with another method, base, cut or scale than the window's own, since the figures mean nothing side by
 * side, and one that begins on another day than the date which the window prints. A count from the last application begins
 * where the caller says; see whether that is the right one.
 */
export function stateOfDegreeDayWindow(
  sum: DegreeDaySum,
  window: Pick<DegreeDayWindow, "method" | "start" | "opensAtDegreeDays" | "closesAtDegreeDays">,
): Outcome<DegreeDayWindowState> {
  const found = methodWords(sum.method);
  const wanted = methodWords(window.method);
  if (found !== wanted) {
    return badInput("method", found, wanted, `The degree days were summed by another method (${found}) than the window was found with (${wanted}).`);
  }
  if (window.start.kind === "calendar" && sum.from.slice(5) !== monthAndDay(window.start)) {
    const allowed = `a sum from ${monthAndDay(window.start)} (month-day)`;
    return badInput("from", sum.from, allowed, `The degree days were summed from ${sum.from}; the window counts from ${monthAndDay(window.start)} (month-day).`);
  }
  const openedOn = openingLine(sum, window.opensAtDegreeDays);
  if (openedOn === undefined) {
    return accept({ kind: "before", remainingDegreeDays: window.opensAtDegreeDays - sum.totalDegreeDays });
  }
  const closedOn = window.closesAtDegreeDays === undefined ? undefined : openingLine(sum, window.closesAtDegreeDays);
  return accept(closedOn === undefined ? { kind: "open", openedOn } : { kind: "past", openedOn, closedOn });
}

/** "02-15", as a calendar date ends. January is month 1. */
export function monthAndDay({ month, day }: Extract<DegreeDayStart, { readonly kind: "calendar" }>): string {
  return `${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}
