import { type Span } from "#domain/weather/local-hours";
import { type JudgedHour, type JudgedMix } from "#domain/weather/spray-hours";
import { type HourReason } from "#domain/weather/spray-reasons";

/** A stretch of hours in which a mix may go out. Take-care when any of its hours is. */
export interface WeatherWindow extends Span {
  readonly verdict: "open" | "take-care";
  /** Every reason of its hours, each once. */
  readonly reasons: readonly HourReason[];
}

/** The hours of one mix that are not closed, merged where one follows the other at once. */
export function openWindows(mix: JudgedMix): readonly WeatherWindow[] {
  return mergeStretches(mix.hours, ({ verdict }) => (verdict === "closed" ? undefined : "open")).map(
    ({ hours, span }) => ({
      ...span,
      verdict: hours.some(({ verdict }) => verdict === "take-care") ? "take-care" : "open",
      reasons: distinctReasons(hours.flatMap(({ reasons }) => reasons)),
    }),
  );
}

/** How much of a visit may go on. */
export type VisitScope = "everything" | "granular-only" | "sprays-only";

/** A stretch of hours with what of a visit may go on in it. */
export interface VisitWindow extends Span {
  readonly scope: VisitScope;
  readonly verdict: "open" | "take-care";
  readonly reasons: readonly HourReason[];
}

/**
 * The windows of a whole visit. Where sprays are closed and all granular work is open, the sprays are held and
 * the granular work goes on, and the other way around. A visit of one kind only has windows for everything.
 * The mixes must be judged for the same day; hours in which neither kind is wholly open are left out.
 */
export function visitWindows(mixes: readonly JudgedMix[]): readonly VisitWindow[] {
  const slots = mixes[0]?.hours ?? [];
  const visitHours = slots.map((slot, index) => {
    const open = mixes.filter(({ hours }) => hours[index]?.verdict !== "closed");
    const openHours = open.flatMap(({ hours }) => hours[index] ?? []);
    return { ...slot, scope: scopeOf(mixes, open), openHours };
  });
  return mergeStretches(visitHours, ({ scope }) => scope).map(({ hours, span, kind }) => {
    const openHours = hours.flatMap((hour) => hour.openHours);
    return {
      ...span,
      scope: kind,
      verdict: openHours.some(({ verdict }) => verdict === "take-care") ? "take-care" : "open",
      reasons: distinctReasons(openHours.flatMap(({ reasons }) => reasons)),
    };
  });
}

function scopeOf(mixes: readonly JudgedMix[], open: readonly JudgedMix[]): VisitScope | undefined {
  if (open.length === mixes.length) return "everything";
  const isWhollyOpen = (method: JudgedMix["method"]) => {
    const ofMethod = mixes.filter((mix) => mix.method === method);
    return ofMethod.length > 0 && ofMethod.every((mix) => open.includes(mix));
  };
  if (isWhollyOpen("granular")) return "granular-only";
  return isWhollyOpen("spray") ? "sprays-only" : undefined;
}

interface Stretch<Hour, Kind> {
  readonly hours: readonly Hour[];
  readonly kind: Kind;
  readonly span: Span;
}

/** Joins hours that touch and are of the same kind; hours without a kind are left out. */
function mergeStretches<Hour extends Pick<JudgedHour, "startsAtEpochMilliseconds" | "endsAtEpochMilliseconds">, Kind>(
  hours: readonly Hour[],
  kindOf: (hour: Hour) => Kind | undefined,
): readonly Stretch<Hour, Kind>[] {
  const stretches: Stretch<Hour, Kind>[] = [];
  for (const hour of hours) {
    const kind = kindOf(hour);
    if (kind === undefined) continue;
    const last = stretches.at(-1);
    const touches = last?.kind === kind && last.span.untilEpochMilliseconds === hour.startsAtEpochMilliseconds;
    const from = touches ? last.span.fromEpochMilliseconds : hour.startsAtEpochMilliseconds;
    const span = { fromEpochMilliseconds: from, untilEpochMilliseconds: hour.endsAtEpochMilliseconds };
    if (touches) stretches.pop();
    stretches.push({ hours: touches ? [...last.hours, hour] : [hour], kind, span });
  }
  return stretches;
}

function distinctReasons(reasons: readonly HourReason[]): readonly HourReason[] {
  return [...new Map(reasons.map((reason) => [`${reason.rule} ${reason.sentence}`, reason])).values()];
}
