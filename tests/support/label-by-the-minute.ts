// A second way to read what labels say after an application: each statement is asked anew for each minute, by what the
// wall shows then. It knows no spans, no ends and nothing of ours but the shape of a label, so that tests can hold the
// product's reckoning against it.
import { type AftercareKind, type DueReach, type LabelAftercare, type Reach, type ReachAnchor, type ReachBack, type Until } from "#domain/label/aftercare-constraint";
import { type AftercareEstimates, type ApplicationTimes, type TimeEstimate } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type WateringDays } from "#domain/mixing/watering-hours";
import { type PastMidnight } from "#domain/properties/watering-fact";
import { dateAfter, dateAt, dateMonthsAfter, DAY, instantsShowing, MINUTE, type Shown, shownAt, sunElevationDegrees, weekdayOn } from "./wall-clock";

/** Whether a statement holds at an instant. */
export type Holds = (instant: number) => boolean;
export const never: Holds = () => false;
export const always: Holds = () => true;

/** Days with hours of the clock as a rule or a controller says them; over midnight where they end before they begin. */
export interface SaidHours {
  readonly days: WateringDays;
  readonly fromMinute: number;
  readonly untilMinute: number;
  /** What hours that end before they begin mean. */
  readonly pastMidnight: PastMidnight;
}

/** Everything besides the products that what they say is read by. */
export interface Ground {
  readonly zone: string;
  readonly place: { readonly latitudeDegrees: number; readonly longitudeDegrees: number };
  readonly estimates: AftercareEstimates;
  readonly localRules: readonly SaidHours[] | "none" | "unknown";
  readonly controller: readonly SaidHours[] | "none" | "unknown";
  readonly visitFrom: number;
  readonly visitUntil: number;
}

type Stated<Kind extends AftercareKind> = Exclude<LabelAftercare["facts"][Kind], "none" | "unknown">;
export function statedBy<Kind extends AftercareKind>({ label }: AppliedProduct, kind: Kind): Stated<Kind> | undefined {
  const fact = label.facts[kind];
  return fact === "none" || fact === "unknown" ? undefined : (fact as Stated<Kind>);
}

/** What is counted from, where the sign does not stand: the end of the work for what must wait, its start for what is due. */
function countedFrom(from: ReachAnchor, work: ApplicationTimes, unposted: number): number {
  if (from === "application-start") return work.startsAtEpochMilliseconds;
  if (from === "application-end") return work.endsAtEpochMilliseconds;
  return work.postedAtEpochMilliseconds === "not-posted" ? unposted : work.postedAtEpochMilliseconds;
}

/** Every reading of "2 days": so many times 24 h, and each time the clock shows the same on that day; from start and end where the words do not say. */
function readingsOfDays(reach: Extract<Reach, { readonly anchor: "days" }>, work: ApplicationTimes, unposted: number, zone: string): readonly number[] {
  const froms = reach.from === "not-said" ? [work.startsAtEpochMilliseconds, work.endsAtEpochMilliseconds] : [countedFrom(reach.from, work, unposted)];
  return froms.flatMap((from) => {
    const { date, minute } = shownAt(zone, from);
    return [from + reach.days * DAY, ...instantsShowing(zone, { date: dateAfter(date, reach.days), minute })];
  });
}

/** Whether "not before" forbids at an instant, by any reading. */
export function notBefore(reach: Reach, work: ApplicationTimes, zone: string): Holds {
  const end = work.endsAtEpochMilliseconds;
  switch (reach.anchor) {
    case "days": {
      const readings = readingsOfDays(reach, work, end, zone);
      return (instant) => readings.some((reading) => instant < reading);
    }
    case "calendar-day": {
      const day = dateAfter(dateAt(zone, end), reach.days);
      return (instant) => dateAt(zone, instant) < day;
    }
    case "calendar-month": {
      const day = dateMonthsAfter(dateAt(zone, end), reach.months);
      return (instant) => dateAt(zone, instant) < day;
    }
    case "application-start":
    case "application-end":
    case "posting":
      return (instant) => instant < countedFrom(reach.anchor, work, end) + reach.durationMinutes * MINUTE;
  }
}

/** Whether an instant before the work is within so long before it, by any reading. */
export function within(back: ReachBack, work: ApplicationTimes, zone: string): Holds {
  const start = work.startsAtEpochMilliseconds;
  if (back.anchor === "application-start") return (instant) => instant >= start - back.durationMinutes * MINUTE;
  const day = dateAfter(dateAt(zone, start), -back.days);
  return (instant) => dateAt(zone, instant) >= day || (back.anchor === "days" && instant >= start - back.days * DAY);
}

/** Whether what is over at an instant is over too late, by any reading. */
export function tooLate(by: DueReach, work: ApplicationTimes, zone: string): Holds {
  const start = work.startsAtEpochMilliseconds;
  switch (by.anchor) {
    case "at-once":
      return (instant) => instant > work.endsAtEpochMilliseconds + 60 * MINUTE;
    case "days": {
      const readings = readingsOfDays(by, work, start, zone);
      return (instant) => readings.some((reading) => instant > reading);
    }
    case "calendar-day": {
      const day = dateAfter(dateAt(zone, start), by.days);
      return (instant) => dateAt(zone, instant - 1) > day;
    }
    case "application-start":
    case "application-end":
    case "posting":
      return (instant) => instant > countedFrom(by.anchor, work, start) + by.durationMinutes * MINUTE;
  }
}

function permits({ days, fromMinute, untilMinute, pastMidnight }: SaidHours, { date, minute }: Shown): boolean {
  const isLate = minute >= fromMinute;
  const isEarly = minute < untilMinute;
  const isOn = (one: string) => ("datesOfMonth" in days ? (Number(one.slice(8)) % 2 === 1) === (days.datesOfMonth === "odd") : days.weekdays.includes(weekdayOn(one)));
  if (fromMinute < untilMinute) return isOn(date) && isLate && isEarly;
  return (isOn(date) && isLate) || (isOn(pastMidnight === "same-day" ? date : dateAfter(date, -1)) && isEarly);
}

/** Whether the town and the controller let water run at an instant; what nobody knows forbids nothing here. */
export function hoursPermit({ zone, localRules, controller }: Ground, instant: number): boolean {
  const shown = shownAt(zone, instant);
  return [localRules, controller].every((said) => typeof said === "string" || said.some((hours) => permits(hours, shown)));
}

/** Whether a product still asks for water, and whether water until an instant comes too late for it. Undefined where it asks for none. */
export function waterWanted(product: AppliedProduct, { zone, visitUntil }: Ground): { readonly isOverdue: boolean; readonly late: Holds; readonly hasDate: boolean } | undefined {
  const wants = statedBy(product, "watering-in");
  if (wants === undefined || product.wateredInAtEpochMilliseconds !== "not-yet") return undefined;
  if (wants.by === "not-stated") return { isOverdue: false, late: never, hasDate: false };
  const late = tooLate(wants.by, product.application, zone);
  const isOverdue = product.appliedIn === "earlier-visit" && late(visitUntil + 1);
  return isOverdue ? { isOverdue, late: never, hasDate: false } : { isOverdue, late, hasDate: true };
}

/** Until when a product is not yet watered in, at the latest: it was, or its own last lawful minute after the visit is over. */
function notWateredIn(product: AppliedProduct, ground: Ground): { readonly overAt: number | undefined } {
  const at = product.wateredInAtEpochMilliseconds;
  if (typeof at === "number") return { overAt: at };
  const water = waterWanted(product, ground);
  if (water?.hasDate !== true) return { overAt: undefined };
  let overAt: number | undefined;
  const from = Math.max(ground.visitUntil, product.application.endsAtEpochMilliseconds);
  for (let minute = from; !water.late(minute + MINUTE); minute += MINUTE) {
    if (hoursPermit(ground, minute)) overAt = minute + MINUTE;
  }
  return { overAt };
}

function waits(until: Until, product: AppliedProduct, ground: Ground): Holds {
  if (until.anchor !== "state") return notBefore(until, product.application, ground.zone);
  const { estimates } = ground;
  const after = (from: number | undefined, estimate: TimeEstimate): Holds =>
    from === undefined || estimate === "unknown" ? always : (instant) => instant < from + estimate.durationMinutes * MINUTE;
  switch (until.state) {
    case "dry":
      return after(product.application.endsAtEpochMilliseconds, estimates.untilDry);
    case "dust-settled":
      return after(product.application.endsAtEpochMilliseconds, estimates.untilDustSettled);
    case "watered-in": {
      const { overAt } = notWateredIn(product, ground);
      return overAt === undefined ? always : (instant) => instant < overAt;
    }
    case "watered-in-and-dry":
      return after(notWateredIn(product, ground).overAt, estimates.untilDryAfterWatering);
  }
}

/** Whether a product keeps people off, mowers off, or the water off by what its label says of water. */
export function keptOff(product: AppliedProduct, kind: "people-and-pets" | "mowing-after" | "watering-not-before", ground: Ground): Holds {
  if (product.label.facts[kind] === "unknown") return always;
  const said = statedBy(product, kind)?.untilLaterOf ?? [];
  const all = said.map((until) => waits(until, product, ground));
  return (instant) => all.some((holds) => holds(instant));
}

/** Whether rain would still spoil a product. */
export function rainSpoils(product: AppliedProduct, zone: string): Holds {
  const spoils = statedBy(product, "rain-that-spoils");
  return spoils === undefined ? never : notBefore(spoils.within, product.application, zone);
}

/** Whether a product keeps seed off, by the longest of its intervals, or by those for one method. */
export function seedKeptOff(product: AppliedProduct, zone: string, method: "broadcast" | "slit" | "all" = "all"): Holds {
  if (product.label.facts["seeding-after"] === "unknown") return always;
  const intervals = (statedBy(product, "seeding-after")?.intervals ?? []).filter((one) => method === "all" || one.method === "any" || one.method === method);
  const all = intervals.map(({ until }) => (until.anchor === "mowings" ? always : notBefore(until, product.application, zone)));
  return (instant) => all.some((holds) => holds(instant));
}

/** The first minute from an instant on at which something holds no longer; undefined where it still does after 60 days. */
export function firstMinuteFree(holds: Holds, from: number): number | undefined {
  const last = from + 60 * DAY;
  for (let instant = from; !holds(last) && instant <= last; instant += MINUTE) if (!holds(instant)) return instant;
  return undefined;
}

/** Whether a product's sign must still stand; undefined within minutes of a sunset, which two ways find a little apart. */
export function signStands(product: AppliedProduct, ground: Ground): (instant: number) => boolean | undefined {
  if (product.label.facts["posting-sign"] === "unknown") return (instant) => instant >= product.application.startsAtEpochMilliseconds;
  const sign = statedBy(product, "posting-sign");
  if (sign === undefined || sign.mayComeDown.trigger === "no-time-required") return never;
  const down = sign.mayComeDown;
  const { application: work } = product;
  const { zone, place } = ground;
  const up = work.postedAtEpochMilliseconds !== "not-posted" ? work.postedAtEpochMilliseconds : sign.upBy === "immediately-following" ? work.endsAtEpochMilliseconds : work.startsAtEpochMilliseconds;
  const stands = (holds: (instant: number) => boolean | undefined) => (instant: number) => (instant < up ? false : holds(instant));
  const reentry = down.orReentryIfLater ? keptOff(product, "people-and-pets", ground) : never;
  if (down.trigger === "sunset-of-day-following") {
    const back = firstMinuteFree(reentry, work.endsAtEpochMilliseconds);
    if (back === undefined) return stands(always);
    const following = dateAfter(dateAt(zone, work.endsAtEpochMilliseconds), down.daysFollowing);
    const day = [following, dateAt(zone, back)].toSorted().at(-1) ?? following;
    return stands((instant) => beforeSunset(shownAt(zone, instant), day, sunElevationDegrees(instant, place)));
  }
  const own = downBy(product, down, { up, ground });
  return stands((instant) => own(instant) || reentry(instant));
}

function beforeSunset({ date, minute }: Shown, day: string, elevation: number): boolean | undefined {
  if (date !== day) return date < day;
  if (minute < 12 * 60) return true;
  // The sun sets when its upper edge does: 0.833 degrees under the horizon with the air's refraction.
  return Math.abs(elevation + 0.833) < 0.4 ? undefined : elevation > -0.833;
}

function downBy(product: AppliedProduct, down: Exclude<Stated<"posting-sign">["mayComeDown"], { readonly trigger: "no-time-required" | "sunset-of-day-following" }>, { up, ground }: { readonly up: number; readonly ground: Ground }): Holds {
  const { application: work } = product;
  switch (down.trigger) {
    case "elapsed":
      return (instant) => instant < (down.anchor === "posting" ? up : work.endsAtEpochMilliseconds) + down.durationMinutes * MINUTE;
    case "day-following":
      return notBefore({ anchor: "calendar-day", days: down.daysFollowing }, work, ground.zone);
    case "days-after-completion":
      return notBefore({ anchor: "days", from: "application-end", days: down.daysAfter }, work, ground.zone);
    case "state":
      return waits({ anchor: "state", state: down.state }, product, ground);
  }
}
