import { type Measure } from "#domain/quantities/exact-quantity";
import { type SowingMethod } from "#domain/properties/lawn-seeding";
import { type MowingCount } from "#domain/label/mowing-count";
import { type Authority, type OnFile, stated } from "#domain/weather/spray-limits";

/** What elapsed time is counted from. */
export type ReachAnchor = "application-start" | "application-end" | "posting";

/**
 * How far something reaches, from its own anchor. Minutes are elapsed time. "2 days" on a label does not say whether days
 * of the calendar or spans of 24 h are meant, so such days are kept as days, and whoever computes with them keeps both
 * readings: what must not be before ends by the later of them, what is due is due by the earlier. Where the words do not
 * say whether the start or the end of the work counts, the one that breaks neither does. Reading both ways is common
 * practice; no label or law says which is meant. Calendar days and months are counted on the calendar from the day of
 * the application and are never turned into hours: the day following begins at midnight.
 */
export type Reach =
  | { readonly anchor: ReachAnchor; readonly durationMinutes: number }
  | { readonly anchor: "days"; readonly from: ReachAnchor | "not-said"; readonly days: number }
  | { readonly anchor: "calendar-day"; readonly days: number }
  | { readonly anchor: "calendar-month"; readonly months: number };

/** By when something is due: within a reach, or at once. */
export type DueReach = Exclude<Reach, { readonly anchor: "calendar-month" }> | { readonly anchor: "at-once" };

/**
 * What is due at once is done within an hour after the application ends: common practice for a label's "immediately",
 * which must be some time to be held against the hours of a property and against what must stay dry.
 */
export const AT_ONCE_MINUTES = 60;

/**
 * How far something reaches back from the start of the application or the day it is on. Days are read both ways, and the
 * earlier start counts: the first instant of the day so many days before, and so many times 24 h before the work.
 */
export type ReachBack =
  | { readonly anchor: "application-start"; readonly durationMinutes: number }
  | { readonly anchor: "days"; readonly from: "application-start"; readonly days: number }
  | { readonly anchor: "calendar-day"; readonly days: number };

/** A state of the lawn that a label waits for. When it comes can only be estimated. */
export type AwaitedState = "dry" | "dust-settled" | "watered-in" | "watered-in-and-dry";

/** What something lasts until: a time, or a state of the lawn. */
export type Until = Reach | { readonly anchor: "state"; readonly state: AwaitedState };

/** How much water works a product in. Most is stated where a label or law caps it. */
export interface WateringDepth {
  readonly least: Measure<"length">;
  readonly most: Measure<"length"> | "none";
}

/** How seed is sown: a residual herbicide lasts longer under slit-seeded grass than under broadcast seed. */
export type SeedingMethod = Exclude<SowingMethod, "unknown">;

/** When a sign must be up. Each is a legal trigger of its own; none is another with a time added. */
export type SignUpTrigger =
  | "before-application"
  | "at-start"
  | "at-time-of-application"
  | "immediately-following"
  | "on-day-of-application";

/** When a sign may come down. Where `orReentryIfLater`, not before people may come back either. */
export type SignDownTrigger =
  | {
      readonly trigger: "elapsed";
      readonly anchor: "application-end" | "posting";
      readonly durationMinutes: number;
      readonly orReentryIfLater: boolean;
    }
  | { readonly trigger: "day-following"; readonly daysFollowing: number; readonly orReentryIfLater: boolean }
  | { readonly trigger: "days-after-completion"; readonly daysAfter: number; readonly orReentryIfLater: boolean }
  | { readonly trigger: "sunset-of-day-following"; readonly daysFollowing: number; readonly orReentryIfLater: boolean }
  | { readonly trigger: "state"; readonly state: AwaitedState; readonly orReentryIfLater: boolean }
  | { readonly trigger: "no-time-required" };

interface AsWritten {
  /** The words of the label or the law, quoted. */
  readonly labelWords: string;
}

/** What a label's use, or the law about it, asks for around an application. */
export type AftercareConstraint = AsWritten &
  (
    | { readonly kind: "people-and-pets"; readonly untilLaterOf: readonly Until[] }
    | { readonly kind: "watering-not-before"; readonly untilLaterOf: readonly Until[] }
    | {
        readonly kind: "watering-in";
        readonly by: DueReach | "not-stated";
        readonly depth: WateringDepth | "not-stated";
        readonly rain: "counts" | "does-not-count" | "not-stated";
      }
    | {
        readonly kind: "rain-that-spoils";
        readonly within: Reach;
        /** The rain from which on it spoils, or any rain at all. */
        readonly from: Measure<"length"> | "any";
      }
    | { readonly kind: "leaf-at-application"; readonly state: "dry" | "moist" }
    | { readonly kind: "soil-at-application"; readonly state: "dry" | "moist" }
    | { readonly kind: "mowing-before"; readonly within: ReachBack }
    | { readonly kind: "mowing-after"; readonly untilLaterOf: readonly Until[] }
    | { readonly kind: "seeding-before"; readonly within: ReachBack | MowingCount }
    | {
        readonly kind: "seeding-after";
        readonly intervals: readonly { readonly method: SeedingMethod | "any"; readonly until: Reach | MowingCount }[];
      }
    | { readonly kind: "posting-sign"; readonly upBy: SignUpTrigger; readonly mayComeDown: SignDownTrigger }
  );

/** The kinds of what a label may ask for around an application. */
export type AftercareKind = AftercareConstraint["kind"];
/** What is asked for, of one kind. */
export type ConstraintOf<Kind extends AftercareKind> = Extract<AftercareConstraint, { readonly kind: Kind }>;

/** A constraint with who says so. */
export type StatedConstraint<Kind extends AftercareKind = AftercareKind> = ConstraintOf<Kind> & Authority;

/** Everything about a product's aftercare: each fact stated, read and found to be none, or not read. */
export interface LabelAftercare {
  readonly productName: string;
  readonly facts: { readonly [Kind in AftercareKind]: OnFile<ConstraintOf<Kind>> };
}

/** What each fact is called in a sentence, in the order of the timeline. */
export const aftercareFactNames: Readonly<Record<AftercareKind, string>> = {
  "people-and-pets": "when people and pets may come back",
  "watering-not-before": "how long it must not be watered",
  "watering-in": "whether and when it must be watered in",
  "rain-that-spoils": "what rain spoils it",
  "leaf-at-application": "whether the leaf must be dry or moist",
  "soil-at-application": "whether the soil must be dry or moist",
  "mowing-before": "how long before it the lawn must not be mowed",
  "mowing-after": "how long after it the lawn must not be mowed",
  "seeding-before": "how long after seeding it must not be applied",
  "seeding-after": "how long after it the lawn must not be seeded",
  "posting-sign": "whether a sign must be posted and for how long",
};

/** The kinds in the order of the timeline. */
export const AFTERCARE_KINDS = Object.keys(aftercareFactNames) as readonly AftercareKind[];

/** The constraint of a kind when it is stated, as a list of one or none. */
export function statedConstraint<Kind extends AftercareKind>(
  label: LabelAftercare,
  kind: Kind,
): readonly StatedConstraint<Kind>[] {
  const fact: OnFile<ConstraintOf<Kind>> = label.facts[kind];
  return stated(fact);
}

/** The kinds that nobody has read from the label, in the order of the timeline. */
export function unreadFacts(label: LabelAftercare): readonly AftercareKind[] {
  return AFTERCARE_KINDS.filter((kind) => label.facts[kind] === "unknown");
}
