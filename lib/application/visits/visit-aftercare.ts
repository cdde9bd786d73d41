import { type UsState } from "#domain/company/us-state";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";
import { type Outcome } from "#domain/foundation/outcome";
import { type LabelAftercare, type StatedConstraint } from "#domain/label/aftercare-constraint";
import { NOTHING_STATED } from "#domain/label/label-aftercare";
import { type ApplicationTimes, DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AftercareOfLawns, aftercareOfLawns, type LawnToCareFor } from "#domain/mixing/aftercare-of-lawns";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type EarlierProduct } from "#domain/mixing/earlier-products";
import { hoursMissing, hoursOnFile } from "#domain/mixing/hours-on-file";
import { type MowingHabit } from "#domain/mixing/mowing-aftercare";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { packOf } from "#domain/rules/packs-on-file";
import { type MowingDay, NO_FIXED_DAY } from "#domain/properties/mowing-day";
import { sownSeed } from "#domain/properties/lawn-seeding";
import { type Span } from "#domain/weather/local-hours";
import { type LawnFacts } from "#application/visits/ticket-facts";
import { type VisitRow } from "#application/visits/visit-rows";

export interface AftercareSetting {
  readonly timeZone: string;
  readonly zoneDataVersion: string;
  readonly span: Span;
}

/** What one line of a visit puts down, from when until when. */
export interface LineApplied {
  readonly line: number;
  readonly label: LabelAftercare;
  readonly application: ApplicationTimes;
  readonly zoneIds: readonly string[];
  /** False where a record says that no sign was put up: what nobody put up is not to be left up. */
  readonly hasSign: boolean;
}

/** What a planned visit puts down in its span. */
export function appliedByPlan(treatments: readonly TicketTreatment[], span: Span): readonly LineApplied[] {
  const application = { startsAtEpochMilliseconds: span.fromEpochMilliseconds, endsAtEpochMilliseconds: span.untilEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" } as const;
  return treatments.map(({ line, zoneIds, use: { aftercare } }) => ({ line, zoneIds, label: aftercare, application, hasSign: true }));
}

/** The products of a visit as its aftercare counts them, with the signs that the state's law wants for them. */
export function productsOfVisit(visit: VisitRow, applied: readonly LineApplied[]): readonly AppliedProduct[] {
  return applied.flatMap((one) => withSign(one, visit).map(({ label, application }) => ofThisVisit(label, application)));
}

/**
 * The aftercare of each group of lawns that get the same products after the same earlier ones, as records say them. A
 * visit's own record is not before it. The first refusal is handed on.
 */
export function aftercareOfVisit(visit: VisitRow, lawns: readonly LawnFacts[], applied: readonly LineApplied[], setting: AftercareSetting): Outcome<readonly AftercareOfLawns[]> {
  const { property } = visit;
  const own = applied.map((one) => ({ zoneIds: one.zoneIds, key: String(one.line), products: productsOfVisit(visit, [one]) }));
  const cared = lawns.map(({ lawn, putDown, looks, stations }): LawnToCareFor => ({
    name: lawn.name,
    own: own.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)),
    earlier: putDown.filter(({ visitId }) => visitId !== visit.visitId).flatMap((one) => withSign({ ...one, hasSign: one.signIsUp }, visit).map((product, index) => ({ ...product, key: `${one.visitId} ${String(one.line)} ${String(index)}` }))),
    waterings: looks.flatMap(({ watering }) => watering ?? []),
    stations,
    seedings: sownSeed(lawn.seedings),
  }));
  return aftercareOfLawns(cared, {
    visit: setting.span,
    timeZone: setting.timeZone,
    zoneDataVersion: setting.zoneDataVersion,
    estimates: DEFAULT_AFTERCARE_ESTIMATES,
    hours: hoursOnFile(property),
    unitSystem: "us",
    mowing: { weekday: mowingWeekdayOf(property.mowingDay), lastMowedAtEpochMilliseconds: "unknown" },
    place: property.position === null ? "unknown" : { latitudeDegrees: property.position.latitude, longitudeDegrees: property.position.longitude },
    secondLook: visit.secondLookAfterDays === null ? "none" : { daysAfter: visit.secondLookAfterDays, programName: visit.name },
  });
}

function ofThisVisit(label: LabelAftercare, application: ApplicationTimes): AppliedProduct {
  return { label, application, appliedIn: "this-visit", wateredInAtEpochMilliseconds: "not-yet" };
}

/**
 * A product that was or will be put down, and beside it the state's sign for it: the stricter of label and law counts. Where no
 * sign was put up neither of them says how long it stays, whatever was due: the record says what was not done.
 */
function withSign({ label, application, hasSign }: EarlierProduct & Pick<LineApplied, "hasSign">, { property: { state } }: VisitRow): readonly EarlierProduct[] {
  if (!hasSign) return [{ label: withoutSign(label), application }];
  const sign = signByLaw(label, state);
  return sign === undefined ? [{ label, application }] : [{ label, application }, { label: sign, application }];
}

/** Labels of which nothing is asked about a sign, each kept as one object for the same reason as {@link SIGNS_BY_LAW}. */
const WITHOUT_SIGN = new WeakMap<LabelAftercare, LabelAftercare>();

function withoutSign(label: LabelAftercare): LabelAftercare {
  const known = WITHOUT_SIGN.get(label);
  if (known !== undefined) return known;
  const signless: LabelAftercare = { ...label, facts: { ...label.facts, "posting-sign": "none" } };
  WITHOUT_SIGN.set(label, signless);
  return signless;
}

/** What the states' laws say of signs for labels, each kept as one object: what is worked out of a label is kept by it, for every record of two years. */
const SIGNS_BY_LAW = new WeakMap<LabelAftercare, Map<UsState, LabelAftercare>>();

function signByLaw(label: LabelAftercare, state: UsState): LabelAftercare | undefined {
  const signs = SIGNS_BY_LAW.get(label) ?? new Map<UsState, LabelAftercare>();
  SIGNS_BY_LAW.set(label, signs);
  const known = signs.get(state);
  if (known !== undefined) return known;
  const law = lawOfSigns(state);
  if (law === undefined) return undefined;
  const sign: LabelAftercare = { productName: label.productName, facts: { ...NOTHING_STATED, "posting-sign": law } };
  signs.set(state, sign);
  return sign;
}

function lawOfSigns(state: UsState): StatedConstraint<"posting-sign"> | undefined {
  const rule = packOf(state)?.facts["posting-sign"];
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

/** Says what nobody knows of when a property may be watered, where something wants water. */
export function hoursNotOnFile({ property }: VisitRow, aftercare: readonly AftercareOfLawns[]): readonly Finding[] {
  const wantsWater = aftercare.some(({ timeline: { watering } }) => watering.kind === "window" || watering.kind === "no-window");
  return wantsWater ? hoursMissing(property) : [];
}

/** The day of the week as aftercare counts them, from Sunday; no fixed day and nobody's answer are not the same. */
function mowingWeekdayOf(day: MowingDay | null): MowingHabit["weekday"] {
  if (day === null) return "unknown";
  return day === NO_FIXED_DAY ? "none" : day % 7;
}

/** The span of a visit's work on its day. */
export function spanOfVisit(on: CalendarDate, visit: VisitRow, instantOf: (on: CalendarDate, minuteOfDay: number) => number): Span {
  const startsAt = visit.stop?.arrivesAtMinute ?? visit.stop?.startsAtMinute ?? NINE_O_CLOCK;
  const from = instantOf(on, Math.min(startsAt, LAST_MINUTE));
  return { fromEpochMilliseconds: from, untilEpochMilliseconds: from + visit.serviceMinutes * 60_000 };
}

const NINE_O_CLOCK = 9 * 60;
const LAST_MINUTE = 1439;
