import { AFTERCARE_KINDS, type AftercareKind, type AwaitedState, type LabelAftercare, type Reach, statedConstraint, type Until } from "#domain/label/aftercare-constraint";
import { SURELY_MOWED_AFTER_DAYS } from "#domain/label/mowing-count";
import { type AftercareEstimates, type ApplicationTimes, type TimeEstimate } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type LawnWatering } from "#domain/properties/lawn-watering";
import { compareExact } from "#domain/quantities/exact-quantity";
import { type Span } from "#domain/weather/local-hours";

const ONE_MINUTE_MILLISECONDS = 60_000;
const ONE_DAY_MILLISECONDS = 86_400_000;
/** No month is longer. */
const LONGEST_MONTH_DAYS = 31;

/**
 * After four weeks a lawn is taken to have been watered or rained on as much as watering in takes, where nobody wrote it
 * down: nobody is asked for it any more. Common practice, and as far ahead as a time for watering in is looked for.
 */
export const SURELY_WATERED_IN_AFTER_DAYS = 28;

/**
 * Where nothing is estimated: drying and settling take no longer than a week, as estimates above that are refused too
 * (common practice).
 */
const LONGEST_STATE_DAYS = 7;

/** A lawn that nobody wants to seed is taken to be mowed at least every other week (common practice). */
const MOWED_EVERY_DAYS = 14;

/**
 * How long a fact that nobody has read may still matter, in days: as long as labels of lawn products ask for at most
 * (common practice). Seed waits by far the longest, and only seed that is planned can come too soon.
 */
const UNREAD_MATTERS_DAYS: Readonly<Record<AftercareKind, number>> = {
  "people-and-pets": 7,
  "watering-not-before": 7,
  "watering-in": SURELY_WATERED_IN_AFTER_DAYS,
  "rain-that-spoils": 7,
  "leaf-at-application": 0,
  "soil-at-application": 0,
  "mowing-before": 0,
  "mowing-after": 14,
  "seeding-before": 0,
  "seeding-after": 365,
  "posting-sign": 7,
};

/** What only matters while a product goes down; of other work it is not asked. */
export const ONLY_AT_APPLICATION: readonly AftercareKind[] = ["leaf-at-application", "soil-at-application", "mowing-before", "seeding-before"];

/** A product that was put down on a lawn before, or stands in an earlier plan. Where no label is on file nobody has read any of its facts. */
export interface EarlierProduct {
  readonly label: LabelAftercare;
  readonly application: ApplicationTimes;
}

/** What an earlier product is asked for at a visit. */
export interface AskedOfEarlier {
  /** What is asked for is what may still matter at this instant, the start of a visit. */
  readonly atEpochMilliseconds: number;
  /** The end of the visit. Work that begins later is not of before, nor are statements about water. */
  readonly untilEpochMilliseconds: number;
  readonly waterings: readonly LawnWatering[];
  /** Whether seed is planned on the lawn: only then can what nobody has read about seed matter, and mowings be asked for all season. */
  readonly isSeedPlanned: boolean;
  readonly estimates: AftercareEstimates;
}

/**
 * An earlier product with what may still run at a visit, everything else of its label left out; undefined where nothing
 * may. Ends are taken for as late as they can be, so that nothing is left out that the timeline would still count, and
 * a product of last season costs a visit nothing. Other work counts from the moment it began: two records of one stop may
 * have the same hours or cross, and each lawn then has what both put down. What began after the visit is not of before.
 */
export function earlierAtVisit({ label, application }: EarlierProduct, asked: AskedOfEarlier): AppliedProduct | undefined {
  const { atEpochMilliseconds, isSeedPlanned } = asked;
  if (!beganBefore(application, { fromEpochMilliseconds: atEpochMilliseconds, untilEpochMilliseconds: asked.untilEpochMilliseconds })) return undefined;
  const { endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: posted } = application;
  const sinceDays = (atEpochMilliseconds - end) / ONE_DAY_MILLISECONDS;
  // What counts from a sign that was put up after the work ends as much later; what the house takes to be over does not.
  const postedLaterDays = posted === "not-posted" ? 0 : Math.max(0, posted - end) / ONE_DAY_MILLISECONDS;
  if (sinceDays >= longestDays(label) + postedLaterDays) return undefined;
  const wateredIn = wateredInAt(label, application, asked);
  const longest = { ...asked, postedLaterDays, wateredInAfterDays: wateredIn === "not-yet" ? wateredIn : (wateredIn - end) / ONE_DAY_MILLISECONDS };
  const matters = (kind: AftercareKind) => {
    if (ONLY_AT_APPLICATION.includes(kind)) return false;
    if (kind === "watering-in" && wateredIn !== "not-yet") return false;
    if (label.facts[kind] === "unknown") return (kind !== "seeding-after" || isSeedPlanned) && sinceDays < UNREAD_MATTERS_DAYS[kind];
    if (kind === "watering-in") return sinceDays < SURELY_WATERED_IN_AFTER_DAYS || dueDays(label) + postedLaterDays > sinceDays;
    return latestDays(label, kind, longest) > sinceDays;
  };
  const mattersToSign = (kind: AftercareKind) => kind === "people-and-pets" && label.facts[kind] !== "unknown" && standsForPeople(label) && matters("posting-sign");
  const kinds = AFTERCARE_KINDS.filter((kind) => label.facts[kind] !== "none" && (matters(kind) || mattersToSign(kind)));
  if (kinds.length === 0) return undefined;
  return { label: withOnly(label, kinds), application, appliedIn: "earlier-visit", wateredInAtEpochMilliseconds: wateredIn };
}

/** Whether other work counts at a visit: whatever began before the visit ended, though it may not be over as the visit begins. */
export function beganBefore({ startsAtEpochMilliseconds: start }: Pick<ApplicationTimes, "startsAtEpochMilliseconds">, visit: Span): boolean {
  return start < visit.untilEpochMilliseconds || start <= visit.fromEpochMilliseconds;
}

/** Whether a sign stays at least until people may come back: it can stand for hours after that, until the sunset of that day. */
function standsForPeople(label: LabelAftercare): boolean {
  return statedConstraint(label, "posting-sign").some(({ mayComeDown }) => mayComeDown.trigger !== "no-time-required" && mayComeDown.orReentryIfLater);
}

/** How long anything on a label may matter at most, kept because a lawn's records of two years are asked at every stop of a day. */
const LONGEST_DAYS = new WeakMap<LabelAftercare, number>();

function longestDays(label: LabelAftercare): number {
  const known = LONGEST_DAYS.get(label);
  if (known !== undefined) return known;
  const widest = { estimates: { untilDry: "unknown", untilDustSettled: "unknown", untilDryAfterWatering: "unknown" }, isSeedPlanned: true, wateredInAfterDays: "not-yet", postedLaterDays: 0 } as const;
  const longest = Math.max(...AFTERCARE_KINDS.map((kind) => (label.facts[kind] === "unknown" ? UNREAD_MATTERS_DAYS[kind] : latestDays(label, kind, widest))));
  LONGEST_DAYS.set(label, longest);
  return longest;
}

/** Labels with only some of their facts, kept because the same few are asked for at every stop of a day. */
const PARTS = new WeakMap<LabelAftercare, Map<string, LabelAftercare>>();

function withOnly(label: LabelAftercare, kinds: readonly AftercareKind[]): LabelAftercare {
  const parts = PARTS.get(label) ?? new Map<string, LabelAftercare>();
  PARTS.set(label, parts);
  const key = kinds.join(" ");
  const known = parts.get(key);
  if (known !== undefined) return known;
  const kept = new Set<AftercareKind>(kinds);
  const facts = Object.fromEntries(AFTERCARE_KINDS.map((kind) => [kind, kept.has(kind) ? label.facts[kind] : "none"])) as unknown as LabelAftercare["facts"];
  const part = { productName: label.productName, facts };
  parts.set(key, part);
  return part;
}

/**
 * When a product was watered in: the first water after it, by the statements about its lawn, that does for its label. A
 * depth that is stated and too little does not, nor does rain where the label says that rain does not count.
 */
export function wateredInAt(label: LabelAftercare, { endsAtEpochMilliseconds }: ApplicationTimes, { waterings, untilEpochMilliseconds }: Pick<AskedOfEarlier, "waterings" | "untilEpochMilliseconds">): number | "not-yet" {
  const [asks] = statedConstraint(label, "watering-in");
  const enough = waterings.filter(({ wateredAtEpochMilliseconds: at, wateredBy, depth }) => {
    if (at < endsAtEpochMilliseconds || at > untilEpochMilliseconds) return false;
    if (asks?.rain === "does-not-count" && wateredBy === "rain") return false;
    return asks === undefined || asks.depth === "not-stated" || depth === "not-stated" || compareExact(depth, asks.depth.least) >= 0;
  });
  return enough.length === 0 ? "not-yet" : Math.min(...enough.map(({ wateredAtEpochMilliseconds }) => wateredAtEpochMilliseconds));
}

interface LongestContext extends Pick<AskedOfEarlier, "estimates" | "isSeedPlanned"> {
  readonly wateredInAfterDays: number | "not-yet";
  readonly postedLaterDays: number;
}

/** As many days after the end of an application as a stated fact can last at most. */
function latestDays(label: LabelAftercare, kind: AftercareKind, context: LongestContext): number {
  const { postedLaterDays } = context;
  const untilDays = (until: Until) => (until.anchor === "state" ? stateDays(label, until.state, context) : reachDays(until) + postedLaterDays);
  const most = (days: readonly number[]) => Math.max(0, ...days);
  switch (kind) {
    case "people-and-pets":
    case "watering-not-before":
    case "mowing-after":
      return most(statedConstraint(label, kind).flatMap(({ untilLaterOf }) => untilLaterOf.map(untilDays)));
    case "watering-in":
      return wateringInDays(label);
    case "rain-that-spoils":
      return most(statedConstraint(label, kind).map(({ within }) => reachDays(within) + postedLaterDays));
    case "seeding-after":
      return most(
        statedConstraint(label, kind).flatMap(({ intervals }) =>
          intervals.map(({ until }) => (until.anchor !== "mowings" ? reachDays(until) + postedLaterDays : context.isSeedPlanned ? SURELY_MOWED_AFTER_DAYS : until.count * MOWED_EVERY_DAYS)),
        ),
      );
    case "posting-sign":
      return signDays(label, untilDays, postedLaterDays);
    case "leaf-at-application":
    case "soil-at-application":
    case "mowing-before":
    case "seeding-before":
      return 0;
  }
}

/** How long it is asked for that something be watered in: until its date, and where that comes sooner until it surely has been. */
function wateringInDays(label: LabelAftercare): number {
  return Math.max(SURELY_WATERED_IN_AFTER_DAYS, dueDays(label));
}

/** Until when a label wants something watered in; nothing where it states no date. */
function dueDays(label: LabelAftercare): number {
  const due = statedConstraint(label, "watering-in").map(({ by }) => (by === "not-stated" || by.anchor === "at-once" ? 0 : reachDays(by)));
  return Math.max(0, ...due);
}

function stateDays(label: LabelAftercare, state: AwaitedState, { estimates, wateredInAfterDays }: LongestContext): number {
  if (state === "dry") return estimateDays(estimates.untilDry);
  if (state === "dust-settled") return estimateDays(estimates.untilDustSettled);
  // Water that is told of later is not what watered in: by then the lawn is taken to have been.
  const watered = wateredInAfterDays === "not-yet" ? wateringInDays(label) : Math.min(wateredInAfterDays, wateringInDays(label));
  return state === "watered-in" ? watered : watered + estimateDays(estimates.untilDryAfterWatering);
}

function estimateDays(estimate: TimeEstimate): number {
  return estimate === "unknown" ? LONGEST_STATE_DAYS : (estimate.durationMinutes * ONE_MINUTE_MILLISECONDS) / ONE_DAY_MILLISECONDS;
}

function signDays(label: LabelAftercare, untilDays: (until: Until) => number, postedLaterDays: number): number {
  const [sign] = statedConstraint(label, "posting-sign");
  const down = sign?.mayComeDown;
  if (down === undefined || down.trigger === "no-time-required") return 0;
  const reentry = down.orReentryIfLater ? statedConstraint(label, "people-and-pets").flatMap(({ untilLaterOf }) => untilLaterOf.map(untilDays)) : [];
  const unread = down.orReentryIfLater && label.facts["people-and-pets"] === "unknown" ? UNREAD_MATTERS_DAYS["people-and-pets"] : 0;
  // At sunset of the day on which people may come back: as much as a day later.
  return Math.max(down.trigger === "state" ? untilDays({ anchor: "state", state: down.state }) : downDays(down) + postedLaterDays, unread, ...reentry.map((days) => days + 1));
}

type TimedDown = Exclude<ReturnType<typeof statedConstraint<"posting-sign">>[number]["mayComeDown"], { readonly trigger: "no-time-required" | "state" }>;

function downDays(down: TimedDown): number {
  switch (down.trigger) {
    case "elapsed":
      return reachDays({ anchor: down.anchor, durationMinutes: down.durationMinutes });
    case "days-after-completion":
      return reachDays({ anchor: "days", from: "application-end", days: down.daysAfter });
    case "day-following":
    case "sunset-of-day-following":
      return down.daysFollowing + 1;
  }
}

/** The most days that a reach can last from the end of the work: days with the hour of a change of clocks, a calendar day to its end. */
function reachDays(reach: Reach): number {
  switch (reach.anchor) {
    case "days":
    case "calendar-day":
      return reach.days + 1;
    case "calendar-month":
      return reach.months * LONGEST_MONTH_DAYS + 1;
    case "application-start":
    case "application-end":
    case "posting":
      return (reach.durationMinutes * ONE_MINUTE_MILLISECONDS) / ONE_DAY_MILLISECONDS;
  }
}
