import { type CalendarDate } from "#domain/foundation/calendar-date";
import { isSprayer, type SprayerKind, type SpreaderKind } from "#domain/equipment/equipment-kind";
import { type TipDroplets } from "#domain/equipment/tip-droplets";
import { type Finding } from "#domain/foundation/finding";
import { type HouseSettings } from "#domain/company/house-settings";
import { type UsState } from "#domain/company/us-state";
import { type LawnSeeding } from "#domain/properties/lawn-seeding";
import { type Measure } from "#domain/quantities/exact-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { type Density } from "#domain/quantities/density";
import { type Rate } from "#domain/quantities/rate";
import { type Grass } from "#domain/turf/grass";
import { type Outcome } from "#domain/foundation/outcome";
import { type PerNutrient } from "#domain/turf/nutrients";
import { type ActiveIngredient, type AreaRates, type ClassFacts, type LabelFacts, type LabelRates, type LabelUse, type ProductRate, type ServiceType, type UseRate } from "#domain/label/label-facts";
import { type LawnPace } from "#domain/mixing/time-on-lawn";
import { type EnteredHigh } from "#domain/weather/forecast-high";
import { type WaterBeside, type WaterEdge } from "#domain/rules/kept-clear";
import { type SoilTestFact } from "#domain/rules/nutrient-law";

/** The nutrients that a rate of product puts on an area; refused by name where a label's fact is missing. */
export type NutrientRates = PerNutrient<Rate<"nutrient-mass-per-area">>;

/** Not countable where the density that it takes is on file neither with the record nor now. */
export type PastRate = Rate<"active-ingredient-mass-per-area"> | "not-countable";

/** An active ingredient that was put down before. */
export interface PastIngredient {
  readonly name: string;
  readonly rate: PastRate;
  /** What it comes to as the acid that it is a form of, by the product's label on file today. */
  readonly acid?: { readonly name: string; readonly rate: PastRate };
  /** As the product's label on file prints it today; a record holds the name alone. */
  readonly modeOfAction: ActiveIngredient["modeOfAction"];
}

/** A label of what was put down before, as far as labels that keep their product apart from others ask about it. */
export type PastLabel = ClassFacts & { readonly serviceTypes: readonly ServiceType[] };

/** What was put on a lawn before, as far as limits over time ask about it. */
export interface PastApplication {
  readonly on: CalendarDate;
  /** Whose record it is, so that no visit is counted against itself. */
  readonly visitId: string;
  readonly productId: string;
  readonly productName: string;
  /** The kind of work in the record's own words: one of a label's, or that no label was on file. */
  readonly serviceType: string;
  /** Unknown where nobody has read what was in it, neither then nor since. */
  readonly activeIngredients: readonly PastIngredient[] | "unknown";
  /** On the ground that was treated, by the analysis that is on file today. */
  readonly nutrients: Outcome<NutrientRates>;
  /** What the label that is on file today says of the product, whatever it is used for. */
  readonly label: PastLabel | "unknown";
  /** The use under which it was put down; all of the label's where that is not known, and none where no label is on file. */
  readonly putDownAs: readonly Pick<LabelUse, "useName" | "keptApart">[];
  /** There only where it was spot work; limits are for the spots, the year's ledger for the whole lawn. */
  readonly spot?: SpotWork;
}

/** One lawn of the visit. */
export interface TicketLawn {
  readonly zoneId: string;
  readonly letter: string;
  readonly name: string;
  readonly area: Quantity<"area">;
  readonly areaOrigin: "measured" | "entered" | "imported";
  /** The main one first. */
  readonly grasses: readonly Grass[];
  readonly grassesAssumed: boolean;
  readonly waterBeside: WaterBeside;
  readonly waterEdges: readonly WaterEdge[];
  readonly soilTests: readonly SoilTestFact[];
  /** Seed and sod, done and planned. */
  readonly seedings: readonly LawnSeeding[];
  /** Whether weeds, clover or the grass itself bloom there on the day; the crew sees it. */
  readonly inBloom: "yes" | "no" | "unknown";
  /** The last look that said yes or no, in words; null where nobody has looked. */
  readonly bloomSeen: string | null;
  readonly history: readonly PastApplication[];
}

interface GearOfAnyKind {
  readonly equipmentId: string;
  readonly name: string;
  /** How fast the operator covers ground with it. */
  readonly pace: LawnPace;
}

/** A sprayer as a ticket asks about it: what it holds and what it puts out. */
export interface TicketSprayer extends GearOfAnyKind {
  readonly kind: SprayerKind;
  readonly capacity: Quantity<"volume">;
  /** What pump and hose hold beyond the tank. */
  readonly holdUp: Quantity<"volume"> | "unknown";
  /** The tip on it and the pressure, with the droplets that they make. */
  readonly tip: TipDroplets;
  /** The rate of finished spray, and in whose words: a calibration, or what stands in for one. */
  readonly carrier: {
    readonly rate: Rate<"carrier-volume-per-area">;
    readonly basis: "calibration" | "nominal";
    readonly words: string;
    /** Of the spray that goes out at this rate; left out where that is as thin as water. */
    readonly density?: Density;
  };
}

/** A spreader's setting for one product: what it puts down there, and in whose words. */
export interface SpreaderSetting {
  readonly setting: string;
  readonly rate: Rate<"product-mass-per-area">;
  readonly words: string;
  /** One calibration, as on tickets of before there was another; the line between two of them; the bag. */
  readonly basis?: "calibration" | "between-tests" | "nominal";
  /** Where several settings were tested and don't find the rate: that it lies beyond them, or that they disagree. */
  readonly doubt?: { readonly rule: "setting-beyond-tests" | "setting-tests-disagree"; readonly sentence: string };
}

/** A spreader as a ticket asks about it: what it holds and how it is set. */
export interface TicketSpreader extends GearOfAnyKind {
  readonly kind: SpreaderKind;
  readonly capacity: Quantity<"mass">;
  readonly deflector: "yes" | "no" | "unknown";
  /** The setting that its calibration for this product found, or its bag states, with the rate there. */
  readonly setting: SpreaderSetting | "not-calibrated";
}

/** The cup or scale that measures a product out. */
export interface TicketTool<D extends "mass" | "volume" = "mass" | "volume"> {
  readonly name: string;
  readonly mark: Measure<D>;
}

/** A label's use with its rates over the ground, whatever they are stated over. */
export type TicketUse = Omit<LabelUse, "rates"> & { readonly rates: AreaRates };

/** Work on a stated share of a lawn, in hundredths of a percent. */
export interface SpotWork {
  readonly shareBasisPoints: number;
}

/** One product at one rate for one reason, with what it is put down with. */
export interface TicketTreatment {
  /** Its number in the plan of the visit; each has its own. */
  readonly line: number;
  readonly productId: string;
  readonly label: LabelFacts;
  readonly use: TicketUse;
  /** Who held the entry against the label, or null where nobody has. */
  readonly labelConfirmedBy: string | null;
  /** Over the ground that is treated; of a rate in the finished spray what it comes to at what the sprayer puts out. */
  readonly rate: ProductRate;
  /** The plan's rate and the label's as they are stated; there only where one of them is of product in the finished spray. */
  readonly asStated?: { readonly rate: UseRate; readonly rates: LabelRates };
  /** There only for spot work; without it a treatment goes all over its lawns. */
  readonly spot?: SpotWork;
  readonly rateText: string;
  readonly reason: string;
  readonly zoneIds: readonly string[];
  readonly gear: TicketSprayer | TicketSpreader;
  readonly tool: TicketTool | "none";
  /** What the shop and the trucks hold of it, and what is in a tank for this visit: filled for it, or left over of its mix. */
  readonly onHand: Measure<"mass"> | Measure<"volume">;
  /** How its calibration stands, as the equipment's own check found it. */
  readonly calibrationFinding: Finding;
}

/** What the company holds to where label and law leave it open. */
export type TicketSettings = Pick<HouseSettings, "granularPasses" | "tankLoads" | "heatCautionFromF" | "heatCautionWarmFromF" | "tankMark" | "minutesPerThousandSquareFeet">;

/** Who puts it down, and the license under which it is done on that day. */
export interface TicketApplicator {
  readonly name: string;
  readonly license:
    | { readonly standing: "stands"; readonly kind: "certified-applicator" | "registered-technician"; readonly number: string; readonly category: string }
    | { readonly standing: "expired" | "none" };
}

/** Everything that one visit's mix ticket is computed from. */
export interface TicketQuestion {
  readonly on: CalendarDate;
  readonly state: UsState;
  readonly lawns: readonly TicketLawn[];
  readonly treatments: readonly TicketTreatment[];
  readonly applicator: TicketApplicator;
  /** The day's forecast high as somebody entered it. */
  readonly forecastHighF: EnteredHigh;
  /** The forecast highs of the days after, from the next one on: what burns is for care in their heat, and a limit on the hours after the work may reach them. */
  readonly forecastFollowingHighsF: readonly EnteredHigh[];
  readonly settings: TicketSettings;
}

/** True for gear that sprays. */
export function isSprayGear(gear: TicketSprayer | TicketSpreader): gear is TicketSprayer {
  return isSprayer(gear.kind);
}

/** True for a treatment that is sprayed. */
export function isSprayed(treatment: TicketTreatment): treatment is TicketTreatment & { readonly gear: TicketSprayer } {
  return isSprayGear(treatment.gear);
}

/** True for a treatment that is spread. */
export function isSpread(treatment: TicketTreatment): treatment is TicketTreatment & { readonly gear: TicketSpreader } {
  return !isSprayed(treatment);
}

/** False for what was put down without any active ingredient, as most of a lawn's history; true where nobody has read them. */
export function hasIngredients({ activeIngredients }: Pick<PastApplication, "activeIngredients">): boolean {
  return activeIngredients === "unknown" || activeIngredients.length > 0;
}
