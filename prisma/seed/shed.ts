/**
 * The shed of the demonstration: products with invented names and registration numbers that can't exist, their labels
 * typed and confirmed, and the past season's deliveries. The chemistry and the rates are of the usual kind for such
 * products (common practice); none is any real product's label.
 */
import { type SessionKey } from "#adapters/postgres/company-work";
import { addProduct } from "#application/products/add-product";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { type House } from "#application/use-case";
import { addDays, calendarDateIn } from "#domain/foundation/calendar-date";
import { type LabelText, type LabelUseText, UNREAD_GENERAL, UNREAD_USE } from "#domain/label/label-fields";
import { type Container } from "#domain/stock/container-words";
import { must } from "./must";

/** Where the making of the demonstration gets its times from. */
export interface ShedTimes {
  readonly timeZone: string;
  /** The house as it was so many days before the demonstration was made. */
  readonly houseDaysAgo: (days: number) => House;
}

interface Delivery {
  readonly daysAgo: number;
  readonly count: number;
  readonly container: Container;
  readonly containerSize: string;
  /** Invented, in dollars; empty where the demonstration's office never wrote it down. */
  readonly paidForOne: string;
  readonly lotNumber: string;
  /** Days from the day of making; null for a container that names no date. */
  readonly expiresInDays: number | null;
}

interface ShedProduct {
  readonly name: string;
  readonly form: "granular" | "liquid";
  readonly countedBy: "mass" | "volume";
  readonly addedDaysAgo: number;
  readonly isConfirmed: boolean;
  readonly general: LabelText["general"];
  readonly use: LabelUseText;
  readonly deliveries: readonly Delivery[];
}

const NOTHING_ABOUT_WEATHER = {
  lowestTemperature: "none", highestTemperature: "none", highestTemperatureAhead: "none", lowestWind: "none",
  highestWind: "none", rainfast: "none", heavyRain: "none", soil: "frozen, saturated", bloomAndBees: "none", keptApart: "none", droplets: "none", distanceToWater: "none",
} as const;

const FEED = { epaRegistrationNumber: "none", restrictedUse: "no", signalWord: "none", density: "none", activeIngredients: "none" } as const;

const SPREAD: Pick<LabelUseText, "carrier" | "wateringNotBefore" | "rainThatSpoils" | "leafAtApplication" | "soilAtApplication" | "mowingBefore" | "postingSign"> = {
  carrier: "none", wateringNotBefore: "none", rainThatSpoils: "none", leafAtApplication: "dry", soilAtApplication: "none", mowingBefore: "none", postingSign: "none",
};

const bags = (daysAgo: number, count: number, lotNumber: string, paidForOne: string): Delivery => ({
  daysAgo, count, container: "bag", containerSize: "50 lb", paidForOne, lotNumber, expiresInDays: null,
});

const PRODUCTS: readonly ShedProduct[] = [
  {
    name: "Greenmere 32-0-0",
    form: "granular",
    countedBy: "mass",
    addedDaysAgo: 300,
    isConfirmed: true,
    general: { ...UNREAD_GENERAL, ...FEED, formulation: "dry granule", grade: "32-0-0", nitrogenRelease: "slow 16 % of product" },
    use: {
      ...UNREAD_USE, ...NOTHING_ABOUT_WEATHER, ...SPREAD,
      useName: "Established lawns", section: "Directions for use", serviceType: "fertilizer", targets: "none", grasses: "any turfgrass",
      rates: "2 to 3 lb per 1,000 sq ft", leastDaysBetween: "28 days", mostApplications: "none", seasonLimits: "none", heavyRain: "1 in within 24 hours",
      peopleAndPets: 'until watered in and dry "Keep people and pets off treated areas until product is watered in and turf is dry."',
      wateringIn: '0.25 in within 2 days, rain counts "Water in with at least 1/4 inch of water or rain within 2 days."',
      mowingAfter: "until watered in", seedingBefore: "none", seedingAfter: "none", stainsHardSurfaces: "no",
    },
    deliveries: [bags(245, 40, "GM-2207", "33.75"), bags(120, 24, "GM-3114", "35.20")],
  },
  {
    name: "Ironside 6-0-0 with 10 % Fe",
    form: "liquid",
    countedBy: "volume",
    addedDaysAgo: 298,
    isConfirmed: true,
    general: { ...UNREAD_GENERAL, ...FEED, formulation: "soluble liquid", grade: "6-0-0-10Fe", nitrogenRelease: "none", density: "10.8 lb per gal" },
    use: {
      ...UNREAD_USE, ...NOTHING_ABOUT_WEATHER,
      useName: "Foliar iron", section: "Turf", serviceType: "fertilizer", targets: "none", grasses: "any turfgrass",
      rates: "1 to 2 fl oz per 1,000 sq ft", carrier: "1 to 2 gal per 1,000 sq ft", leastDaysBetween: "14 days", mostApplications: "none", seasonLimits: "none",
      highestTemperature: 'under 80 \u00B0F "Do not apply when air temperature is 80 \u00B0F or above."', highestWind: "10 mph", rainfast: "12 hours", heavyRain: "none",
      peopleAndPets: "until dry", wateringNotBefore: '12 hours "Foliage must stay dry for 12 hours after application."', wateringIn: "none",
      rainThatSpoils: "any rain within 12 hours", leafAtApplication: "dry", soilAtApplication: "none", mowingBefore: "none", mowingAfter: "24 hours",
      seedingBefore: "none", seedingAfter: "none", postingSign: "none",
      stainsHardSurfaces: "yes",
    },
    deliveries: [
      { daysAgo: 230, count: 8, container: "jug", containerSize: "2.5 gal", paidForOne: "68.50", lotNumber: "IR-0418", expiresInDays: 150 },
      { daysAgo: 90, count: 6, container: "jug", containerSize: "2.5 gal", paidForOne: "71", lotNumber: "IR-0902", expiresInDays: 640 },
    ],
  },
  {
    name: "Wardlow 19-0-7 Preventer",
    form: "granular",
    countedBy: "mass",
    addedDaysAgo: 296,
    isConfirmed: true,
    general: {
      formulation: "dry granule", epaRegistrationNumber: "DEMO-0000-19", restrictedUse: "no", signalWord: "CAUTION", grade: "19-0-7",
      nitrogenRelease: "slow 4.75 % of product", density: "none", activeIngredients: "Prodiamine (a dinitroaniline); 0.37 %; Group 3 herbicide",
    },
    use: {
      ...UNREAD_USE, ...NOTHING_ABOUT_WEATHER, ...SPREAD,
      useName: "Crabgrass, before it comes up", section: "Turf, table 1", serviceType: "grassy weed control", targets: "crabgrass, goosegrass, annual bluegrass",
      grasses: "Kentucky bluegrass, tall fescue, perennial ryegrass, fine fescue", rates: "2.5 to 4 lb per 1,000 sq ft", leastDaysBetween: "60 days", mostApplications: "none",
      seasonLimits: "Prodiamine (a dinitroaniline); 1.5 lb per acre; calendar year", heavyRain: "2 in within 24 hours",
      peopleAndPets: "until watered in and dry", wateringIn: '0.5 in within 7 days, rain counts "For best results, irrigate with 1/2 inch of water or rain within 7 days."',
      mowingAfter: "until watered in", seedingBefore: "60 days",
      seedingAfter: '4 months "Do not seed or overseed within 4 months of application."', stainsHardSurfaces: "yes",
    },
    deliveries: [bags(240, 30, "WD-1190", "46.25"), bags(200, 10, "WD-1231", "47.10")],
  },
  {
    name: "Fieldrow Starter 18-24-6",
    form: "granular",
    countedBy: "mass",
    addedDaysAgo: 150,
    isConfirmed: true,
    general: { ...UNREAD_GENERAL, ...FEED, formulation: "dry granule", grade: "18-24-6", nitrogenRelease: "slow 6 % of product" },
    use: {
      ...UNREAD_USE, ...NOTHING_ABOUT_WEATHER, ...SPREAD,
      useName: "With new seed", section: "Seeding", serviceType: "fertilizer", targets: "none", grasses: "any turfgrass",
      rates: "2.5 to 4 lb per 1,000 sq ft", leastDaysBetween: "60 days", mostApplications: "none", seasonLimits: "none", leafAtApplication: "none",
      peopleAndPets: "until watered in and dry", wateringIn: "0.25 in within 1 day, rain counts", mowingAfter: "none", seedingBefore: "none", seedingAfter: "none",
      stainsHardSurfaces: "no",
    },
    deliveries: [{ daysAgo: 95, count: 12, container: "bag", containerSize: "40 lb", paidForOne: "38.40", lotNumber: "FS-5520", expiresInDays: null }],
  },
  {
    name: "Latefield 24-0-12",
    form: "granular",
    countedBy: "mass",
    addedDaysAgo: 12,
    isConfirmed: false,
    general: { ...UNREAD_GENERAL, ...FEED, formulation: "dry granule", grade: "24-0-12", nitrogenRelease: "slow 8 % of product" },
    use: {
      ...UNREAD_USE, ...NOTHING_ABOUT_WEATHER, ...SPREAD,
      useName: "Feeding late in the season", section: "Lawns", serviceType: "fertilizer", targets: "none", grasses: "any turfgrass",
      rates: "2 to 4 lb per 1,000 sq ft", leastDaysBetween: "45 days", mostApplications: "none", seasonLimits: "none",
      peopleAndPets: "until watered in and dry", wateringIn: "0.25 in within 2 days, rain counts", mowingAfter: "none", seedingBefore: "none", seedingAfter: "none",
      stainsHardSurfaces: "no",
    },
    deliveries: [{ daysAgo: 11, count: 20, container: "bag", containerSize: "50 lb", paidForOne: "34.95", lotNumber: "LF-0416", expiresInDays: null }],
  },
  {
    name: "Plainleaf Broadleaf Concentrate",
    form: "liquid",
    countedBy: "volume",
    addedDaysAgo: 290,
    isConfirmed: true,
    general: {
      formulation: "soluble liquid", epaRegistrationNumber: "DEMO-0000-44", restrictedUse: "no", signalWord: "DANGER", grade: "none", nitrogenRelease: "none",
      density: "9.6 lb per gal",
      activeIngredients: "2,4-D, dimethylamine salt; 2.44 lb per gal; Group 4 herbicide\nMecoprop-p; 0.63 lb per gal; Group 4 herbicide\nDicamba; 0.22 lb per gal; Group 4 herbicide",
    },
    use: {
      ...UNREAD_USE,
      useName: "Broadleaf weeds in lawns", section: "Ornamental turf", serviceType: "broadleaf weed control", targets: "dandelion, white clover, plantain, ground ivy",
      grasses: "Kentucky bluegrass, tall fescue, perennial ryegrass, fine fescue", rates: "1.1 to 1.5 fl oz per 1,000 sq ft", carrier: "0.5 to 5 gal per 1,000 sq ft",
      leastDaysBetween: "30 days", mostApplications: "none", seasonLimits: "2,4-D, dimethylamine salt; 3 lb per acre; calendar year",
      lowestTemperature: "at least 50 \u00B0F", highestTemperature: "up to 85 \u00B0F", highestTemperatureAhead: "none", lowestWind: "none", highestWind: "10 mph",
      rainfast: "4 hours", heavyRain: "none", soil: "saturated", soilAtApplication: "none",
      peopleAndPets: "until dry", wateringNotBefore: "24 hours", wateringIn: "none", rainThatSpoils: "any rain within 4 hours", leafAtApplication: "dry",
      mowingBefore: "2 days", mowingAfter: "2 days", seedingBefore: "28 days", seedingAfter: "28 days", postingSign: "none", stainsHardSurfaces: "no",
      bloomAndBees: 'not in bloom "Do not apply while weeds or clover in the lawn are in bloom and bees forage."', keptApart: "none",
      droplets: 'medium or coarser "Use medium or coarser spray droplets."',
      distanceToWater: '20 ft "Leave 20 feet between treated turf and ponds, lakes or streams."',
    },
    deliveries: [{ daysAgo: 225, count: 4, container: "jug", containerSize: "2.5 gal", paidForOne: "", lotNumber: "PB-7731", expiresInDays: 500 }],
  },
  {
    name: "Sharpleaf Spot Concentrate",
    form: "liquid",
    countedBy: "volume",
    addedDaysAgo: 160,
    isConfirmed: true,
    general: {
      formulation: "soluble liquid", epaRegistrationNumber: "DEMO-0000-58", restrictedUse: "no", signalWord: "CAUTION", grade: "none", nitrogenRelease: "none",
      density: "9.1 lb per gal", activeIngredients: "Triclopyr, triethylamine salt; 3 lb per gal; Group 4 herbicide",
    },
    use: {
      ...UNREAD_USE, ...NOTHING_ABOUT_WEATHER,
      useName: "Spots in lawns", section: "Spot treatment", serviceType: "broadleaf weed control", targets: "ground ivy, wild violet, oxalis",
      grasses: "Kentucky bluegrass, tall fescue, perennial ryegrass, fine fescue",
      rates: '0.75 to 1.5 fl oz per gal; spray to wet; spots no more than 20 % of the lawn "Mix 3/4 to 1 1/2 fl oz in each gallon and spray to wet. Treat no more than 20% of a lawn."',
      carrier: "none", leastDaysBetween: "28 days", mostApplications: "4 per calendar year", seasonLimits: "none",
      highestTemperature: "up to 85 \u00B0F", highestWind: "10 mph", rainfast: "4 hours",
      peopleAndPets: "until dry", wateringNotBefore: "12 hours", wateringIn: "none", rainThatSpoils: "any rain within 4 hours", leafAtApplication: "dry", soilAtApplication: "none",
      mowingBefore: "2 days", mowingAfter: "2 days", seedingBefore: "28 days", seedingAfter: "21 days", postingSign: "none", stainsHardSurfaces: "no",
    },
    deliveries: [{ daysAgo: 150, count: 2, container: "jug", containerSize: "1 gal", paidForOne: "84", lotNumber: "SL-0327", expiresInDays: 600 }],
  },
];

/** Puts the products on the shelf with their labels, and takes in what came through the past season. */
export async function makeShed(key: SessionKey, { timeZone, houseDaysAgo }: ShedTimes): Promise<void> {
  for (const { name, form, countedBy, addedDaysAgo, isConfirmed, general, use, deliveries } of PRODUCTS) {
    const then = houseDaysAgo(addedDaysAgo);
    const { productId } = must(await addProduct(then, key, { name, form, countedBy }));
    const { labelEntryId } = must(await enterLabel(then, key, { productId, form, basedOnNumber: 0, useIndex: 0, ...general, ...use }));
    if (isConfirmed) must(await confirmLabel(houseDaysAgo(addedDaysAgo - 1), key, { labelEntryId }));
    for (const { daysAgo, expiresInDays, ...delivery } of deliveries) {
      const house = houseDaysAgo(daysAgo);
      const receivedOn = calendarDateIn(timeZone, house.now().getTime());
      const expiresOn = expiresInDays === null ? "" : addDays(receivedOn, daysAgo + expiresInDays);
      must(await receiveDelivery(house, key, { requestId: house.newId(), productId, receivedOn, expiresOn, to: "shop", note: "", ...delivery }));
    }
  }
}
