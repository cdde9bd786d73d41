import { type GivenAnswer } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";

/** An amount as a record holds it: the whole number of canonical units as text, and the words that people read. */
export interface RecordedAmount {
  readonly dimension: "mass" | "volume" | "area";
  readonly amount: string;
  readonly words: string;
}

/** How an amount was come by. What nobody measured says so. */
export const MEASURED_BY = ["meter", "bags", "weight", "as-planned-not-measured"] as const;
export type MeasuredBy = (typeof MEASURED_BY)[number];

export const MEASURED_BY_WORDS: Readonly<Record<MeasuredBy, string>> = {
  meter: "measured in gallons",
  bags: "measured in bags",
  weight: "weighed",
  "as-planned-not-measured": "as planned, not measured",
};

/** How a lawn came out of a visit. */
export const LAWN_OUTCOMES = ["done", "part", "not-done"] as const;
export type LawnOutcome = (typeof LAWN_OUTCOMES)[number];

export const LAWN_OUTCOME_WORDS: Readonly<Record<LawnOutcome, string>> = { done: "Done", part: "Part done", "not-done": "Not done" };

/** What a record says for the planned rate of a product that came out of a fill and was not planned. */
export const NOT_PLANNED = "not planned here";

/** What one lawn got of a product. */
export interface RecordedLawnAmount {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly treatedArea: RecordedAmount;
  readonly amount: RecordedAmount;
  /** Active ingredient per area, as two whole numbers of canonical units: what season limits count. */
  readonly activeIngredients: readonly { readonly name: string; readonly amount: string; readonly per: string }[];
}

/** So much finished spray out of one fill. */
export interface RecordedFill {
  readonly fillId: string;
  readonly number: number;
  readonly sprayed: RecordedAmount;
  readonly mixingPlace: string;
}

/** One product that was put down. */
export interface RecordedTreatment {
  readonly line: number;
  readonly productId: string;
  readonly productName: string;
  readonly epaRegistrationNumber: string | null;
  readonly formulation: string;
  readonly activeIngredients: readonly string[];
  readonly isRestrictedUse: boolean;
  readonly serviceType: string;
  readonly targets: readonly string[];
  readonly reason: string;
  readonly plannedRate: string;
  /** Of spot work the share of each lawn on which it went, in hundredths of a percent; there only for spot work. */
  readonly spotShareBasisPoints?: number;
  readonly measuredBy: MeasuredBy;
  readonly total: RecordedAmount;
  readonly lots: readonly { readonly lotId: string; readonly number: string; readonly amount: RecordedAmount }[];
  /** Null for what did not come from a fill; of several the first. */
  readonly fill: RecordedFill | null;
  /** The other fills that it came out of, in their order; there only where there were several. */
  readonly furtherFills?: readonly RecordedFill[];
  readonly equipmentName: string;
  /** Which sprayer or spreader that is; records that were written before it was kept, and gear that nobody named, say nothing of it. */
  readonly equipmentId?: string;
  readonly lawns: readonly RecordedLawnAmount[];
  /**
   * Active ingredients whose amount could not be counted for want of a density, by name, or that nobody had read which ones
   * there are. Records that were written before it was kept say nothing of it.
   */
  readonly notCountable?: readonly string[] | "not-read";
  /** What the customer was told to mind, in the label's own words. */
  readonly precautions: readonly string[];
}

/** All the fills that a product came out of, in their order; none for what did not come from a fill. */
export function fillsOf({ fill, furtherFills = [] }: Pick<RecordedTreatment, "fill" | "furtherFills">): readonly RecordedFill[] {
  return fill === null ? [] : [fill, ...furtherFills];
}

/** The weather at the site, with the instrument it was read from; nobody else's reading stands for it. */
export type RecordedWeather =
  | { readonly kind: "taken"; readonly temperatureF: number; readonly windMph: number; readonly windFrom: string; readonly instrument: string }
  | { readonly kind: "not-taken" };

/** A license as it stood on the day. */
export interface RecordedLicense {
  readonly kind: string;
  readonly state: string;
  readonly number: string;
  readonly category: string;
  readonly expiresOn: CalendarDate;
}

/** What an application record says: written once, from what really happened. Text and whole numbers only. */
export interface RecordContent {
  readonly form: "application-record-1";
  readonly company: { readonly name: string; readonly address: string | null; readonly phone: string | null; readonly businessLicenseNumber: string | null };
  readonly customer: { readonly name: string; readonly phone: string | null };
  readonly site: { readonly propertyId: string; readonly street: string; readonly city: string; readonly state: string; readonly zip: string };
  readonly visit: { readonly visitId: string; readonly name: string; readonly mixTicketNumber: number | null };
  readonly applicator: { readonly personId: string; readonly name: string; readonly license: RecordedLicense | null };
  readonly supervisor: { readonly personId: string; readonly name: string; readonly license: RecordedLicense | null } | null;
  /** Instants as ISO 8601 in universal time; the time zone says how the site's clock stood. */
  readonly startedAt: string;
  readonly endedAt: string;
  readonly timeZone: string;
  readonly enteredAt: string;
  readonly weather: RecordedWeather;
  readonly lawns: readonly { readonly zoneId: string; readonly name: string; readonly grasses: readonly string[]; readonly outcome: LawnOutcome }[];
  readonly treatments: readonly RecordedTreatment[];
  readonly signIsUp: boolean;
  readonly noticeWasLeft: boolean;
  readonly remarks: string | null;
  readonly rulesVersion: string;
  /** Why license holders said that holds of law among the findings do not apply here. */
  readonly holdAnswers: readonly GivenAnswer[];
  readonly findings: readonly Finding[];
  /** The name that the applicator signed with. */
  readonly signature: string | null;
}
