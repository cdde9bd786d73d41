// Visits to hold the aftercare against a second way: in zones of both halves of the earth, on ordinary days and in the
// nights in which clocks change, with labels that ask for little or for much and hours of all kinds. Whole minutes only.
import fc from "fast-check";
import { type AftercareKind, type DueReach, type LabelAftercare, type Reach, type ReachBack, type Until } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type EarlierProduct } from "#domain/mixing/earlier-products";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { wateringPeriods } from "#domain/mixing/watering-hours";
import { type LawnWatering } from "#domain/properties/lawn-watering";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byHouse, byLaw, hoursAfterEnd, labelOf, says, untilState } from "./aftercare-builders";
import { type Ground, type SaidHours } from "./label-by-the-minute";
import { firstMinuteOf, MINUTE } from "./wall-clock";

const HOUR_MINUTES = 60;
const DAY_MINUTES = 1440;

/** Where and on what date: the days before clocks change and on which they do, by an hour or half of one, at night or at midnight. */
const scenes = fc.constantFrom(
  ...[
    { zone: "America/Chicago", place: { latitudeDegrees: 41.9, longitudeDegrees: -87.6 }, dates: ["2026-05-01", "2026-03-07", "2026-03-08", "2026-10-31", "2026-11-01"] },
    { zone: "America/Phoenix", place: { latitudeDegrees: 33.4, longitudeDegrees: -112.1 }, dates: ["2026-03-07"] },
    { zone: "America/Havana", place: { latitudeDegrees: 23.1, longitudeDegrees: -82.4 }, dates: ["2026-03-07", "2026-10-31"] },
    { zone: "America/Santiago", place: { latitudeDegrees: -33.4, longitudeDegrees: -70.7 }, dates: ["2026-04-04", "2026-09-05"] },
    { zone: "Europe/London", place: { latitudeDegrees: 51.5, longitudeDegrees: -0.1 }, dates: ["2026-03-28", "2026-10-24"] },
    { zone: "Australia/Sydney", place: { latitudeDegrees: -33.9, longitudeDegrees: 151.2 }, dates: ["2026-04-04", "2026-10-03"] },
    { zone: "Australia/Lord_Howe", place: { latitudeDegrees: -31.6, longitudeDegrees: 159.1 }, dates: ["2026-04-04", "2026-10-03"] },
    { zone: "Pacific/Chatham", place: { latitudeDegrees: -44, longitudeDegrees: -176.6 }, dates: ["2026-04-04", "2026-09-26"] },
  ].flatMap(({ zone, place, dates }) => dates.map((date) => ({ zone, place, from: firstMinuteOf(zone, date) }))),
);

const days = (least: number, most: number) =>
  fc.oneof(
    fc.record({ anchor: fc.constantFrom("application-start" as const, "application-end" as const, "posting" as const), durationMinutes: fc.integer({ min: least * DAY_MINUTES, max: most * DAY_MINUTES }) }),
    fc.record({ anchor: fc.constant("calendar-day" as const), days: fc.integer({ min: least, max: most }) }),
    fc.record({ anchor: fc.constant("days" as const), from: fc.constantFrom("application-start" as const, "application-end" as const, "posting" as const, "not-said" as const), days: fc.integer({ min: least, max: most }) }),
  );
const reach: fc.Arbitrary<Reach> = fc.oneof({ weight: 3, arbitrary: days(0, 1) }, { weight: 1, arbitrary: days(0, 4) });
export const dueReach: fc.Arbitrary<DueReach> = fc.oneof({ weight: 6, arbitrary: days(1, 4) }, { weight: 3, arbitrary: days(0, 1) }, { weight: 1, arbitrary: fc.constant({ anchor: "at-once" as const }) });
export const longReach: fc.Arbitrary<Reach> = fc.oneof(reach, fc.record({ anchor: fc.constant("calendar-month" as const), months: fc.integer({ min: 0, max: 2 }) }));
const untils = (...states: readonly ("dry" | "dust-settled" | "watered-in" | "watered-in-and-dry")[]): fc.Arbitrary<readonly Until[]> =>
  fc.array(fc.oneof({ weight: 3, arbitrary: reach }, { weight: 1, arbitrary: fc.constantFrom(...states.map(untilState)) }), { minLength: 1, maxLength: 2 });
export const reachesBack: fc.Arbitrary<ReachBack> = fc.oneof(
  fc.record({ anchor: fc.constant("application-start" as const), durationMinutes: fc.integer({ min: 0, max: 4 * DAY_MINUTES }) }),
  fc.record({ anchor: fc.constant("days" as const), from: fc.constant("application-start" as const), days: fc.integer({ min: 0, max: 4 }) }),
  fc.record({ anchor: fc.constant("calendar-day" as const), days: fc.integer({ min: 0, max: 4 }) }),
);
const inches = fc.constantFrom("0.1", "0.25", "0.5");

type Facts = Partial<LabelAftercare["facts"]>;
const none: fc.Arbitrary<Facts> = fc.constant({});
/** Mostly said or read and found to be none; now and then read by nobody. */
const maybe = (kind: AftercareKind, facts: fc.Arbitrary<Facts>, weights: { readonly said: number; readonly unread: number }) =>
  fc.oneof({ weight: weights.said, arbitrary: facts }, { weight: 6, arbitrary: none }, { weight: weights.unread, arbitrary: fc.constant<Facts>({ [kind]: "unknown" }) });

const wateringIn = fc
  .record({ by: fc.oneof({ weight: 5, arbitrary: dueReach }, { weight: 1, arbitrary: fc.constant("not-stated" as const) }), least: inches, most: fc.constantFrom("none", "none", "none", "0.25", "0.3", "0.75"), isDeep: fc.integer({ min: 0, max: 4 }) })
  .map(({ by, least, most, isDeep }) => {
    const depth = { least: of("in", least), most: most === "none" || Number(most) < Number(least) ? ("none" as const) : of("in", most) };
    return says("watering-in", { by, depth: isDeep === 0 ? "not-stated" : depth, rain: "counts" });
  });
const signs = fc
  .record({
    upBy: fc.constantFrom("before-application" as const, "at-start" as const, "immediately-following" as const),
    orReentryIfLater: fc.boolean(),
    days: fc.integer({ min: 0, max: 3 }),
    down: fc.constantFrom("elapsed-end", "elapsed-posting", "day-following", "days-after-completion", "sunset-of-day-following", "sunset-of-day-following", "state", "no-time-required"),
  })
  .map(({ upBy, orReentryIfLater, days: count, down }) => {
    const mayComeDown = {
      "elapsed-end": { trigger: "elapsed", anchor: "application-end", durationMinutes: count * DAY_MINUTES + 77, orReentryIfLater } as const,
      "elapsed-posting": { trigger: "elapsed", anchor: "posting", durationMinutes: count * DAY_MINUTES, orReentryIfLater } as const,
      "day-following": { trigger: "day-following", daysFollowing: count, orReentryIfLater } as const,
      "days-after-completion": { trigger: "days-after-completion", daysAfter: count, orReentryIfLater } as const,
      "sunset-of-day-following": { trigger: "sunset-of-day-following", daysFollowing: count, orReentryIfLater } as const,
      state: { trigger: "state", state: "dry", orReentryIfLater } as const,
      "no-time-required": { trigger: "no-time-required" } as const,
    }[down];
    return says("posting-sign", { upBy, mayComeDown });
  });
const intervals = fc.array(fc.record({ method: fc.constantFrom("any" as const, "broadcast" as const, "slit" as const), until: fc.oneof({ weight: 6, arbitrary: longReach }, { weight: 1, arbitrary: fc.record({ anchor: fc.constant("mowings" as const), count: fc.integer({ min: 1, max: 3 }) }) }) }), { minLength: 1, maxLength: 3 });

const labelFacts = fc
  .tuple(
    maybe("people-and-pets", untils("dry", "dust-settled", "watered-in", "watered-in-and-dry").map((untilLaterOf) => says("people-and-pets", { untilLaterOf })), { said: 8, unread: 1 }),
    maybe("watering-not-before", untils("dry", "dust-settled").map((untilLaterOf) => says("watering-not-before", { untilLaterOf })), { said: 3, unread: 0 }),
    maybe("watering-in", wateringIn, { said: 5, unread: 0 }),
    maybe("rain-that-spoils", fc.tuple(reach, fc.constantFrom("any", "0.2", "0.4")).map(([within, from]) => says("rain-that-spoils", { within, from: from === "any" ? from : of("in", from) })), { said: 2, unread: 0 }),
    maybe("mowing-after", untils("dry", "watered-in").map((untilLaterOf) => says("mowing-after", { untilLaterOf })), { said: 8, unread: 1 }),
    maybe("seeding-after", intervals.map((all) => says("seeding-after", { intervals: all })), { said: 8, unread: 1 }),
    maybe("posting-sign", signs, { said: 8, unread: 1 }),
  )
  .map((all): Facts => Object.assign({}, ...all) as Facts);

/** Work within the visit, or other work that ended before it began, or that began before it ended and crosses it. */
function productOf(index: number, visit: { readonly from: number; readonly until: number }) {
  const length = (visit.until - visit.from) / MINUTE;
  const isEarlier = fc.oneof({ weight: 3, arbitrary: fc.constant(false) }, { weight: 1, arbitrary: fc.constant(true) });
  const posted = fc.constantFrom<"not-posted" | number>("not-posted", "not-posted", -30, 20);
  return fc.record({ facts: labelFacts, isEarlier, beforeMinutes: fc.oneof({ weight: 3, arbitrary: fc.integer({ min: 0, max: 3 * DAY_MINUTES }) }, { weight: 1, arbitrary: fc.integer({ min: -2 * length, max: 0 }) }), one: fc.integer({ min: 0, max: length }), other: fc.integer({ min: 0, max: length }), posted, watered: fc.integer({ min: 0, max: 5 }) }).map(
    ({ facts, isEarlier: isBefore, beforeMinutes, one, other, posted: postedAfter, watered }): AppliedProduct => {
      const label = labelOf(`Product ${index}`, facts);
      const begin = isBefore ? visit.from - beforeMinutes * MINUTE - length * MINUTE : visit.from;
      // What would begin after the visit's end begins with it.
      const start = Math.min(begin + Math.min(one, other) * MINUTE, Math.max(visit.from, visit.until - MINUTE));
      const end = Math.max(begin + Math.max(one, other) * MINUTE, start);
      const application = { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: postedAfter === "not-posted" ? postedAfter : start + postedAfter * MINUTE };
      if (!isBefore) return appliedOf(label, { application });
      const wateredIn = watered === 0 ? end + 30 * MINUTE : "not-yet";
      return appliedOf(label, { application, appliedIn: "earlier-visit", wateredInAtEpochMilliseconds: typeof wateredIn === "number" && wateredIn > visit.from ? "not-yet" : wateredIn });
    },
  );
}

const clockMinute = fc.constantFrom(0, 60, 90, 119, 120, 150, 180, 300, 540, 600, 1140, 1320, 1380, 1439);
const weekdays = fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { minLength: 1, maxLength: 7 });
const saidHours: fc.Arbitrary<readonly SaidHours[]> = fc.array(
  fc.record({ days: fc.oneof(fc.record({ weekdays }), fc.constant({ weekdays: [0, 1, 2, 3, 4, 5, 6] }), fc.record({ datesOfMonth: fc.constantFrom("odd" as const, "even" as const) })), fromMinute: clockMinute, untilMinute: clockMinute }),
  { minLength: 1, maxLength: 2 },
);
const hoursOnFile = (unread: number) => fc.oneof({ weight: 4, arbitrary: fc.constant("none" as const) }, { weight: 5, arbitrary: saidHours }, { weight: unread, arbitrary: fc.constant("unknown" as const) });

export const stationsDrawn: fc.Arbitrary<readonly IrrigationStation[]> = fc
  .array(fc.record({ rate: fc.constantFrom("0.3", "0.4", "0.75", "1.2"), cycle: fc.constantFrom("none" as const, { longestRunMinutes: 7, soakMinutes: 30 }, { longestRunMinutes: 20, soakMinutes: 11 }), isTested: fc.integer({ min: 0, max: 9 }) }), { maxLength: 3 })
  .map((all) => all.map(({ rate, cycle, isTested }, index) => ({ stationName: `Station ${index}`, depthPerHour: isTested === 0 ? ("not-tested" as const) : of("in", rate), cycle })));

/** A visit with its products, and the ground on which both ways read them. */
export interface DrawnVisit {
  readonly ground: Ground;
  readonly products: readonly AppliedProduct[];
  readonly stations: readonly IrrigationStation[];
}

/** At any hour, but often at those at which clocks change and around midnight. */
const startMinute = fc.oneof(fc.integer({ min: 0, max: 24 * HOUR_MINUTES }), fc.integer({ min: 0, max: 200 }), fc.integer({ min: 22 * HOUR_MINUTES, max: 24 * HOUR_MINUTES }));

export const visitsDrawn: fc.Arbitrary<DrawnVisit> = fc
  .record({ scene: scenes, startMinute, lengthMinutes: fc.integer({ min: 0, max: 180 }), localRules: hoursOnFile(1), controller: hoursOnFile(0), isDryKnown: fc.integer({ min: 0, max: 9 }), stations: stationsDrawn })
  .chain(({ scene, startMinute, lengthMinutes, isDryKnown, localRules, controller, stations }) => {
    const visitFrom = scene.from + startMinute * MINUTE;
    const visitUntil = visitFrom + lengthMinutes * MINUTE;
    const estimates = isDryKnown === 0 ? { ...DEFAULT_AFTERCARE_ESTIMATES, untilDry: "unknown" as const } : DEFAULT_AFTERCARE_ESTIMATES;
    const ground: Ground = { zone: scene.zone, place: scene.place, estimates, localRules, controller, visitFrom, visitUntil };
    const visit = { from: visitFrom, until: visitUntil };
    return fc
      .integer({ min: 1, max: 4 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => productOf(index, visit))))
      .map((products) => ({ ground, products, stations }));
  });

/** The same with short hours on few days and a feed that can wait for them: often enough it takes several. */
export const visitsInParts: fc.Arbitrary<DrawnVisit> = fc
  .record({ visit: visitsDrawn, untilMinute: fc.integer({ min: 320, max: 400 }), waitsDays: fc.integer({ min: 3, max: 6 }), rates: fc.array(fc.constantFrom("0.25", "0.4", "0.75"), { minLength: 2, maxLength: 4 }), datesOfMonth: fc.constantFrom("odd" as const, "even" as const, "any" as const) })
  .map(({ visit: { ground, products, stations }, untilMinute, waitsDays, rates, datesOfMonth }) => {
    const on = datesOfMonth === "any" ? { weekdays: [0, 1, 2, 3, 4, 5, 6] } : { datesOfMonth };
    const localRules = [{ days: on, fromMinute: 270, untilMinute }];
    const by: DueReach = { anchor: "calendar-day", days: waitsDays };
    const feed = labelOf("Feed", says("watering-in", { by, depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
    const application = { startsAtEpochMilliseconds: ground.visitFrom, endsAtEpochMilliseconds: ground.visitUntil, postedAtEpochMilliseconds: "not-posted" } as const;
    const cycles = stations.map(({ cycle }) => cycle);
    const slow = rates.map((rate, index) => ({ stationName: `Station ${index}`, depthPerHour: of("in", rate), cycle: cycles[index] ?? ("none" as const) }));
    return { ground: { ...ground, localRules, controller: "none" as const }, products: [...products.slice(0, 1), appliedOf(feed, { application })], stations: slow };
  });

/** Visits after other work of little water, of which more spoils it for a day, and with work now or then that wants more. */
export const visitsAfterSpoilable: fc.Arbitrary<DrawnVisit> = fc
  .record({
    visit: fc.oneof(visitsDrawn, visitsInParts),
    light: fc.record({ beforeMinutes: fc.integer({ min: 0, max: 20 * HOUR_MINUTES }), hours: fc.integer({ min: 12, max: 48 }), from: fc.constantFrom("0.2", "0.4"), within: fc.integer({ min: 6, max: 48 }) }),
    deep: fc.record({ isEarlier: fc.boolean(), beforeMinutes: fc.integer({ min: 0, max: 2 * DAY_MINUTES }), least: fc.constantFrom("0.25", "0.5"), by: fc.oneof(fc.constant("not-stated" as const), dueReach, days(4, 14)) }),
  })
  .map(({ visit: { ground, products, stations }, light, deep }) => {
    const earlier = (beforeMinutes: number) => {
      const end = ground.visitFrom - beforeMinutes * MINUTE;
      return { appliedIn: "earlier-visit", application: { startsAtEpochMilliseconds: end - 30 * MINUTE, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: "not-posted" } } as const;
    };
    const now = { application: { startsAtEpochMilliseconds: ground.visitFrom, endsAtEpochMilliseconds: ground.visitUntil, postedAtEpochMilliseconds: "not-posted" } } as const;
    const wants = (least: string, by: DueReach | "not-stated") => says("watering-in", { by, depth: { least: of("in", least), most: "none" }, rain: "counts" });
    const spoilable = labelOf("Light", { ...wants("0.1", hoursAfterEnd(light.hours)), ...says("rain-that-spoils", { within: hoursAfterEnd(light.within), from: of("in", light.from) }) });
    const thirsty = appliedOf(labelOf("Deep", wants(deep.least, deep.by)), deep.isEarlier ? earlier(deep.beforeMinutes) : now);
    return { ground, products: [...products.slice(0, 1), appliedOf(spoilable, earlier(light.beforeMinutes)), thirsty], stations };
  });

/** A lawn of a property with what it got and the stations that reach it. */
export interface DrawnLawn {
  readonly name: string;
  readonly products: readonly AppliedProduct[];
  readonly stations: readonly IrrigationStation[];
}

/** A property with two or three lawns of which some share stations, and hours that are often just long enough for them. */
export interface DrawnProperty {
  readonly ground: Ground;
  readonly lawns: readonly DrawnLawn[];
}

export const propertiesDrawn: fc.Arbitrary<DrawnProperty> = fc
  .record({
    visit: visitsInParts,
    lawns: fc.array(fc.record({ waitsDays: fc.integer({ min: 0, max: 6 }), least: inches, gets: fc.integer({ min: 0, max: 7 }) }), { minLength: 2, maxLength: 3 }),
    reaches: fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 2 }), { minLength: 4, maxLength: 4 }),
    untested: fc.integer({ min: 0, max: 15 }),
    untilMinute: fc.integer({ min: 320, max: 640 }),
  })
  .map(({ visit: { ground, products, stations }, lawns, reaches, untested, untilMinute }) => {
    const [other] = products;
    const application = { startsAtEpochMilliseconds: ground.visitFrom, endsAtEpochMilliseconds: ground.visitUntil, postedAtEpochMilliseconds: "not-posted" } as const;
    const feeds = lawns.map(({ waitsDays, least }, index) => {
      const by: DueReach = { anchor: "calendar-day", days: waitsDays };
      const wants = says("watering-in", { by: waitsDays === 0 ? "not-stated" : by, depth: { least: of("in", least), most: "none" }, rain: "counts" });
      return appliedOf(labelOf(`Feed ${index}`, wants), { application });
    });
    const localRules = typeof ground.localRules === "string" ? ground.localRules : ground.localRules.map((said) => ({ ...said, untilMinute }));
    return {
      ground: { ...ground, localRules },
      lawns: lawns.map(({ gets }, index) => ({
        name: `Lawn ${index}`,
        // Mostly its own feed; now and then that of its neighbor too, or only what the first of the visit's products is.
        products: [...(gets > 0 ? feeds.slice(index, gets === 1 ? index + 2 : index + 1) : []), ...(other !== undefined && (gets === 0 || gets > 5) ? [other] : [])],
        stations: stations.flatMap((station, at) => (reaches[at]?.includes(index) === true ? [{ ...station, ...(at === untested ? { depthPerHour: "not-tested" as const } : {}) }] : [])),
      })),
    };
  });

/** What was put down on a lawn before a visit, across it or after it, lately or weeks ago, and the water that somebody wrote down. */
export interface DrawnHistory {
  readonly visit: DrawnVisit;
  readonly earlier: readonly EarlierProduct[];
  readonly waterings: readonly LawnWatering[];
  readonly isSeedPlanned: boolean;
}

const waterings = (visitUntil: number): fc.Arbitrary<readonly LawnWatering[]> =>
  fc.array(
    fc
      .record({ before: fc.integer({ min: -60, max: 3 * DAY_MINUTES }), wateredBy: fc.constantFrom("sprinklers" as const, "rain" as const), depth: fc.constantFrom("not-stated" as const, of("in", "0.1"), of("in", "0.25")) })
      .map(({ before, wateredBy, depth }) => ({ wateredAtEpochMilliseconds: visitUntil - before * MINUTE, wateredBy, depth, toldBy: "crew" as const })),
    { maxLength: 2 },
  );

export const historiesDrawn: fc.Arbitrary<DrawnHistory> = visitsDrawn.chain((visit) => {
  const { visitFrom, visitUntil } = visit.ground;
  // Whole days with some hours more are when most of what is asked for ends.
  const wholeDays = fc.record({ days: fc.integer({ min: 0, max: 4 }), more: fc.integer({ min: 0, max: 720 }) }).map(({ days: count, more }) => count * DAY_MINUTES + more);
  const endedBefore = fc.oneof(wholeDays, wholeDays, fc.integer({ min: 0, max: 9 * DAY_MINUTES }), fc.integer({ min: 12 * DAY_MINUTES, max: 40 * DAY_MINUTES }));
  const crossing = fc.integer({ min: -240, max: 0 });
  const earlier = fc.array(fc.record({ facts: labelFacts, before: fc.oneof({ weight: 4, arbitrary: endedBefore }, { weight: 1, arbitrary: crossing }), lasting: fc.integer({ min: 0, max: 180 }), posted: fc.constantFrom("not-posted" as const, -30, 20, 200) }), { minLength: 1, maxLength: 3 });
  return fc.record({ earlier, waterings: waterings(visitUntil), isSeedPlanned: fc.boolean() }).map(({ earlier: all, ...more }) => ({
    visit: { ...visit, products: visit.products.filter(({ appliedIn }) => appliedIn === "this-visit") },
    ...more,
    earlier: all.map(({ facts, before, lasting, posted }, index) => {
      const end = visitFrom - before * MINUTE;
      const start = end - lasting * MINUTE;
      const postedAt = posted === "not-posted" ? posted : start + posted * MINUTE;
      return { label: labelOf(`Earlier ${index}`, facts), application: { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: postedAt } };
    }),
  }));
});

/** The same after one product alone that kept people off until some hours before the visit, and whose sign stands for that. */
export const signedHistoriesDrawn: fc.Arbitrary<DrawnHistory> = fc
  .record({ history: historiesDrawn, hours: fc.integer({ min: 0, max: 96 }), freeForMinutes: fc.integer({ min: -60, max: 14 * HOUR_MINUTES }), signs })
  .map(({ history, hours, freeForMinutes, signs: sign }) => {
    const end = history.visit.ground.visitFrom - Math.max(0, hours * HOUR_MINUTES + freeForMinutes) * MINUTE;
    const application = { startsAtEpochMilliseconds: end - 30 * MINUTE, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: "not-posted" } as const;
    return { ...history, earlier: [{ label: labelOf("Signed", { ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(hours)] }), ...sign }), application }] };
  });

const onFile = (said: Ground["localRules"], as: typeof byLaw | typeof byHouse) =>
  typeof said === "string" ? said : as(said.flatMap(({ days: on, fromMinute, untilMinute }) => wateringPeriods(on, { fromMinuteOfDay: fromMinute, untilMinuteOfDay: untilMinute })));

/** The same visit as the product is asked about it. */
export function questionOf({ ground, products, stations }: DrawnVisit, change: Partial<AftercareQuestion> = {}): AftercareQuestion {
  return aftercareQuestion(products, {
    visit: { fromEpochMilliseconds: ground.visitFrom, untilEpochMilliseconds: ground.visitUntil },
    timeZone: ground.zone,
    estimates: ground.estimates,
    hours: { localRules: onFile(ground.localRules, byLaw), controller: onFile(ground.controller, byHouse) },
    stations,
    place: ground.place,
    ...change,
  });
}
