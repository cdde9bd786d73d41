// What the quantities of the main job must be, worked out here from the ground up and not with the product's own code.

/**
 * Offsets along a line by the rule of trapezoids: the step times half of both end widths and all of the others between
 * (Purdue Extension AY-10-W and other handbooks on measuring lawns; the rule itself is plain geometry).
 */
function areaByOffsets(step: number, widths: readonly number[]): number {
  const [first = 0, last = 0] = [widths[0], widths.at(-1)];
  return step * (widths.reduce((sum, width) => sum + width, 0) - (first + last) / 2);
}

/** To the nearest mark of a tool. */
function toMark(amount: number, mark: number): number {
  return Math.round(amount / mark) * mark;
}

export const OFFSETS = { step: 10, widths: [30, 34, 36, 32, 28] } as const;
export const FRONT_SQ_FT = areaByOffsets(OFFSETS.step, OFFSETS.widths);
/** A rectangle less a bed. */
export const BACK_SQ_FT = 100 * 60 - 20 * 10;
export const POND_FT = 60;
/** What the crew keeps clear of the pond in any case. */
const OWN_STRIP_FT = 10;
/** 415 ILCS 65/5a: 15 ft from any water but with a spreader that has a deflector, which needs 3. */
const LEGAL_STRIP_FT = 15;
/** The spreader has a deflector, so the crew's own strip is the wider; the sprayer has none. */
export const BACK_SPREAD_SQ_FT = BACK_SQ_FT - POND_FT * OWN_STRIP_FT;
export const BACK_SPRAYED_SQ_FT = BACK_SQ_FT - POND_FT * LEGAL_STRIP_FT;

const FEED_LB_PER_THOUSAND = 2.5;
const IRON_FL_OZ_PER_THOUSAND = 1.5;
const GALLONS_PER_THOUSAND = 1.5;
const SCALE_LB = 0.25;
const CUP_FL_OZ = 0.5;
const GAUGE_GAL = 0.1;

/** Pounds of feed to weigh out for a lawn. */
export function feedPounds(squareFeet: number): number {
  return toMark((squareFeet / 1000) * FEED_LB_PER_THOUSAND, SCALE_LB);
}

/** Fluid ounces of iron to measure out for a visit. */
export function ironFluidOunces(squareFeet: number): number {
  return toMark((squareFeet / 1000) * IRON_FL_OZ_PER_THOUSAND, CUP_FL_OZ);
}

/** Gallons of finished spray for a visit. */
export function finishedGallons(squareFeet: number): number {
  return Math.round(toMark((squareFeet / 1000) * GALLONS_PER_THOUSAND, GAUGE_GAL) * 10) / 10;
}

/** Pounds of nitrogen per 1,000 sq ft: 2.5 lb of a product of 32 % bring 0.8. */
export const NITROGEN_POUNDS = FEED_LB_PER_THOUSAND * 0.32;

/** Minutes of a station for a quarter inch, from the average depth in its cans, up to whole ones. */
export function minutesForQuarterInch(depths: readonly number[], ranMinutes: number): number {
  const inchesPerHour = (depths.reduce((sum, depth) => sum + depth, 0) / depths.length) * (60 / ranMinutes);
  return Math.ceil((0.25 / inchesPerHour) * 60 - 1e-9);
}

export const STATIONS = [
  { name: "Front spray heads", lawn: "A Front", depths: [0.2, 0.24, 0.28, 0.24], ranMinutes: 20 },
  { name: "Back rotors", lawn: "B Back", depths: [0.14, 0.15, 0.16, 0.15], ranMinutes: 15 },
] as const;
