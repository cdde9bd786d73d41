import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { GRANULAR_PASSES_WORDS, LINE_AT_THE_END_WORDS, TANK_LOADS_WORDS } from "#domain/company/settings-in-words";
import { WHOLE_SETTING_RANGES, type WholeSetting } from "#domain/company/typed-settings";

/** The settings that are one of a few ways to work. */
export type ChosenSetting = "granularPasses" | "tankLoads" | "lineAtTheEnd";

export const CHOSEN_SETTING_NAMES: Readonly<Record<ChosenSetting, string>> = {
  granularPasses: "Granular product goes down",
  tankLoads: "Tank loads",
  lineAtTheEnd: "Mix in pump and hose, at a change of mix and at the day’s end",
};

export const TANK_MARK_NAME = "Mark of the tank’s gauge or meter";

export const WHOLE_SETTING_NAMES: Readonly<Record<WholeSetting, string>> = {
  calibrationValidDays: "A calibration is good for",
  samePressureWithinPsi: "Pressures count as the same within",
  heatCautionFromF: "Heat wants care from",
  heatCautionWarmFromF: "On warm-season turf from",
  minutesPerStop: "Minutes for each stop",
  minutesPerThousandSquareFeet: "Minutes for each 1,000 sq ft",
};

const WHAT_IT_DOES: Readonly<Record<WholeSetting, string>> = {
  calibrationValidDays: "Days from the one on which it was made. After them a mix ticket says that it is old.",
  samePressureWithinPsi: "psi. A sprayer’s calibration holds for pressures this near to its own.",
  heatCautionFromF: "°F. From this forecast high on, feed and iron on cool-season turf want care where the label says nothing.",
  heatCautionWarmFromF: "°F. The same on warm-season turf, which grows in heat.",
  minutesPerStop: "To park, walk round, put up the sign and write. Counts for visits that are planned from now on.",
  minutesPerThousandSquareFeet: "Of work on the lawn, where no pace was measured. Counts for visits that are planned from now on.",
};

/** What a whole number does, between which figures it may stand, and what it is where nobody has changed it. */
export function wholeHint(name: WholeSetting): string {
  const { least, most } = WHOLE_SETTING_RANGES[name];
  return `${WHAT_IT_DOES[name]} From ${String(least)} to ${most.toLocaleString("en-US")}. The default is ${String(DEFAULT_HOUSE_SETTINGS[name])}.`;
}

/** What a way to work decides, and which one holds where nobody has changed it. */
export function choiceHint(name: ChosenSetting): string {
  const { granularPasses, tankLoads, lineAtTheEnd } = DEFAULT_HOUSE_SETTINGS;
  switch (name) {
    case "granularPasses":
      return `Two passes hide the streaks of an uneven pattern, one takes half the time. The default: ${GRANULAR_PASSES_WORDS[granularPasses]}.`;
    case "tankLoads":
      return `How a visit’s spray, and a day’s, is shared out over fills. The default: ${TANK_LOADS_WORDS[tankLoads]}.`;
    case "lineAtTheEnd":
      return `Decides how much is mixed, and whether the next lawn gets the last mix first. The default: ${LINE_AT_THE_END_WORDS[lineAtTheEnd]}.`;
  }
}
