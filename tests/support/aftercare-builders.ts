// Builders for the tests of aftercare: a label that was read and asks for nothing, products put down on a May afternoon
// in Chicago, and a property that may be watered at any time.
import { type AftercareConstraint, type AftercareKind, type ConstraintOf, type LabelAftercare } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type ClockPeriod } from "#domain/mixing/clock-periods";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { of } from "#domain/quantities/quantity";
import { type Authority } from "#domain/weather/spray-limits";

export const CHICAGO = "America/Chicago";
export const onLabel: Authority = { basis: "label", source: "label, directions for use" };

/** An instant, written with its own offset: at("2026-05-01T16:00-05:00"). */
export const at = (text: string) => Date.parse(text);
export const START = at("2026-05-01T15:00-05:00");
export const END = at("2026-05-01T16:00-05:00");
export const HOUR = 3_600_000;

/** A label that was read and asks for nothing, but for what is given. */
export function labelOf(productName: string, facts: Partial<LabelAftercare["facts"]> = {}): LabelAftercare {
  const none: LabelAftercare["facts"] = {
    "people-and-pets": "none",
    "watering-not-before": "none",
    "watering-in": "none",
    "rain-that-spoils": "none",
    "leaf-at-application": "none",
    "soil-at-application": "none",
    "mowing-before": "none",
    "mowing-after": "none",
    "seeding-before": "none",
    "seeding-after": "none",
    "posting-sign": "none",
  };
  return { productName, facts: { ...none, ...facts } };
}

type Plain<Kind extends AftercareKind> = Omit<ConstraintOf<Kind>, "labelWords" | "kind"> & { readonly labelWords?: string };

/** One stated fact, under its own kind, ready to be spread among a label's facts. */
export function says<Kind extends AftercareKind>(kind: Kind, what: Plain<Kind>, authority = onLabel): Partial<LabelAftercare["facts"]> {
  const constraint = { kind, labelWords: `words on ${kind}`, ...what, ...authority } as unknown as AftercareConstraint & Authority;
  return { [kind]: constraint };
}

export const hoursAfterEnd = (hours: number) => ({ anchor: "application-end", durationMinutes: hours * 60 }) as const;
export const untilState = (state: "dry" | "dust-settled" | "watered-in" | "watered-in-and-dry") => ({ anchor: "state", state }) as const;

/** Must stay dry 12 h, is spoiled by rain as long, wants a dry leaf; people may come back when it is dry. */
export const IRON = labelOf("Ferrox Foliar", {
  ...says("people-and-pets", { untilLaterOf: [untilState("dry")], labelWords: "Keep off until dry." }),
  ...says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)], labelWords: "Do not irrigate for 12 hours." }),
  ...says("rain-that-spoils", { within: hoursAfterEnd(12), from: "any" }),
  ...says("leaf-at-application", { state: "dry" }),
});

/** Wants a quarter inch within a day; rain counts; no mowing until then. */
export const FEED = labelOf("Evenfeed 18", {
  ...says("people-and-pets", { untilLaterOf: [untilState("watered-in-and-dry")] }),
  ...says("watering-in", { by: hoursAfterEnd(24), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }),
  ...says("mowing-after", { untilLaterOf: [untilState("watered-in")] }),
});

/** A product of this visit, from 3 to 4 pm. */
export function appliedOf(label: LabelAftercare, change: Partial<AppliedProduct> = {}): AppliedProduct {
  const application = { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END, postedAtEpochMilliseconds: "not-posted" } as const;
  return { label, application, appliedIn: "this-visit", wateredInAtEpochMilliseconds: "not-yet", ...change };
}

/** A product of an earlier visit that took an hour and ended then. */
export function earlierOf(label: LabelAftercare, endedAt: number, change: Partial<AppliedProduct> = {}): AppliedProduct {
  const application = {
    startsAtEpochMilliseconds: endedAt - HOUR,
    endsAtEpochMilliseconds: endedAt,
    postedAtEpochMilliseconds: "not-posted",
  } as const;
  return appliedOf(label, { application, appliedIn: "earlier-visit", ...change });
}

/** Hours on each day of the week, or on the given ones. */
export function daily(fromHour: number, untilHour: number, weekdays = [0, 1, 2, 3, 4, 5, 6]): readonly ClockPeriod[] {
  return weekdays.map((weekday) => ({ weekday, fromMinuteOfDay: fromHour * 60, untilMinuteOfDay: untilHour * 60 }));
}

export const byLaw = (periods: readonly ClockPeriod[]) => ({ periods, basis: "law", source: "town watering rule" }) as const;
export const byHouse = (periods: readonly ClockPeriod[]) => ({ periods, basis: "house", source: "controller, as the customer set it" }) as const;

/** A station that puts down three quarters of an inch an hour: 20 min for a quarter inch. */
export const FRONT: IrrigationStation = { stationName: "Front", depthPerHour: of("in", "0.75"), cycle: "none" };

/** A visit of these products on Friday, May 1, 2026, from 3 to 4 pm, on a property without any other limits. */
export function aftercareQuestion(products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}): AftercareQuestion {
  return {
    products,
    visit: { fromEpochMilliseconds: START, untilEpochMilliseconds: END },
    timeZone: CHICAGO,
    zoneDataVersion: "2026a",
    estimates: DEFAULT_AFTERCARE_ESTIMATES,
    hours: { localRules: "none", controller: "none" },
    stations: [FRONT],
    unitSystem: "us",
    mowing: { weekday: "none", lastMowedAtEpochMilliseconds: "unknown" },
    seedings: [],
    place: { latitudeDegrees: 41.9, longitudeDegrees: -87.6 },
    secondLook: "none",
    ...change,
  };
}

/** The steps of one row: the kind and both ends as instants of universal time, null kept. */
export function rowOf(steps: readonly AftercareStep[], row: AftercareStep["row"]) {
  const iso = (instant: number | null) => (instant === null ? null : new Date(instant).toISOString().slice(0, 16));
  return steps
    .filter((step) => step.row === row)
    .map(({ kind, startsAtEpochMilliseconds, endsAtEpochMilliseconds }) => [kind, iso(startsAtEpochMilliseconds), iso(endsAtEpochMilliseconds)]);
}
