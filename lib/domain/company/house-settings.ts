import { exactly, type Measure } from "#domain/quantities/exact-quantity";

/** How granular product goes down: over the lawn once with overlap, or twice crosswise at half the rate. */
export const GRANULAR_PASSES = ["one-with-overlap", "two-at-half-rate-crosswise"] as const;
export type GranularPasses = (typeof GRANULAR_PASSES)[number];

/** How a visit's spray is shared out over tank loads. */
export const TANK_LOADS = ["same-size-every-time", "full-tanks-then-a-short-one"] as const;
export type TankLoads = (typeof TANK_LOADS)[number];

/**
 * What becomes of the mix in pump and hose when another one follows and at the end of the day: clean water pushes it out
 * onto the last lawn, or it stays and the next lawn gets it first.
 */
export const LINES_AT_THE_END = ["pushed-out-with-water", "left-as-it-is"] as const;
export type LineAtTheEnd = (typeof LINES_AT_THE_END)[number];

/**
 * What a company may hold differently from the next one. What needs a setting takes it as an argument. Times are whole
 * minutes.
 */
export interface HouseSettings {
  /** For so many days from the day it was made a calibration is good. */
  readonly calibrationValidDays: number;
  /** Pressures this near to one another count as the same setup of a sprayer, in psi. */
  readonly samePressureWithinPsi: number;
  readonly granularPasses: GranularPasses;
  readonly tankLoads: TankLoads;
  /** From this forecast high on, in degrees Fahrenheit, feed and iron on cool-season turf want care. */
  readonly heatCautionFromF: number;
  /** The same for warm-season turf, which grows in heat. */
  readonly heatCautionWarmFromF: number;
  /** What each stop takes whatever its size: park, walk round, sign, note. */
  readonly minutesPerStop: number;
  /** What 1,000 sq ft of lawn take on top of that. */
  readonly minutesPerThousandSquareFeet: number;
  /** The mark of the gauge or meter by which water goes into a tank. */
  readonly tankMark: Measure<"volume">;
  readonly lineAtTheEnd: LineAtTheEnd;
}

/** What holds until a company says otherwise. */
export const DEFAULT_HOUSE_SETTINGS: HouseSettings = {
  /** A year: sprayers and spreaders are calibrated at least at the beginning of each season. Common practice. */
  calibrationValidDays: 365,
  /** What a hand-held gauge can be read to. At 40 psi it is 2.5% of the flow. Common practice. */
  samePressureWithinPsi: 2,
  /** Two passes hide the streaks that an uneven spreader pattern leaves. Common practice. */
  granularPasses: "two-at-half-rate-crosswise",
  /** Loads of one size are measured out the same way each time, so fewer are measured wrong. Common practice. */
  tankLoads: "same-size-every-time",
  /** Feed and iron go down in the seventies and wait in the eighties. Common practice for cool-season turf. */
  heatCautionFromF: 80,
  /**
   * Warm-season grass is fed in summer; from 90 °F on turf bears less (University of Georgia, Ben Hill County 2019, which says
   * so of herbicides). For feed and iron it is common practice.
   */
  heatCautionWarmFromF: 90,
  /** A rough figure to plan with until a crew has timed itself. Common practice. */
  minutesPerStop: 8,
  /** The same: a walking pace with a spreader or a hose, turns included. Common practice. */
  minutesPerThousandSquareFeet: 4,
  /** What a meter in the fill hose shows; a tank's own gauge is coarser. Common practice. */
  tankMark: exactly("gal", "0.1"),
  /** Water behind the mix leaves the least of it in the line. Common practice. */
  lineAtTheEnd: "pushed-out-with-water",
};
