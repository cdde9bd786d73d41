import { type Concentration } from "#domain/quantities/active-ingredient";
import { type Density } from "#domain/quantities/density";
import { type Rate, type RateBasis } from "#domain/quantities/rate";
import { type Grass } from "#domain/turf/grass";
import { type Grade, type NitrogenRelease } from "#domain/turf/nutrients";
import { type OnFile, type WeatherLimits } from "#domain/weather/spray-limits";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type DropletLimits } from "#domain/label/droplet-class";
import { type DistanceToWater } from "#domain/label/label-distance";

/**
 * How a product is made, in the order in which kinds go into a half-filled tank; a label's own order wins. Water-soluble
 * bags first, then what is wetted and suspended, then solutions, then oils, then surfactants: Manitoba Guide to Crop
 * Protection, quoted by the Canola Council of Canada, "General rules for mixing pesticide" (2013). WALES (Country Guide,
 * "Pest Patrol") has the same places for powders and granules, suspensions, emulsifiable concentrates and surfactants.
 * Neither names soluble powders or suspo-emulsions; the places of those are from memory. Granules are spread dry and
 * stand apart.
 */
export const FORMULATIONS = [
  "water-soluble bag",
  "soluble powder",
  "wettable powder",
  "water-dispersible granule",
  "suspension concentrate",
  "suspo-emulsion",
  "soluble liquid",
  "emulsifiable concentrate",
  "surfactant",
  "dry granule",
] as const;
/** How a product is made, as its label names it. */
export type Formulation = (typeof FORMULATIONS)[number];

/** The words of Indiana's customer statement (OISC); other states' papers use them too. */
export const SERVICE_TYPES = ["fertilizer", "grassy weed control", "broadleaf weed control", "insect control", "disease control", "other"] as const;
/** What a use is for, in those words. */
export type ServiceType = (typeof SERVICE_TYPES)[number];

/** The signal words of a label, the mildest first. */
export const SIGNAL_WORDS = ["CAUTION", "WARNING", "DANGER"] as const;
/** A signal word, as it is printed. */
export type SignalWord = (typeof SIGNAL_WORDS)[number];

/** One active ingredient of a product, as its label prints it. */
export interface ActiveIngredient {
  readonly name: string;
  readonly concentration: Concentration;
  /** The acid that a salt or ester is a form of, and how much of it the label says there is; absent where it prints none, or nobody entered it. */
  readonly acid?: { readonly name: string; readonly equivalent: Concentration };
  /** The resistance group that the label prints, such as "Group 3 herbicide". */
  readonly modeOfAction: { readonly group: string } | "none" | "unknown";
}

/** A rate at which product goes on an area: by weight for what is spread, by volume for what is poured. */
export type ProductRate = Rate<"product-mass-per-area"> | Rate<"product-volume-per-area">;

/** A rate at which product goes into finished spray, for spot and drench work: its strength, whatever ground it covers. */
export type SprayRate = Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">;

/** A rate as a label states it and a plan is made by it: over an area, or in the finished spray. */
export type UseRate = ProductRate | SprayRate;

/** True for a rate over an area. */
export function isOverArea(rate: UseRate): rate is ProductRate {
  return rate.basis === "product-mass-per-area" || rate.basis === "product-volume-per-area";
}

/** The lowest and the highest rate of a use, both of one basis; of several bases one range of each. */
type RangeOf<Basis extends RateBasis> = Basis extends RateBasis ? { readonly basis: Basis; readonly low: Rate<Basis>; readonly high: Rate<Basis> } : never;

/** The lowest and the highest rate of a use over an area. */
export type AreaRates = RangeOf<ProductRate["basis"]>;

/** The lowest and the highest strength of the finished spray of a use. */
export type SprayRates = RangeOf<SprayRate["basis"]>;

/** The lowest and the highest rate of a use. Where between them is a decision, never a default. */
export type LabelRates = AreaRates | SprayRates;

/** True for rates over an area. */
export function areOverArea(rates: LabelRates): rates is AreaRates {
  return isOverArea(rates.low);
}

/** What a label says beside its rates; each is there only where the label says it. */
export interface BesideRates {
  /** Of rates in the finished spray: what may go on an area all the same. */
  readonly mostOnArea?: ProductRate;
  /** The most of a lawn on which spot work may go, in hundredths of a percent. */
  readonly mostSpotShareBasisPoints?: number;
  /** That leaves are sprayed until they are wet. */
  readonly isToWet?: true;
}

/** The finished spray within which a use stays. */
export interface CarrierRange {
  readonly low: Rate<"carrier-volume-per-area">;
  readonly high: Rate<"carrier-volume-per-area">;
}

/** What may go on the same ground of one active ingredient, whatever products bring it. */
export interface SeasonLimit {
  readonly activeIngredient: string;
  readonly most: Rate<"active-ingredient-mass-per-area">;
  /** A season without dates is read as a calendar year, with care over the 12 months: the growing season lies within a year. */
  readonly period: "calendar-year" | "12-months" | "season";
}

/** How often a product may go on the same ground; this one counts too. */
export interface MostApplications {
  readonly count: number;
  /** A year or a season without dates is read as that of a season limit is. */
  readonly period: SeasonLimit["period"];
}

/** Something that a product is kept apart from: in one tank, or for so many days on the same ground. */
export interface KeptApart {
  /** As the label writes it: a product's name, a part of it, an ingredient, or a class of products (readKeptApartWords). */
  readonly from: string;
  readonly apart: "tank" | { readonly days: number };
}

/** That nothing goes down while something blooms, for the sake of bees, in the label's own words. */
export interface NotInBloom {
  readonly labelWords: string;
}

/** One use of a label: what for, where, how much, and what goes with it. */
export interface LabelUse {
  readonly useName: string;
  readonly serviceType: ServiceType;
  /** What it is put down against; empty for a feed. */
  readonly targets: readonly string[];
  readonly grasses: readonly Grass[] | "any turfgrass" | "unknown";
  readonly rates: LabelRates;
  readonly besideRates?: BesideRates;
  readonly carrier: OnFile<CarrierRange>;
  /** Of sprays: how fine or coarse they go out. */
  readonly droplets: OnFile<DropletLimits>;
  readonly leastDaysBetween: OnFile<{ readonly days: number }>;
  readonly mostApplications: OnFile<MostApplications>;
  readonly seasonLimits: OnFile<{ readonly limits: readonly SeasonLimit[] }>;
  readonly weather: WeatherLimits;
  readonly aftercare: LabelAftercare;
  readonly bloomAndBees: OnFile<NotInBloom>;
  readonly keptApart: OnFile<{ readonly from: readonly KeptApart[] }>;
  readonly distanceToWater: OnFile<DistanceToWater>;
  readonly stainsHardSurfaces: boolean | "unknown";
}

/** What a product's label says, as far as somebody has read it. */
export interface LabelFacts {
  readonly productName: string;
  readonly form: "granular" | "liquid";
  readonly formulation: Formulation;
  /** Fertilizers have none. */
  readonly epaRegistrationNumber: { readonly number: string } | "none" | "unknown";
  readonly isRestrictedUse: boolean | "unknown";
  readonly signalWord: SignalWord | "none" | "unknown";
  readonly analysis: { readonly grade: Grade; readonly release: NitrogenRelease } | "none" | "unknown";
  readonly density: Density | "unknown";
  /** Empty where the label names none. */
  readonly activeIngredients: readonly ActiveIngredient[] | "unknown";
  readonly uses: readonly LabelUse[];
}

/** What of a label tells what class of product it is for. */
export type ClassFacts = Pick<LabelFacts, "form" | "formulation" | "epaRegistrationNumber" | "analysis">;

/** The density as computations take it: undefined where it is not on file, and they refuse what hangs on it. */
export function knownDensity({ density }: Pick<LabelFacts, "density">): Density | undefined {
  return density === "unknown" ? undefined : density;
}

/** Where a label says something of a use, as findings cite it: "label of Barrier PE, Established turf". */
export function citationOfUse(productName: string, useName: string): string {
  return `label of ${productName}, ${useName}`;
}

/** The use of a name, or undefined when the label has none of that name. */
export function useNamed(label: LabelFacts, useName: string): LabelUse | undefined {
  return label.uses.find((use) => use.useName === useName);
}
