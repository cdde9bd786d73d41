import { type GranularPasses, type LineAtTheEnd, type TankLoads } from "#domain/company/house-settings";

// The ways to work that a house may choose, in the words of screens.

/** How granular product goes down. */
export const GRANULAR_PASSES_WORDS: Readonly<Record<GranularPasses, string>> = {
  "one-with-overlap": "Once, edges overlapping",
  "two-at-half-rate-crosswise": "Twice, crosswise, half of it in each",
};

/** How a visit's spray is shared out over tank loads. */
export const TANK_LOADS_WORDS: Readonly<Record<TankLoads, string>> = {
  "same-size-every-time": "Same size every time",
  "full-tanks-then-a-short-one": "Full tanks, then a short one",
};

/** What becomes of the mix in pump and hose. */
export const LINE_AT_THE_END_WORDS: Readonly<Record<LineAtTheEnd, string>> = {
  "pushed-out-with-water": "Pushed out onto the last lawn with water",
  "left-as-it-is": "Left as it is: the next lawn gets it first",
};
