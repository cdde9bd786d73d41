import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type AftercareKind, type LabelAftercare, type Until } from "#domain/label/aftercare-constraint";
import { aftercareTimeline, type AftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { wateringPeriods } from "#domain/mixing/watering-hours";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/domain-answers";
import { aftercareQuestion, appliedOf, at, byHouse, byLaw, CHICAGO, daily, earlierOf, FRONT, HOUR, labelOf, says, untilState } from "../../support/aftercare-builders";
import { rainSpoils } from "../../support/label-by-the-minute";

/** Ends of visits: an ordinary evening and the two in whose night clocks change. */
const ends = ["2026-05-01T16:00-05:00", "2026-03-07T17:20-06:00", "2026-10-31T19:40-05:00"].map(at);

const reach = fc.oneof(
  fc.record({ anchor: fc.constantFrom("application-start" as const, "application-end" as const), durationMinutes: fc.integer({ min: 0, max: 60 * 40 }) }),
  fc.record({ anchor: fc.constant("calendar-day" as const), days: fc.integer({ min: 0, max: 4 }) }),
  fc.record({ anchor: fc.constant("days" as const), from: fc.constantFrom("application-start" as const, "application-end" as const, "not-said" as const), days: fc.integer({ min: 0, max: 4 }) }),
);
const dueReach = fc.oneof(
  fc.record({ anchor: fc.constantFrom("application-start" as const, "application-end" as const), durationMinutes: fc.integer({ min: 60 * 12, max: 60 * 90 }) }),
  fc.constant({ anchor: "at-once" as const }),
  fc.record({ anchor: fc.constant("calendar-day" as const), days: fc.integer({ min: 1, max: 6 }) }),
  fc.record({ anchor: fc.constant("days" as const), from: fc.constantFrom("application-start" as const, "application-end" as const, "not-said" as const), days: fc.integer({ min: 1, max: 6 }) }),
);
const untils: fc.Arbitrary<readonly Until[]> = fc.array(fc.oneof(reach, fc.constantFrom(untilState("dry"), untilState("dust-settled"))), { minLength: 1, maxLength: 2 });
const inches = fc.constantFrom("0.1", "0.25", "0.5");
const never: fc.Arbitrary<Partial<LabelAftercare["facts"]>> = fc.constant({});
const maybe = (facts: fc.Arbitrary<Partial<LabelAftercare["facts"]>>, kind: AftercareKind) =>
  fc.oneof({ weight: 4, arbitrary: facts }, { weight: 3, arbitrary: never }, { weight: 1, arbitrary: fc.constant({ [kind]: "unknown" as const }) });
const labelFacts = fc.tuple(
  maybe(untils.map((untilLaterOf) => says("people-and-pets", { untilLaterOf })), "people-and-pets"),
  // Left unread by no product here: it would leave nearly every visit undecided.
  fc.oneof(never, untils.map((untilLaterOf) => says("watering-not-before", { untilLaterOf }))),
  fc.oneof(
    never,
    fc.tuple(fc.oneof({ weight: 4, arbitrary: dueReach }, { weight: 1, arbitrary: fc.constant("not-stated" as const) }), inches).map(([by, least]) => says("watering-in", { by, depth: { least: of("in", least), most: "none" }, rain: "counts" })),
  ),
  fc.oneof(never, fc.tuple(reach, fc.constantFrom("any", "0.2", "0.4")).map(([reaches, from]) => says("rain-that-spoils", { within: reaches, from: from === "any" ? from : of("in", from) }))),
  maybe(untils.map((untilLaterOf) => says("mowing-after", { untilLaterOf })), "mowing-after"),
  maybe(reach.map((until) => says("seeding-after", { intervals: [{ method: "any", until }] })), "seeding-after"),
);
const products = (end: number) =>
  fc.array(fc.tuple(labelFacts, fc.integer({ min: 0, max: 30 })), { minLength: 1, maxLength: 4 }).map((all) =>
    all.map(([facts, hoursBefore], index): AppliedProduct => {
      const label = labelOf(`Product ${index}`, Object.assign({}, ...facts) as Partial<LabelAftercare["facts"]>);
      if (hoursBefore > 3) return earlierOf(label, end - (hoursBefore + 1) * HOUR);
      const application = { startsAtEpochMilliseconds: end - HOUR, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: "not-posted" } as const;
      return appliedOf(label, { application });
    }),
  );
const hours = fc.constantFrom<AftercareQuestion["hours"]>(
  { localRules: "none", controller: "none" },
  { localRules: byLaw([...daily(1, 9), ...daily(19, 24)]), controller: byHouse(daily(0, 7)) },
  { localRules: byLaw(daily(0, 10, [0, 2, 4])), controller: "none" },
  { localRules: byLaw(wateringPeriods({ datesOfMonth: "odd" }, { fromMinuteOfDay: 1140, untilMinuteOfDay: 600 }, "same-day")), controller: byHouse(daily(1, 9)) },
);
const visits = fc.constantFrom(...ends).chain((end) => fc.record({ end: fc.constant(end), products: products(end), hours }));

const timeline = (visit: { end: number; hours: AftercareQuestion["hours"] }, all: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}): AftercareTimeline =>
  valueOf(
    aftercareTimeline(
      aftercareQuestion(all, { visit: { fromEpochMilliseconds: visit.end - HOUR, untilEpochMilliseconds: visit.end }, hours: visit.hours, stations: [FRONT], ...change }),
    ),
  );
const letsGo = ({ findings }: AftercareTimeline) => findings.some(({ level, rule }) => level === "take-care" && /^(?:no-common-watering|watering-time-too|watering-hours-leave|station-minutes)/u.test(rule));
const windowsOf = ({ watering }: AftercareTimeline) => (watering.kind === "window" ? watering.windows : []);
const mayNots = ({ steps }: AftercareTimeline) => steps.filter(({ kind }) => kind === "may-not");
const endOf = (step: AftercareStep) => step.endsAtEpochMilliseconds ?? Infinity;
const covers = (outer: AftercareTimeline, inner: AftercareTimeline, isHeld: (row: AftercareStep["row"]) => boolean) =>
  mayNots(inner).filter(({ row }) => isHeld(row)).every((step) =>
    mayNots(outer).some((one) => one.row === step.row && one.startsAtEpochMilliseconds <= step.startsAtEpochMilliseconds && endOf(one) >= endOf(step)),
  );

describe("whatever the products, hours and nights", () => {
  test("no step of a row overlaps what that row forbids, and forbidden spans never overlap", () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const { steps } = timeline(visit, visit.products);
        steps.forEach((one, index) => {
          for (const other of steps.slice(index + 1)) {
            // Water that has no hours may be wanted beside water that has; neither is forbidden.
            if (one.row !== other.row || (one.kind === "must" && other.kind === "must" && (one.hasNoHours === true || other.hasNoHours === true))) continue;
            expect(Math.min(endOf(one), endOf(other))).toBeLessThanOrEqual(Math.max(one.startsAtEpochMilliseconds, other.startsAtEpochMilliseconds));
          }
        });
      }),
      { numRuns: 150 },
    );
  });

  test("rain is said to do only from when no product is spoiled by it any more", () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const told = timeline(visit, visit.products);
        const [step] = told.steps.filter(({ row, kind, hasNoHours }) => row === "watering" && kind === "must" && hasNoHours !== true);
        if (told.watering.kind !== "window" || step === undefined || !/ of rain .* does it too\./u.test(step.words)) return;
        const { epochMilliseconds: from = NaN } = told.watering.rainFrom ?? {};
        expect(from).toBeLessThanOrEqual(step.startsAtEpochMilliseconds);
        for (const product of visit.products) expect(rainSpoils(product, CHICAGO)(from)).toBe(false);
      }),
      { numRuns: 150 },
    );
  });

  test("a product more never widens a window nor shortens what is forbidden", () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const fewer = timeline(visit, visit.products.slice(0, -1));
        const more = timeline(visit, visit.products);
        // A date that other work has lost for another of its own products binds no longer, so that water may run later; and of water that is let go nothing has to be kept away.
        const isLost = letsGo(more);
        expect(covers(more, fewer, (row) => !isLost || row !== "watering")).toBe(true);
        if (fewer.watering.kind === "none-needed" || isLost) return;
        for (const window of windowsOf(more)) {
          expect(windowsOf(fewer).some((one) => one.fromEpochMilliseconds <= window.fromEpochMilliseconds && window.untilEpochMilliseconds <= one.untilEpochMilliseconds)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  test("the order of the products does not matter", () => {
    fc.assert(
      fc.property(visits, (visit) => {
        expect(timeline(visit, visit.products.toReversed())).toStrictEqual(timeline(visit, visit.products));
      }),
      { numRuns: 100 },
    );
  });

  test("metric and US units change words only, and equal depths the same answer", () => {
    const millimeters: Readonly<Record<string, string>> = { "0.1": "2.54", "0.25": "6.35", "0.5": "12.7" };
    const instants = ({ steps, watering }: AftercareTimeline) => ({
      steps: steps.map(({ row, kind, startsAtEpochMilliseconds, endsAtEpochMilliseconds }) => [row, kind, startsAtEpochMilliseconds, endsAtEpochMilliseconds]),
      watering: watering.kind === "window" ? [watering.leastDepth, watering.elapsedMinutes, ...watering.windows] : watering.kind,
    });
    fc.assert(
      fc.property(visits, inches, (visit, least) => {
        const feed = (depth: ReturnType<typeof of<"in" | "mm">>) =>
          appliedOf(labelOf("Feed", says("watering-in", { by: "not-stated", depth: { least: depth, most: "none" }, rain: "counts" })), {
            application: { startsAtEpochMilliseconds: visit.end - HOUR, endsAtEpochMilliseconds: visit.end, postedAtEpochMilliseconds: "not-posted" },
          });
        const us = timeline(visit, [...visit.products, feed(of("in", least))]);
        expect(timeline(visit, [...visit.products, feed(of("mm", millimeters[least] ?? ""))])).toStrictEqual(us);
        expect(instants(timeline(visit, [...visit.products, feed(of("in", least))], { unitSystem: "metric" }))).toEqual(instants(us));
      }),
      { numRuns: 60 },
    );
  });

  test("stored as JSON and read back it is the same", () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const one = timeline(visit, visit.products);
        expect(JSON.parse(JSON.stringify(one))).toStrictEqual(one);
      }),
      { numRuns: 50 },
    );
  });
});
