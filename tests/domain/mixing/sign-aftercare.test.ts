import { describe, expect, test } from "vitest";
import { type SignDownTrigger, type SignUpTrigger } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES, endOnState } from "#domain/mixing/aftercare-instants";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { signMayNots, signsToPutUp } from "#domain/mixing/sign-aftercare";
import { localTimeAt } from "#domain/weather/local-hours";
import { appliedOf, at, CHICAGO, earlierOf, END, HOUR, hoursAfterEnd, labelOf, says, START, untilState } from "../../support/aftercare-builders";

const law = { basis: "law", source: "posting rule of a state" } as const;
const chicago = { latitudeDegrees: 41.9, longitudeDegrees: -87.6 };
const signed = (upBy: SignUpTrigger, mayComeDown: SignDownTrigger, facts = {}) => labelOf("Weedaway", { ...facts, ...says("posting-sign", { upBy, mayComeDown }, law) });
const context = (place: typeof chicago | "unknown" = chicago) => ({
  timeZone: CHICAGO,
  place,
  endContext: () => ({ timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES, wateredInAtEpochMilliseconds: null }),
});
const downAt = (applied: AppliedProduct) => signMayNots([applied], context()).mayNots[0]?.end.atEpochMilliseconds;
const elapsed = (hours: number, orReentryIfLater = false): SignDownTrigger => ({ trigger: "elapsed", anchor: "application-end", durationMinutes: hours * 60, orReentryIfLater });
const following = (orReentryIfLater = false): SignDownTrigger => ({ trigger: "day-following", daysFollowing: 1, orReentryIfLater });
const sunset: SignDownTrigger = { trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: true };

describe("up", () => {
  test.each([
    ["before-application", START, "Put the sign up before the application."],
    ["at-start", START, "Put the sign up at the start of the application."],
    ["at-time-of-application", START, "Put the sign up at the time of the application."],
    ["immediately-following", END, "Put the sign up immediately following the application."],
    ["on-day-of-application", START, "Put the sign up on the day of the application."],
  ] as const)("%s", (upBy, by, words) => {
    expect(signsToPutUp([appliedOf(signed(upBy, following()))], CHICAGO)).toMatchObject([{ kind: "must", endsAtEpochMilliseconds: by, words }]);
  });
  test("one sign for two products begins with the earlier work; in other words or by another time it is another", () => {
    const label = signed("immediately-following", following());
    const work = (startsAtEpochMilliseconds: number, endsAtEpochMilliseconds: number) => ({ application: { startsAtEpochMilliseconds, endsAtEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" } }) as const;
    const steps = signsToPutUp([appliedOf(label, work(START + HOUR / 2, END)), appliedOf(label), appliedOf(label, work(START, END - HOUR / 2)), appliedOf(signed("at-start", following()))], CHICAGO);
    expect(steps.map(({ startsAtEpochMilliseconds: from, endsAtEpochMilliseconds: by }) => [from, by]).toSorted((one, other) => Number(one[1]) - Number(other[1]))).toEqual([[START, START], [START, END - HOUR / 2], [START, END]]);
  });
  test("one that stands, or an earlier visit's, is not put up again", () => {
    const label = signed("at-start", following());
    const application = { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END, postedAtEpochMilliseconds: START };
    expect(signsToPutUp([appliedOf(label, { application }), earlierOf(label, START)], CHICAGO)).toEqual([]);
  });
});

describe("down", () => {
  test("the day following is a day of the calendar and not 24 h", () => {
    expect(downAt(appliedOf(signed("immediately-following", following())))).toBe(at("2026-05-02T00:00-05:00"));
    expect(downAt(appliedOf(signed("immediately-following", elapsed(24))))).toBe(END + 24 * HOUR);
  });
  test("in the night in which clocks change the two differ by that hour too", () => {
    const ended = at("2026-03-07T16:00-06:00");
    expect(downAt(earlierOf(signed("at-start", { ...following(), daysFollowing: 2 } as SignDownTrigger), ended))).toBe(at("2026-03-09T00:00-05:00"));
    expect(downAt(earlierOf(signed("at-start", elapsed(24)), ended))).toBe(at("2026-03-08T17:00-05:00"));
  });
  test.each([
    ["2026-05-01T16:00-05:00", "2026-05-03T16:00-05:00"],
    ["2026-03-07T16:00-06:00", "2026-03-09T17:00-05:00"],
    ["2026-10-31T16:00-05:00", "2026-11-02T16:00-06:00"],
  ])("two days after completion at %s: the later of days and hours, %s", (ended, expected) => {
    const twoDays: SignDownTrigger = { trigger: "days-after-completion", daysAfter: 2, orReentryIfLater: false };
    expect(downAt(earlierOf(signed("at-start", twoDays), at(ended)))).toBe(at(expected));
  });
  test("once it is dry, an estimate, or when people may come back if that is later", () => {
    const dry = (orReentryIfLater: boolean): SignDownTrigger => ({ trigger: "state", state: "dry", orReentryIfLater });
    const [mayNot] = signMayNots([appliedOf(signed("at-start", dry(false)))], context()).mayNots;
    expect(mayNot?.end).toEqual(endOnState("dry", END + 2 * HOUR));
    const reentry = says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] });
    expect(downAt(appliedOf(signed("at-start", dry(true), reentry)))).toBe(END + 4 * HOUR);
    expect(downAt(appliedOf(signed("at-start", dry(false), reentry)))).toBe(END + 2 * HOUR);
  });
  test("counted from posting where the law says so, planned or done", () => {
    const fromPosting: SignDownTrigger = { trigger: "elapsed", anchor: "posting", durationMinutes: 72 * 60, orReentryIfLater: false };
    expect(downAt(appliedOf(signed("at-start", fromPosting)))).toBe(START + 72 * HOUR);
    const application = { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END, postedAtEpochMilliseconds: START - HOUR };
    expect(downAt(appliedOf(signed("at-start", fromPosting), { application }))).toBe(START + 71 * HOUR);
  });
  test("not before people may come back, where the law says so", () => {
    const reentry = says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] });
    expect(downAt(appliedOf(signed("at-start", elapsed(24, true), reentry)))).toBe(END + 48 * HOUR);
    expect(downAt(appliedOf(signed("at-start", elapsed(24), reentry)))).toBe(END + 24 * HOUR);
    expect(downAt(appliedOf(signed("at-start", elapsed(24, true))))).toBe(END + 24 * HOUR);
    expect(downAt(appliedOf(signed("at-start", elapsed(24, true), { "people-and-pets": "unknown" })))).toBeNull();
  });
  test("sunset of the day following, or of the day on which people may come back", () => {
    const shown = (applied: AppliedProduct) => localTimeAt(downAt(applied) ?? 0, CHICAGO);
    // Sunset in Chicago on May 2 and 4 is shortly before 8 pm.
    expect(shown(appliedOf(signed("before-application", sunset)))).toMatchObject({ date: "2026-05-02", localTime: expect.stringMatching(/^19:5/) as string });
    const reentry = says("people-and-pets", { untilLaterOf: [hoursAfterEnd(72)] });
    expect(shown(appliedOf(signed("before-application", sunset, reentry))).date).toBe("2026-05-04");
  });
  test("people may come back after sunset or as a day begins: still the sunset of the day on which they may", () => {
    const dateOf = (hours: number) => localTimeAt(downAt(appliedOf(signed("before-application", sunset, says("people-and-pets", { untilLaterOf: [hoursAfterEnd(hours)] })))) ?? 0, CHICAGO).date;
    // The work ends at 4 pm on May 1: 29 h later is 9 pm on May 2, 32 h its end.
    expect([dateOf(4), dateOf(29), dateOf(32)]).toEqual(["2026-05-02", "2026-05-02", "2026-05-03"]);
  });
  test("a place that is missing is told where people have no time to come back too, and not where no sunset is waited for", () => {
    const wet = says("people-and-pets", { untilLaterOf: [untilState("watered-in-and-dry")] });
    const { mayNots, findings } = signMayNots([appliedOf(signed("before-application", sunset, wet))], context("unknown"));
    expect(mayNots[0]?.end).toEqual({ ...endOnState("sunset"), waitsFor: ["sunset", "watered in and dry"] });
    expect(findings).toMatchObject([{ rule: "place-for-sunset-missing" }]);
    expect(signMayNots([appliedOf(signed("before-application", following()))], context("unknown")).findings).toEqual([]);
  });
  test("a sunset that can't be computed is a hold; a reentry without a time leaves it open", () => {
    const { mayNots, findings } = signMayNots([appliedOf(signed("before-application", sunset))], context("unknown"));
    expect(mayNots[0]?.end).toEqual(endOnState("sunset"));
    expect(findings).toMatchObject([{ level: "hold", answerableBy: "office", rule: "place-for-sunset-missing" }]);
    const wet = says("people-and-pets", { untilLaterOf: [untilState("watered-in-and-dry")] });
    expect(downAt(appliedOf(signed("before-application", sunset, wet)))).toBeNull();
    // The sunset of the day following is sure all the same, and that of a stated time where it is later.
    const notBeforeOf = (facts: Parameters<typeof signed>[2]) => localTimeAt(signMayNots([appliedOf(signed("before-application", sunset, facts))], context()).mayNots[0]?.end.notBeforeEpochMilliseconds ?? 0, CHICAGO).date;
    expect(notBeforeOf(wet)).toBe("2026-05-02");
    expect(notBeforeOf(says("people-and-pets", { untilLaterOf: [untilState("watered-in-and-dry"), hoursAfterEnd(72)] }))).toBe("2026-05-04");
  });
  test("a sunset is an estimate only where an estimate decides its day", () => {
    const endOfSign = (facts: Parameters<typeof signed>[2]) => signMayNots([appliedOf(signed("before-application", sunset, facts))], context()).mayNots[0]?.end;
    expect(endOfSign(says("people-and-pets", { untilLaterOf: [untilState("dry")] }))).toMatchObject({ isEstimate: false, waitsFor: ["dry"] });
    const late = signMayNots([appliedOf(signed("before-application", sunset, says("people-and-pets", { untilLaterOf: [untilState("dry")] })))], { ...context(), endContext: () => ({ timeZone: CHICAGO, estimates: { ...DEFAULT_AFTERCARE_ESTIMATES, untilDry: { durationMinutes: 3 * 24 * 60, basis: "house", source: "house" } }, wateredInAtEpochMilliseconds: null }) });
    expect(late.mayNots[0]?.end).toMatchObject({ isEstimate: true, waitsFor: ["dry"] });
  });
  test("where the sun does not set, the end of the day", () => {
    const { mayNots } = signMayNots([earlierOf(signed("at-start", sunset), at("2026-06-20T16:00-05:00"))], context({ latitudeDegrees: 75, longitudeDegrees: -90 }));
    expect(mayNots[0]?.end.atEpochMilliseconds).toBe(at("2026-06-22T00:00-05:00"));
  });
  test("no time required leaves nothing up", () => {
    expect(signMayNots([appliedOf(signed("at-start", { trigger: "no-time-required" }))], context())).toEqual({ mayNots: [], findings: [] });
  });
});

test("a place that is none on earth gives no sunset: the sign's end is not known, and the office is told", () => {
  for (const place of [{ latitudeDegrees: 200, longitudeDegrees: -87.6 }, { latitudeDegrees: 41.9, longitudeDegrees: Number.NaN }]) {
    const { mayNots, findings } = signMayNots([appliedOf(signed("at-start", { ...sunset, orReentryIfLater: false }))], context(place));
    expect(mayNots[0]?.end).toEqual(endOnState("sunset"));
    expect(findings).toMatchObject([{ rule: "place-for-sunset-missing", level: "hold" }]);
  }
});
