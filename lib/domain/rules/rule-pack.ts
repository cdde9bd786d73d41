import { type UsState } from "#domain/company/us-state";
import { type SignUpTrigger } from "#domain/label/aftercare-constraint";

/** How the wording of an entry was come by. What nobody read gives no value: it only points to where to look. */
export type Standing = "read" | "read-second-hand" | "read-old-edition";

/**
 * One fact of law as a pack has it: a value with its citation, what the law was read to be silent about, or a pointer
 * without a value, shown as "not on file, look it up".
 */
export type PackFact<Value> =
  | { readonly onFile: true; readonly value: Value; readonly citation: string; readonly standing: Standing; readonly remark?: string }
  | { readonly onFile: false; readonly standing: "unverified"; readonly whereToLook: string };

/** Lengths in the unit that the law speaks in, as an exact decimal. */
export interface StatutoryLength {
  readonly value: string;
  readonly unit: "in" | "ft";
}

/** What a posting sign must be. */
export interface SignRule {
  readonly longSide: StatutoryLength;
  readonly shortSide: StatutoryLength;
  /** Whether the law names the size, or the least size. */
  readonly size: "exactly" | "at-least";
  readonly orientation: "either" | "landscape" | "portrait";
  readonly leastLetterHeight: StatutoryLength;
  readonly colors: string;
  /** The words that must be on it, in order; {name} and {phone} are the business's own. */
  readonly words: readonly string[];
  readonly placement: string;
  readonly support: string | null;
  readonly upTrigger: SignUpTrigger;
  readonly downWords: string;
  /** Calendar days after the application on which it may come down at the earliest; never turned into hours. */
  readonly downDaysFollowing: number;
  readonly removedBy: string;
}

/** When a lawn may get phosphorus. */
export interface PhosphorusRule {
  /** A soil test that shows a deficiency and is no older. */
  readonly testWithinMonths: number;
  /** A new lawn needs no test in its first so many growing seasons. */
  readonly newLawnGrowingSeasons: number;
}

/** How far from water fertilizer stays, by the machine that puts it down. */
export interface WaterDistanceRule {
  readonly withDeflector: StatutoryLength;
  readonly otherwise: StatutoryLength;
}

/** The most of a nutrient: of nitrogen, or of phosphate (P2O5) as labels print it. */
export interface NutrientCapRule {
  readonly poundsPer1000SqFt: string;
}

/** How much of a fertilizer's nitrogen must be released slowly, at least. */
export interface SlowReleaseRule {
  readonly leastPercentOfNitrogen: string;
}

/** A state's rules, entry by entry. The edition goes on every mix ticket and paper. */
export interface RulePack {
  readonly state: UsState;
  readonly edition: string;
  readonly leadAgency: string;
  readonly facts: {
    readonly "what-counts-as-lawn-care-product": PackFact<"pesticides" | "pesticides-and-fertilizers">;
    readonly "posting-sign": PackFact<SignRule>;
    /** Elements of the written statement that the customer gets. */
    readonly "customer-statement": PackFact<readonly string[]>;
    /** Elements of the application record. */
    readonly "record-elements": PackFact<readonly string[]>;
    readonly "record-years": PackFact<number>;
    readonly phosphorus: PackFact<PhosphorusRule>;
    /** Beside the need that a test shows: the most that goes down where it may go down. */
    readonly "phosphate-per-application": PackFact<NutrientCapRule>;
    readonly "phosphate-per-year": PackFact<NutrientCapRule>;
    readonly "distance-to-water": PackFact<WaterDistanceRule>;
    readonly "frozen-or-saturated-ground": PackFact<"forbidden">;
    readonly "hard-surfaces": PackFact<"clean-up-at-once">;
    readonly "nitrogen-per-application": PackFact<NutrientCapRule>;
    /** Of nitrogen that works at once ("water-soluble"); what a label does not state counts as quick. */
    readonly "quick-nitrogen-per-application": PackFact<NutrientCapRule>;
    readonly "nitrogen-per-year": PackFact<NutrientCapRule>;
    readonly "slow-release-share": PackFact<SlowReleaseRule>;
    /** First and last day as month and day, "12-01" to "03-01": the second may be in the next year. */
    readonly "blackout-dates": PackFact<readonly { readonly from: string; readonly until: string }[]>;
    readonly "supervision-of-technicians": PackFact<string>;
    /** The categories of license under which pesticides go on turf, by the code that stands on the license. */
    readonly "license-category": PackFact<readonly string[]>;
  };
}

/** The name of a rule of a pack. */
export type RuleName = keyof RulePack["facts"];

/** What each rule is about, in the words of screens. */
export const RULE_WORDS: Readonly<Record<RuleName, string>> = {
  "what-counts-as-lawn-care-product": "what counts as a lawn care product",
  "posting-sign": "posting sign",
  "customer-statement": "statement for the customer",
  "record-elements": "what a record holds",
  "record-years": "how long records are kept",
  phosphorus: "phosphorus",
  "phosphate-per-application": "phosphate in one application",
  "phosphate-per-year": "phosphate in one year",
  "distance-to-water": "distance to water",
  "frozen-or-saturated-ground": "frozen or saturated ground",
  "hard-surfaces": "hard surfaces",
  "nitrogen-per-application": "nitrogen in one application",
  "quick-nitrogen-per-application": "quick nitrogen in one application",
  "nitrogen-per-year": "nitrogen in one year",
  "slow-release-share": "share of slow nitrogen",
  "blackout-dates": "days of the year without fertilizer",
  "supervision-of-technicians": "supervision of technicians",
  "license-category": "license category for turf",
};

/** What the product says of a rule that is not on file. */
export const NOT_ON_FILE = "not on file, look it up";
