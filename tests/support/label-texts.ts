// Labels as a person would type them, of products that do not exist.
import { type LabelText, type LabelUseText, UNREAD_GENERAL, UNREAD_USE } from "#domain/label/label-fields";

/** A use with a rate and nothing else read. */
export function aUseText(typed: Partial<LabelUseText> = {}): LabelUseText {
  return {
    ...UNREAD_USE,
    useName: "Established lawns",
    serviceType: "fertilizer",
    targets: "none",
    rates: "2 to 3 lb per 1,000 sq ft",
    ...typed,
  };
}

/** A granular feed of which only the rate has been read. */
export function aFeedText(typed: Partial<LabelText["general"]> = {}, use: Partial<LabelUseText> = {}): LabelText {
  return {
    productName: "Greenmere 32-0-0",
    form: "granular",
    general: { ...UNREAD_GENERAL, formulation: "dry granule", ...typed },
    uses: [aUseText(use)],
  };
}

/** A pre-emergent on a feed, every fact of it read. */
export const A_PREVENTER_TEXT: LabelText = {
  productName: "Wardlow 19-0-7",
  form: "granular",
  general: {
    formulation: "dry granule",
    epaRegistrationNumber: "DEMO-0000-19",
    restrictedUse: "no",
    signalWord: "caution",
    grade: "19-0-7",
    nitrogenRelease: "slow 5 % of product",
    density: "none",
    activeIngredients: "Prodiamine; 0.37 %; Group 3 herbicide",
  },
  uses: [
    {
      useName: "Crabgrass, spring",
      section: "page 2",
      serviceType: "grassy weed control",
      targets: "crabgrass, goosegrass",
      grasses: "Kentucky bluegrass, tall fescue",
      rates: "2.5 to 4 lb per 1,000 sq ft",
      carrier: "none",
      leastDaysBetween: "60 days",
      mostApplications: "2 per calendar year",
      seasonLimits: "Prodiamine; 1.5 lb per acre; per calendar year",
      lowestTemperature: "none",
      highestTemperature: "up to 90 \u00B0F",
      highestTemperatureAhead: "none",
      lowestWind: "none",
      highestWind: "15 mph",
      rainfast: "none",
      heavyRain: "2 in within 24 hours",
      soil: "frozen or saturated",
      peopleAndPets: 'until watered in and dry "Keep people and pets off until watered in and dry."',
      wateringNotBefore: "none",
      wateringIn: "0.5 in within 7 days, rain counts",
      rainThatSpoils: "none",
      leafAtApplication: "dry",
      soilAtApplication: "none",
      mowingBefore: "none",
      mowingAfter: "until watered in",
      seedingBefore: "60 days",
      seedingAfter: "4 months",
      postingSign: "none",
      bloomAndBees: "none",
      keptApart: "none",
      droplets: "none",
      distanceToWater: "none",
      stainsHardSurfaces: "none",
    },
  ],
};

const NO_WEATHER = {
  lowestTemperature: "none", highestTemperature: "none", highestTemperatureAhead: "none", lowestWind: "none", highestWind: "none", rainfast: "none",
  heavyRain: "none", soil: "frozen, saturated",
} as const;

const FEEDS_ONLY = { ...UNREAD_GENERAL, epaRegistrationNumber: "none", restrictedUse: "no", signalWord: "none", activeIngredients: "none" } as const;

/** A granular feed, every fact of it read. */
export const A_WHOLE_FEED_TEXT: LabelText = {
  productName: "Greenmere 32-0-0",
  form: "granular",
  general: { ...FEEDS_ONLY, formulation: "dry granule", grade: "32-0-0", nitrogenRelease: "slow 16 % of product", density: "none" },
  uses: [
    {
      ...UNREAD_USE, ...NO_WEATHER, useName: "Established lawns", serviceType: "fertilizer", targets: "none", grasses: "any turfgrass", rates: "2 to 3 lb per 1,000 sq ft",
      carrier: "none", leastDaysBetween: "28 days", mostApplications: "none", seasonLimits: "none", peopleAndPets: "until watered in and dry", wateringNotBefore: "none",
      wateringIn: "0.25 in within 2 days, rain counts", rainThatSpoils: "none", leafAtApplication: "dry", soilAtApplication: "none", mowingBefore: "none",
      mowingAfter: "until watered in", seedingBefore: "none", seedingAfter: "none", postingSign: "none", bloomAndBees: "none", keptApart: "none", droplets: "none", distanceToWater: "none", stainsHardSurfaces: "no",
    },
  ],
};

/** Foliar iron in a tank, every fact of it read. */
export const A_WHOLE_IRON_TEXT: LabelText = {
  productName: "Ironside 6-0-0",
  form: "liquid",
  general: { ...FEEDS_ONLY, formulation: "soluble liquid", grade: "6-0-0-10Fe", nitrogenRelease: "none", density: "10.8 lb per gal" },
  uses: [
    {
      ...UNREAD_USE, ...NO_WEATHER, useName: "Foliar iron", serviceType: "fertilizer", targets: "none", grasses: "any turfgrass", rates: "1 to 2 fl oz per 1,000 sq ft",
      carrier: "1 to 2 gal per 1,000 sq ft", leastDaysBetween: "14 days", mostApplications: "none", seasonLimits: "none", highestTemperature: "under 80 \u00B0F", highestWind: "10 mph", rainfast: "12 hours",
      peopleAndPets: "until dry", wateringNotBefore: "12 hours", wateringIn: "none", rainThatSpoils: "any rain within 12 hours", leafAtApplication: "dry",
      soilAtApplication: "none", mowingBefore: "none", mowingAfter: "24 hours", seedingBefore: "none", seedingAfter: "none", postingSign: "none", bloomAndBees: "none", keptApart: "none", droplets: "none", distanceToWater: "none", stainsHardSurfaces: "yes",
    },
  ],
};
