import { describe, expect, test } from "vitest";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { stepsBeforehand } from "#domain/papers/planned-times";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, at, byLaw, CHICAGO, daily, earlierOf, FEED, FRONT, hoursAfterEnd, IRON, labelOf, says, untilState } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

const END_OF_NEXT_DAY = { anchor: "calendar-day", days: 1 } as const;

/** Products put down on Friday, May 1, between two hours. */
function putDown(fromHour: number, untilHour: number, ...labels: readonly LabelAftercare[]) {
  const hour = (hours: number) => at("2026-05-01T00:00-05:00") + hours * 3_600_000;
  const planned = { fromEpochMilliseconds: hour(fromHour), untilEpochMilliseconds: hour(untilHour) };
  const application = { startsAtEpochMilliseconds: planned.fromEpochMilliseconds, endsAtEpochMilliseconds: planned.untilEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" } as const;
  return { planned, products: labels.map((label) => appliedOf(label, { application })) };
}

interface Visit extends ReturnType<typeof putDown> {
  readonly earlier?: readonly AppliedProduct[];
}

/** What is told beforehand of one row: when, and what. */
function told(row: "people-and-pets" | "watering" | "sign", { planned, products, earlier = [] }: Visit, change: Partial<AftercareQuestion> = {}) {
  const timeline = valueOf(aftercareTimeline(aftercareQuestion([...products, ...earlier], { visit: planned, stations: [], ...change })));
  return stepsBeforehand(timeline, { planned, products, timeZone: CHICAGO }).filter(({ step }) => step.row === row && !step.words.startsWith("Put the sign up"));
}
const whens = (...parameters: Parameters<typeof told>) => told(...parameters).map(({ when }) => when);
const whenWatered = (...parameters: Parameters<typeof told>) => told(...parameters).flatMap(({ step, when }) => (step.kind === "must" ? [when] : []));

const off = (name: string, untilLaterOf: Parameters<typeof says<"people-and-pets">>[1]["untilLaterOf"]) => labelOf(name, says("people-and-pets", { untilLaterOf }));
const HALF_A_DAY = off("Weedoff", [hoursAfterEnd(12)]);
const DAY_FOLLOWING = off("Fungone", [{ anchor: "calendar-day", days: 1 }]);
const inHours = (from: number, until: number, weekdays?: number[]) => ({ hours: { localRules: byLaw(daily(from, until, weekdays)), controller: "none" } }) as const;

describe("until when something is left", () => {
  test("a time that moves with the work and one of the calendar are both told, whichever decides as planned", () => {
    expect(whens("people-and-pets", putDown(9, 10, HALF_A_DAY, DAY_FOLLOWING))).toEqual(["Until Saturday, May 2, 2026, 12 am, and not before 12 hours after the work ends"]);
    expect(whens("people-and-pets", putDown(13, 14, HALF_A_DAY, DAY_FOLLOWING))).toEqual(["Until 12 hours after the work ends, about Saturday, May 2, 2026, 2 am as planned, and not before Saturday, May 2, 2026, 12 am"]);
  });
  test("so they are where one label names both, and a time that decides at no hour of the day is left out", () => {
    expect(whens("people-and-pets", putDown(9, 10, off("Both", [hoursAfterEnd(12), { anchor: "calendar-day", days: 1 }])))).toEqual(["Until Saturday, May 2, 2026, 12 am, and not before 12 hours after the work ends"]);
    expect(whens("people-and-pets", putDown(9, 10, off("Long", [hoursAfterEnd(48)]), HALF_A_DAY, DAY_FOLLOWING))).toEqual(["Until 48 hours after the work ends, about Sunday, May 3, 2026, 10 am as planned"]);
    expect(whens("people-and-pets", putDown(9, 10, off("Short", [{ anchor: "application-start", durationMinutes: 30 }]), DAY_FOLLOWING))).toEqual(["Until Saturday, May 2, 2026, 12 am"]);
  });
  test("what an earlier visit put down stands beside what moves", () => {
    const earlier = [earlierOf(off("Slowoff", [hoursAfterEnd(48)]), at("2026-04-30T03:00-05:00"))];
    expect(whens("people-and-pets", { ...putDown(15, 16, HALF_A_DAY), earlier })).toEqual(["Until 12 hours after the work ends, about Saturday, May 2, 2026, 4 am as planned, and not before Saturday, May 2, 2026, 3 am"]);
    expect(whens("people-and-pets", { ...putDown(12, 13, HALF_A_DAY), earlier })).toEqual(["Until Saturday, May 2, 2026, 3 am, and not before 12 hours after the work ends"]);
  });
  test("a state of the lawn keeps its stated time beside it, and further ones after it", () => {
    const both = off("Both", [untilState("watered-in"), { anchor: "calendar-day", days: 1 }, hoursAfterEnd(12)]);
    expect(whens("people-and-pets", putDown(9, 10, both))).toEqual(["Until watered in; no time can be given, and not before Saturday, May 2, 2026, 12 am, and not before 12 hours after the work ends"]);
    expect(whens("people-and-pets", putDown(13, 14, both))).toEqual(["Until watered in; no time can be given, and not before Saturday, May 2, 2026, 2 am (12 hours after the work ends, as planned), and not before Saturday, May 2, 2026, 12 am"]);
  });
  test("a sign that stands until people may come back moves with them, and a sunset does not", () => {
    const signed = (mayComeDown: Parameters<typeof says<"posting-sign">>[1]["mayComeDown"]) => says("posting-sign", { upBy: "at-start", mayComeDown });
    const reentry = labelOf("Signed", { ...signed({ trigger: "elapsed", anchor: "application-end", durationMinutes: 1440, orReentryIfLater: true }), ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] }) });
    expect(whens("sign", putDown(15, 16, reentry))).toEqual(["Until 48 hours after the work ends, about Sunday, May 3, 2026, 4 pm as planned"]);
    const sunset = labelOf("Sunset", signed({ trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: false }));
    const late = labelOf("Late", signed({ trigger: "elapsed", anchor: "application-end", durationMinutes: 1440, orReentryIfLater: false }));
    expect(whens("sign", putDown(20, 21, sunset, late))[0]).toMatch(/^Until 24 hours after the work ends, about Saturday, May 2, 2026, 9 pm as planned, and not before Saturday, May 2, 2026, 7:5\d pm$/u);
  });
});

describe("from when on a lawn is watered", () => {
  test("hours of the property stand, and what the work puts off stands beside them where it may be later", () => {
    expect(whenWatered("watering", putDown(15, 16, FEED, IRON), inHours(5, 9))).toEqual(["From Saturday, May 2, 2026, 5 am, and not before 12 hours after the work ends, by Saturday, May 2, 2026, 9 am, and within 24 hours after the work ends"]);
    expect(whenWatered("watering", putDown(15, 16, FEED), inHours(5, 9))).toEqual(["From Saturday, May 2, 2026, 5 am, by Saturday, May 2, 2026, 9 am, and within 24 hours after the work ends"]);
    expect(whenWatered("watering", putDown(15, 16, FEED), inHours(18, 22))).toEqual(["From Friday, May 1, 2026, 6 pm, and not before the end of the work, by Friday, May 1, 2026, 10 pm"]);
  });
  test("a beginning that the work sets keeps to the hours if the work is done sooner", () => {
    expect(whenWatered("watering", putDown(15, 16, FEED, IRON), inHours(3, 9))).toEqual([
      "From 12 hours after the work ends, about Saturday, May 2, 2026, 4 am as planned, within the watering hours (every day 3 am to 9 am), by Saturday, May 2, 2026, 9 am, and within 24 hours after the work ends",
    ]);
    expect(whenWatered("watering", putDown(15, 16, FEED), inHours(14, 22))[0]).toContain("From the end of the work, about Friday, May 1, 2026, 4 pm as planned, within the watering hours (every day 2 pm to 10 pm), by");
  });
  test("a date that moves with the work and falls inside the hours of the property does not hide where they end", () => {
    expect(whenWatered("watering", putDown(8, 9, FEED, IRON), inHours(4, 10))).toEqual([
      "From Saturday, May 2, 2026, 4 am, and not before 12 hours after the work ends, within the watering hours (every day 4 am to 10 am), within 24 hours after the work ends, by about Saturday, May 2, 2026, 9 am as planned",
    ]);
    expect(whenWatered("watering", putDown(8, 9, FEED), inHours(4, 10, [6]))).toEqual([
      "From Saturday, May 2, 2026, 4 am, within the watering hours (Saturday 4 am to 10 am), within 24 hours after the work ends, by about Saturday, May 2, 2026, 9 am as planned",
    ]);
  });
  test("hours stand beside fixed times too where later hours end with a date that moves, and once where no label sets a date", () => {
    const slow = labelOf("Slow", says("watering-in", { by: hoursAfterEnd(38), depth: "not-stated", rain: "counts" }));
    expect(whenWatered("watering", putDown(15, 16, slow), inHours(5, 9))).toEqual(["From Saturday, May 2, 2026, 5 am, within the watering hours (every day 5 am to 9 am), by Saturday, May 2, 2026, 9 am"]);
    const undated = labelOf("Undated", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "counts" }));
    expect(whenWatered("watering", putDown(15, 16, undated), inHours(14, 22))).toEqual([
      "From the end of the work, about Friday, May 1, 2026, 4 pm as planned, when it suits, within the watering hours (every day 2 pm to 10 pm); no date on the label",
    ]);
  });
  test("what an earlier visit put down keeps water off at its own time", () => {
    const earlier = [earlierOf(labelOf("Glaze", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(48)] })), at("2026-04-30T03:00-05:00"))];
    expect(whenWatered("watering", { ...putDown(15, 16, FEED, IRON), earlier })[0]).toContain("From 12 hours after the work ends, about Saturday, May 2, 2026, 4 am as planned, and not before Saturday, May 2, 2026, 3 am, within 24 hours");
    expect(whenWatered("watering", { ...putDown(12, 13, FEED, IRON), earlier })[0]).toContain("From Saturday, May 2, 2026, 3 am, and not before 12 hours after the work ends, within 24 hours");
  });
  test("an estimate stays one", () => {
    const dry = labelOf("Alpha", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(1), untilState("dry")] }));
    expect(whenWatered("watering", putDown(15, 16, FEED, dry))[0]).toContain("From about Friday, May 1, 2026, 6 pm, an estimate, and not before 1 hour after the work ends, within 24 hours");
  });
});

describe("by when it is watered", () => {
  const until = (...parameters: Parameters<typeof told>) => whenWatered(...parameters).map((when) => when.replace(/^.*?(?=, (?:by|within \d|as soon))/u, ""));
  test("hours that end before the label's time as planned do not hide it", () => {
    const afternoon = inHours(14, 15.5, [6]);
    expect(until("watering", putDown(15, 16, FEED), afternoon)).toEqual([", by Saturday, May 2, 2026, 3:30 pm, and within 24 hours after the work ends"]);
    const slow = labelOf("Slow", says("watering-in", { by: hoursAfterEnd(72), depth: "not-stated", rain: "counts" }));
    expect(until("watering", putDown(15, 16, slow), afternoon)).toEqual([", by Saturday, May 2, 2026, 3:30 pm"]);
  });
  test("dates of other labels, and of earlier visits, that may come first are told", () => {
    const dated = labelOf("Dated", says("watering-in", { by: END_OF_NEXT_DAY, depth: "not-stated", rain: "counts" }));
    const quick = labelOf("Quick", says("watering-in", { by: hoursAfterEnd(30), depth: "not-stated", rain: "counts" }));
    expect(until("watering", putDown(9, 10, dated, quick))).toEqual([", within 30 hours after the work ends, by about Saturday, May 2, 2026, 4 pm as planned, and by the end of Saturday, May 2, 2026"]);
    const earlier = [earlierOf(labelOf("Before", says("watering-in", { by: hoursAfterEnd(48), depth: "not-stated", rain: "counts" })), at("2026-04-30T18:00-05:00"))];
    expect(until("watering", { ...putDown(15, 16, FEED), earlier })).toEqual([", within 24 hours after the work ends, by about Saturday, May 2, 2026, 4 pm as planned, and by Saturday, May 2, 2026, 6 pm"]);
  });
  test("what other work wants beside water that has hours keeps its own beginning and date", () => {
    const thirsty = earlierOf(labelOf("Thirsty", says("watering-in", { by: hoursAfterEnd(48), depth: { least: of("in", "2"), most: "none" }, rain: "counts" })), at("2026-04-30T15:00-05:00"));
    expect(whenWatered("watering", { ...putDown(15, 16, FEED), earlier: [thirsty] }, { ...inHours(5, 6), stations: [FRONT] })).toEqual([
      "From the end of the work, about Friday, May 1, 2026, 4 pm as planned, as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 3 pm",
      "From Saturday, May 2, 2026, 5 am, by Saturday, May 2, 2026, 6 am, and within 24 hours after the work ends",
    ]);
  });
  test("water without hours is told with what its date counts from", () => {
    expect(whenWatered("watering", putDown(15, 16, FEED), inHours(0, 10, [4]))).toEqual([
      "From the end of the work, about Friday, May 1, 2026, 4 pm as planned, as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 4 pm, and within 24 hours after the work ends",
    ]);
    expect(whenWatered("watering", putDown(15, 16, FEED, labelOf("Dry", { "watering-not-before": "unknown" })))).toEqual([
      "From when the company says so, as soon as it may be; the label wants it by Saturday, May 2, 2026, 4 pm, and within 24 hours after the work ends",
    ]);
  });
});

describe("the words of a watering", () => {
  const rests = { stations: [{ stationName: "A", depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 15, soakMinutes: 20 } }, { stationName: "B", depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 15, soakMinutes: 20 } }] } as const;
  const words = (...parameters: Parameters<typeof told>) => told(...parameters).flatMap(({ step }) => (step.kind === "must" ? [step.words] : []));
  test("give no time of the clock that a later work would make wrong", () => {
    expect(words("watering", putDown(15, 16, FEED, IRON), { ...rests, ...inHours(3, 9) })[0]).toBe(
      "Water in with ¼ in. A: 15, then 15 min, with 20 min of rest between. B: 15, then 15 min, with 20 min of rest between. " +
        "One at a time, in minutes from the beginning: A at 0 and 35 min for 15 min each; B at 15 and 50 min for 15 min each. ¼ in of rain in that time does it too.",
    );
    expect(words("watering", putDown(15, 16, FEED), { ...rests, ...inHours(5, 9) })[0]).toContain(
      "One at a time, begun at 5 am: A at 5 am and 5:35 am for 15 min each; B at 5:15 am and 5:50 am for 15 min each. ¼ in of rain from the work until 24 hours after the work ends does it too.",
    );
  });
  test("say of rain and of later hours by which of several dates", () => {
    const dated = labelOf("Dated", says("watering-in", { by: END_OF_NEXT_DAY, depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
    const quick = labelOf("Quick", says("watering-in", { by: hoursAfterEnd(30), depth: "not-stated", rain: "counts" }));
    expect(words("watering", putDown(9, 10, dated, quick), inHours(5, 8))[0]).toContain("¼ in of rain from the work until 30 hours after the work ends and the end of Saturday, May 2, 2026, whichever is first does it too.");
    const slow = labelOf("Slow", says("watering-in", { by: hoursAfterEnd(72), depth: "not-stated", rain: "counts" }));
    expect(words("watering", putDown(15, 16, slow), inHours(5, 9))[0]).toContain("Later watering hours do as well, until Monday, May 4, 2026, 9 am, and within 72 hours after the work ends.");
  });
  test("say of later hours that end with a date which moves with the work what that counts from", () => {
    const slow = labelOf("Slow", says("watering-in", { by: hoursAfterEnd(72), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
    expect(words("watering", putDown(15, 16, slow), inHours(4, 18))[0]).toMatch(/ Later watering hours do as well, until 72 hours after the work ends\.$/u);
  });
});
