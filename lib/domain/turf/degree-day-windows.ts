import { type DegreeDayLine, type DegreeDayMethod, type DegreeDaySum, openingLine } from "#domain/turf/degree-days";

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
 * Says whether a window has opened or closed by the end of a running sum, and on which day. The sum must
 * have been made with the window's own method; the caller sees to that, since the sum carries its method.
 */
export function stateOfDegreeDayWindow(
  sum: DegreeDaySum,
  window: Pick<DegreeDayWindow, "opensAtDegreeDays" | "closesAtDegreeDays">,
): DegreeDayWindowState {
  const openedOn = openingLine(sum, window.opensAtDegreeDays);
  if (openedOn === undefined) {
    return { kind: "before", remainingDegreeDays: window.opensAtDegreeDays - sum.totalDegreeDays };
  }
  const closedOn = window.closesAtDegreeDays === undefined ? undefined : openingLine(sum, window.closesAtDegreeDays);
  return closedOn === undefined ? { kind: "open", openedOn } : { kind: "past", openedOn, closedOn };
}
