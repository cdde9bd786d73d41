// A second way to say what of an earlier product still counts at a visit: nothing is left out for being over, which the
// minutes themselves say, but for what would wait for ever and by the house's habits no longer does.
import { type AftercareKind, type LabelAftercare, type Until } from "#domain/label/aftercare-constraint";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type EarlierProduct } from "#domain/mixing/earlier-products";
import { type LawnWatering } from "#domain/properties/lawn-watering";
import { type Ground } from "./label-by-the-minute";
import { DAY, MINUTE } from "./wall-clock";

/** For how many days a fact that nobody has read is asked for. */
const UNREAD_DAYS: Readonly<Record<AftercareKind, number>> = {
  "people-and-pets": 7, "watering-not-before": 7, "watering-in": 28, "rain-that-spoils": 7, "leaf-at-application": 0, "soil-at-application": 0,
  "mowing-before": 0, "mowing-after": 14, "seeding-before": 0, "seeding-after": 365, "posting-sign": 7,
};
const WATERED_AFTER_DAYS = 28;
const DRY_AFTER_DAYS = 7;
const DAYS_PER_MOWING = 14;

/** The first water after the work and until the visit's end that does for the label. */
function wateredIn({ label, application }: EarlierProduct, waterings: readonly LawnWatering[], { visitUntil }: Ground): number | "not-yet" {
  const asks = label.facts["watering-in"];
  const [first] = waterings
    .filter(({ wateredAtEpochMilliseconds: at, wateredBy, depth }) => {
      if (at < application.endsAtEpochMilliseconds || at > visitUntil) return false;
      if (asks === "none" || asks === "unknown") return true;
      const isEnough = asks.depth === "not-stated" || depth === "not-stated" || depth.amount >= ("amount" in asks.depth.least ? asks.depth.least.amount : Infinity);
      return isEnough && (wateredBy !== "rain" || asks.rain !== "does-not-count");
    })
    .map(({ wateredAtEpochMilliseconds }) => wateredAtEpochMilliseconds)
    .toSorted((one, other) => one - other);
  return first ?? "not-yet";
}

interface History {
  readonly waterings: readonly LawnWatering[];
  readonly isSeedPlanned: boolean;
  readonly ground: Ground;
}

/** Whether other work is of before a visit: some minute of it, or its first instant where it has none, was over as the visit ended. */
export function isOfBefore({ application }: EarlierProduct, { visitFrom, visitUntil }: Ground): boolean {
  return application.startsAtEpochMilliseconds <= visitFrom || application.startsAtEpochMilliseconds + MINUTE <= visitUntil;
}

/** The product with everything that its label says, however long ago. */
export function atItsLongest(earlier: EarlierProduct, { waterings, ground }: History): AppliedProduct {
  return { ...earlier, appliedIn: "earlier-visit", wateredInAtEpochMilliseconds: wateredIn(earlier, waterings, ground) };
}

/** The product as the visit's minutes are asked about it: without what is taken to be over by the house's habits. */
export function asOfVisit(earlier: EarlierProduct, { waterings, isSeedPlanned, ground }: History): AppliedProduct {
  const { label, application } = earlier;
  const sinceDays = (ground.visitFrom - application.endsAtEpochMilliseconds) / DAY;
  const watered = wateredIn(earlier, waterings, ground);
  const estimateDays = (name: keyof Ground["estimates"]) => {
    const estimate = ground.estimates[name];
    return estimate === "unknown" ? DRY_AFTER_DAYS : (estimate.durationMinutes * MINUTE) / DAY;
  };
  const isWaitedFor = (until: Until): boolean => {
    if (until.anchor !== "state") return true;
    if (until.state === "dry" || until.state === "dust-settled") return sinceDays < estimateDays(until.state === "dry" ? "untilDry" : "untilDustSettled");
    const wateredDays = watered === "not-yet" ? WATERED_AFTER_DAYS : Math.min(WATERED_AFTER_DAYS, (watered - application.endsAtEpochMilliseconds) / DAY);
    return sinceDays < wateredDays + (until.state === "watered-in" ? 0 : estimateDays("untilDryAfterWatering"));
  };
  const facts = Object.entries(label.facts).map(([name, fact]) => {
    const kind = name as AftercareKind;
    if (fact === "none") return [kind, fact];
    if (fact === "unknown") return [kind, sinceDays < UNREAD_DAYS[kind] && (kind !== "seeding-after" || isSeedPlanned) ? fact : "none"];
    if ("untilLaterOf" in fact) {
      const untilLaterOf = fact.untilLaterOf.filter(isWaitedFor);
      return [kind, untilLaterOf.length === 0 ? "none" : { ...fact, untilLaterOf }];
    }
    if ("intervals" in fact) return [kind, { ...fact, intervals: fact.intervals.filter(({ until }) => until.anchor !== "mowings" || sinceDays < (isSeedPlanned ? 365 : until.count * DAYS_PER_MOWING)) }];
    if (kind === "watering-in" && (watered !== "not-yet" || sinceDays >= WATERED_AFTER_DAYS)) return [kind, "none"];
    if (kind === "posting-sign" && "mayComeDown" in fact && fact.mayComeDown.trigger === "state" && sinceDays >= estimateDays("untilDry")) return [kind, { ...fact, mayComeDown: { trigger: "elapsed", anchor: "application-end", durationMinutes: 0, orReentryIfLater: fact.mayComeDown.orReentryIfLater } }];
    return [kind, fact];
  });
  return { label: { ...label, facts: Object.fromEntries(facts) as LabelAftercare["facts"] }, application, appliedIn: "earlier-visit", wateredInAtEpochMilliseconds: watered };
}
