import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { type Outcome } from "#domain/foundation/outcome";
import { type StatedConstraint } from "#domain/label/aftercare-constraint";
import { NOTHING_STATED } from "#domain/label/label-aftercare";
import { type AftercareTimeline, aftercareTimeline } from "#domain/mixing/aftercare";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { packOf } from "#domain/rules/packs-on-file";
import { type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
import { sownSeed } from "#domain/properties/lawn-seeding";
import { type WateringHours, wateringPeriods } from "#domain/mixing/watering-hours";
import { type Span } from "#domain/weather/local-hours";
import { type LawnFacts } from "#application/visits/ticket-facts";
import { type VisitRow } from "#application/visits/visit-rows";

/** The lawns of a visit that get the same products, with what is to be done and left on them afterwards. */
export interface AftercareOfLawns {
  readonly lawnNames: readonly string[];
  readonly timeline: AftercareTimeline;
}

export interface AftercareSetting {
  readonly timeZone: string;
  readonly zoneDataVersion: string;
  readonly span: Span;
  readonly programName: string;
}

/** The aftercare of each group of lawns that get the same products. The first refusal is handed on. */
export function aftercareOfVisit(
  visit: VisitRow,
  lawns: readonly LawnFacts[],
  treatments: readonly TicketTreatment[],
  setting: AftercareSetting,
): Outcome<readonly AftercareOfLawns[]> {
  const treated = lawns.filter(({ lawn }) => treatments.some(({ zoneIds }) => zoneIds.includes(lawn.zoneId)));
  const groups = groupedBy(treated, ({ lawn }) => treatments.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)).map(({ line }) => line).join(" "));
  const answers: AftercareOfLawns[] = [];
  for (const group of groups.values()) {
    const [first] = group;
    const own = treatments.filter(({ zoneIds }) => first !== undefined && zoneIds.includes(first.lawn.zoneId));
    const timeline = aftercareTimeline({
      products: own.flatMap((treatment) => appliedAt(setting.span, treatment, visit)),
      visit: setting.span,
      timeZone: setting.timeZone,
      zoneDataVersion: setting.zoneDataVersion,
      estimates: DEFAULT_AFTERCARE_ESTIMATES,
      hours: hoursOf(visit),
      stations: stationsOf(group),
      unitSystem: "us",
      mowing: { weekday: visit.property.mowingWeekday === null ? "unknown" : visit.property.mowingWeekday % 7, lastMowedAtEpochMilliseconds: "unknown" },
      seedings: seedOf(group, treated.length > 1),
      place: visit.property.position === null ? "unknown" : { latitudeDegrees: visit.property.position.latitude, longitudeDegrees: visit.property.position.longitude },
      secondLook: visit.secondLookAfterDays === null ? "none" : { daysAfter: visit.secondLookAfterDays, programName: setting.programName },
    });
    if (!timeline.ok) return timeline;
    answers.push({ lawnNames: group.map(({ lawn }) => lawn.name), timeline: timeline.value });
  }
  return { ok: true, value: answers };
}

/** A product as it will be put down in a visit, and beside it the state's sign for it: the stricter of label and law counts. */
function appliedAt({ fromEpochMilliseconds, untilEpochMilliseconds }: Span, { use: { aftercare } }: TicketTreatment, visit: VisitRow): readonly AppliedProduct[] {
  const applied: AppliedProduct = {
    label: aftercare,
    application: { startsAtEpochMilliseconds: fromEpochMilliseconds, endsAtEpochMilliseconds: untilEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" },
    appliedIn: "this-visit",
    wateredInAtEpochMilliseconds: "not-yet",
  };
  const law = lawOfSigns(visit);
  return law === undefined ? [applied] : [applied, { ...applied, label: { productName: aftercare.productName, facts: { ...NOTHING_STATED, "posting-sign": law } } }];
}

function lawOfSigns({ property }: VisitRow): StatedConstraint<"posting-sign"> | undefined {
  const rule = packOf(property.state)?.facts["posting-sign"];
  if (rule?.onFile !== true) return undefined;
  const { upTrigger, downDaysFollowing, downWords } = rule.value;
  return {
    kind: "posting-sign",
    upBy: upTrigger,
    mayComeDown: { trigger: "day-following", daysFollowing: downDaysFollowing, orReentryIfLater: false },
    labelWords: downWords,
    basis: "law",
    source: rule.citation,
  };
}

/** The seed of some lawns, told once for the lawns that have it alike; whose it is is said where the visit has several. */
function seedOf(group: readonly LawnFacts[], hasSeveral: boolean): readonly ZoneSeeding[] {
  const all = group.flatMap(({ lawn }) => sownSeed(lawn.seedings).map((seed) => ({ ...seed, lawnName: lawn.name })));
  const alike = groupedBy(all, ({ date, method, standing }) => [date, method, standing].join(" "));
  return [...alike.values()].flatMap(([seed, ...others]): readonly ZoneSeeding[] => {
    if (seed === undefined) return [];
    const { date, method, standing, lawnName } = seed;
    const lawnNames = [...new Set([lawnName, ...others.map((other) => other.lawnName)])];
    return [{ date, method, standing, ...(hasSeveral ? { lawnNames } : {}) }];
  });
}

function stationsOf(group: readonly LawnFacts[]): readonly IrrigationStation[] {
  const byName = new Map(group.flatMap(({ stations }) => stations.map((station) => [station.stationName, station] as const)));
  return [...byName.values()];
}

const ALL_WEEK = [0, 1, 2, 3, 4, 5, 6];

/** The hours on file of a property. None on file leaves every hour, and {@link hoursNotOnFile} says so. */
function hoursOf({ property }: VisitRow): WateringHours {
  const { wateringHours, wateringWeekdays } = property;
  if (wateringHours === null && wateringWeekdays === null) return { localRules: "none", controller: "none" };
  const weekdays = wateringWeekdays === null ? ALL_WEEK : [...wateringWeekdays].map((digit) => Number(digit) % 7);
  const { fromMinute, untilMinute } = wateringHours ?? { fromMinute: 0, untilMinute: 1440 };
  const periods = wateringPeriods({ weekdays }, { fromMinuteOfDay: fromMinute, untilMinuteOfDay: untilMinute });
  return { localRules: "none", controller: { periods, basis: "house", source: "watering hours on file for the property" } };
}

/** Says where nobody knows when a property may be watered and something wants water. */
export function hoursNotOnFile({ property }: VisitRow, aftercare: readonly AftercareOfLawns[]): readonly Finding[] {
  const wantsWater = aftercare.some(({ timeline }) => timeline.watering.kind === "window");
  if (!wantsWater || property.wateringHours !== null || property.wateringWeekdays !== null) return [];
  return [
    takeCare({
      rule: "watering-hours-not-on-file",
      source: "house",
      what: "When this property may be watered is not on file.",
      figure: "Every hour is taken as allowed.",
      toDo: "Ask for the town's rules and the controller's days, and enter them.",
      about: [property.street],
    }),
  ];
}

/** The span of a visit's work on its day. */
export function spanOfVisit(on: CalendarDate, visit: VisitRow, instantOf: (on: CalendarDate, minuteOfDay: number) => number): Span {
  const startsAt = visit.stop?.arrivesAtMinute ?? visit.stop?.startsAtMinute ?? NINE_O_CLOCK;
  const from = instantOf(on, Math.min(startsAt, LAST_MINUTE));
  return { fromEpochMilliseconds: from, untilEpochMilliseconds: from + visit.serviceMinutes * 60_000 };
}

const NINE_O_CLOCK = 9 * 60;
const LAST_MINUTE = 1439;
