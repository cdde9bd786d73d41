import { expect, test } from "vitest";
import { type DueReach, type LabelAftercare } from "#domain/label/aftercare-constraint";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { aftercareAsDone, plannedAftercare } from "#domain/papers/notice-aftercare";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byLaw, CHICAGO, daily, earlierOf, END, FEED, hoursAfterEnd, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

const WORK = { fromEpochMilliseconds: START, untilEpochMilliseconds: END };

function groupOf(products: readonly AppliedProduct[], lawnNames = ["Front"]): AftercareOfLawns {
  return { lawnNames, timeline: valueOf(aftercareTimeline(aftercareQuestion(products, { stations: [] }))) };
}

const planned = (...products: readonly AppliedProduct[]) => plannedAftercare([groupOf(products)], WORK, products, CHICAGO).groups[0]?.steps ?? [];
const done = (...products: readonly AppliedProduct[]) => aftercareAsDone([groupOf(products)], WORK, CHICAGO).groups[0]?.steps ?? [];
const asks = (facts: Partial<LabelAftercare["facts"]>) => appliedOf(labelOf("Evenfeed 18", facts));

test("what its times are counted from stands above them: the plan, or the work as it was done", () => {
  expect(plannedAftercare([], WORK, [], CHICAGO).countedFrom).toBe("Times are as planned, for work on Friday, May 1, 2026, 3:00 pm to 4:00 pm. They move with the work.");
  expect(aftercareAsDone([], WORK, CHICAGO).countedFrom).toBe("Times count from the work as it was done on Friday, May 1, 2026, 3:00 pm to 4:00 pm.");
});

test("a time that hangs on the end of the work says so beforehand, with the time that the plan gives; afterwards it is that time", () => {
  const off = asks(says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] }));
  expect(planned(off).map(({ when, what }) => [when, what])).toEqual([["Until 4 hours after the work ends, about Friday, May 1, 2026, 8 pm as planned", "Keep people and pets off the lawn."]]);
  expect(done(off).map(({ when }) => when)).toEqual(["Until Friday, May 1, 2026, 8 pm"]);
});

test("an estimate is marked as one, a date of the calendar stands alone, and what can't be given says so", () => {
  const whensOf = (untilLaterOf: Parameters<typeof says<"people-and-pets">>[1]["untilLaterOf"]) => planned(asks(says("people-and-pets", { untilLaterOf }))).map(({ when }) => when);
  expect(whensOf([untilState("dry")])).toEqual(["Until about Friday, May 1, 2026, 6 pm, an estimate"]);
  expect(whensOf([hoursAfterEnd(4), untilState("dry")])).toEqual(["Until 4 hours after the work ends, about Friday, May 1, 2026, 8 pm as planned"]);
  expect(whensOf([hoursAfterEnd(1), untilState("dry")])).toEqual(["Until about Friday, May 1, 2026, 6 pm, an estimate, and not before Friday, May 1, 2026, 5 pm (1 hour after the work ends, as planned)"]);
  expect(whensOf([hoursAfterEnd(72), untilState("watered-in")])).toEqual(["Until watered in; no time can be given, and not before Monday, May 4, 2026, 4 pm (72 hours after the work ends, as planned)"]);
  expect(whensOf([{ anchor: "calendar-day", days: 1 }])).toEqual(["Until Saturday, May 2, 2026, 12 am"]);
  expect(whensOf([untilState("watered-in")])).toEqual(["Until watered in; no time can be given"]);
});

test("what waits for a state of the lawn beside a stated time says that both must be over", () => {
  const off = asks(says("people-and-pets", { untilLaterOf: [hoursAfterEnd(72), untilState("watered-in")] }));
  expect(done(off).map(({ when, what }) => [when, what])).toEqual([
    ["Until watered in; no time can be given, and not before Monday, May 4, 2026, 4 pm", "Keep people and pets off the lawn until watered in, and not before the time given."],
  ]);
});

test("water has a beginning and a date, both as planned where they hang on the work", () => {
  const water = ({ when, what }: { readonly when: string; readonly what: string }) => (what.startsWith("Water in") ? [when] : []);
  expect(planned(appliedOf(FEED)).flatMap(water)).toEqual([
    "From the end of the work, about Friday, May 1, 2026, 4 pm as planned, within 24 hours after the work ends, by about Saturday, May 2, 2026, 4 pm as planned",
  ]);
  expect(planned(appliedOf(FEED), appliedOf(IRON)).flatMap(water)).toEqual([
    "From 12 hours after the work ends, about Saturday, May 2, 2026, 4 am as planned, within 24 hours after the work ends, by about Saturday, May 2, 2026, 4 pm as planned",
  ]);
  expect(done(appliedOf(FEED), appliedOf(IRON)).flatMap(water)).toEqual(["From Saturday, May 2, 2026, 4 am, by Saturday, May 2, 2026, 4 pm"]);
  const undated = asks(says("watering-in", { by: "not-stated", depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
  expect(planned(undated).flatMap(water)).toEqual(["From the end of the work, about Friday, May 1, 2026, 4 pm as planned, when it suits; no date on the label"]);
  expect(done(undated).flatMap(water)).toEqual(["From Friday, May 1, 2026, 4 pm, when it suits; no date on the label"]);
  const by: DueReach = { anchor: "calendar-day", days: 1 };
  const onADate = asks(says("watering-in", { by, depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
  expect(planned(onADate).flatMap(water)).toEqual(["From the end of the work, about Friday, May 1, 2026, 4 pm as planned, by the end of Saturday, May 2, 2026"]);
});

test("water that watering hours begin later than the work sets says what it must not come before", () => {
  const inHours = (products: readonly AppliedProduct[], fromHour: number) => {
    const hours = { localRules: byLaw(daily(fromHour, 8)), controller: "none" } as const;
    const timeline = valueOf(aftercareTimeline(aftercareQuestion(products, { stations: [], hours })));
    const steps = plannedAftercare([{ lawnNames: ["Front"], timeline }], WORK, products, CHICAGO).groups[0]?.steps ?? [];
    return steps.flatMap(({ when, what }) => (what.startsWith("Water in") ? [when.split(/, within|, by/u)[0]] : []));
  };
  expect(inHours([appliedOf(FEED), appliedOf(IRON)], 5)).toEqual(["From Saturday, May 2, 2026, 5 am, and not before 12 hours after the work ends"]);
  expect(inHours([appliedOf(FEED), appliedOf(IRON)], 4)).toEqual(["From 12 hours after the work ends, about Saturday, May 2, 2026, 4 am as planned"]);
  expect(inHours([appliedOf(FEED)], 5)).toEqual(["From Saturday, May 2, 2026, 5 am"]);
});

test("water for which no time was found is told, planned and as done, with the words of its label", () => {
  const hours = { localRules: byLaw(daily(0, 10, [4])), controller: "none" } as const;
  const timeline = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED)], { stations: [], hours })));
  const group = { lawnNames: ["Front"], timeline };
  const water = ({ steps }: { readonly steps: readonly { readonly when: string; readonly what: string; readonly why: readonly unknown[] }[] }) => steps.filter(({ what }) => what.startsWith("Water in"));
  const what = "Water in with ¼ in. No time was found that keeps to the labels, the watering hours and what the stations need.";
  const why = [{ asks: "Evenfeed 18", words: ["words on watering-in"] }];
  expect(plannedAftercare([group], WORK, [appliedOf(FEED)], CHICAGO).groups.flatMap(water)).toEqual([
    { when: "From the end of the work, about Friday, May 1, 2026, 4 pm as planned, as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 4 pm, and within 24 hours after the work ends", what, why },
  ]);
  expect(aftercareAsDone([group], WORK, CHICAGO).groups.flatMap(water)).toEqual([
    { when: "From Friday, May 1, 2026, 4 pm, as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 4 pm", what, why },
  ]);
});

test("each step says who asks for it, in the label's words; a law by its own name", () => {
  const law = { basis: "law", source: "Posting rule 7" } as const;
  const signed = asks(says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "day-following", daysFollowing: 1, orReentryIfLater: false }, labelWords: "the day following" }, law));
  expect(planned(signed)).toEqual([{ when: "Until Saturday, May 2, 2026, 12 am", what: "Leave the sign up.", why: [{ asks: "Posting rule 7", words: ["the day following"] }] }]);
  expect(planned(appliedOf(FEED), appliedOf(IRON)).map(({ what, why }) => [what, why.map(({ asks: who }) => who)])[0]).toEqual(["Keep people and pets off the lawn until watered in and dry.", ["Evenfeed 18", "Ferrox Foliar"]]);
  expect(planned(asks({ "people-and-pets": "unknown" }))[0]?.why).toEqual([{ asks: "Evenfeed 18", words: [] }]);
});

test("what the crew does itself is left out: nobody tells a customer to put the sign up", () => {
  const { timeline } = groupOf([asks(says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "no-time-required" } }))]);
  expect(timeline.steps.map(({ words }) => words)).toEqual(["Put the sign up at the start of the application."]);
  expect(aftercareAsDone([{ lawnNames: ["Front"], timeline }], WORK, CHICAGO).groups).toEqual([{ lawns: "Front", steps: [] }]);
});

test("what an earlier visit put down stands in its place among the others, with its day", () => {
  const earlier = earlierOf(labelOf("Slowdry", says("mowing-after", { untilLaterOf: [hoursAfterEnd(72)] })), START - 86_400_000);
  const steps = planned(asks(says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] })), earlier);
  expect(steps.map(({ when, what, why }) => [when, what, why[0]?.asks])).toEqual([
    ["Until 4 hours after the work ends, about Friday, May 1, 2026, 8 pm as planned", "Keep people and pets off the lawn.", "Evenfeed 18"],
    ["Until Sunday, May 3, 2026, 3 pm", "Do not mow.", "Slowdry (put down Thursday, Apr 30, 2026)"],
  ]);
});

test("what begins later than the work says from when", () => {
  const group = groupOf([asks(says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] }))]);
  const later = { ...group, timeline: { ...group.timeline, steps: group.timeline.steps.map((step) => ({ ...step, startsAtEpochMilliseconds: END + 60_000, startsAtWords: "Friday, 4:01 pm" })) } };
  expect(aftercareAsDone([later], WORK, CHICAGO).groups[0]?.steps[0]?.when).toBe("From Friday, 4:01 pm until Friday, May 1, 2026, 8 pm");
  expect(plannedAftercare([later], WORK, [], CHICAGO).groups[0]?.steps[0]?.when).toBe("From Friday, 4:01 pm until Friday, May 1, 2026, 8 pm");
});

test("each group of lawns is named", () => {
  const groups = [groupOf([appliedOf(IRON)], ["Front", "Side"]), groupOf([appliedOf(FEED)], ["Back"])];
  expect(aftercareAsDone(groups, WORK, CHICAGO).groups.map(({ lawns }) => lawns)).toEqual(["Front and Side", "Back"]);
});

test("what leaf and soil must be is the crew's to mind, and is told apart once", () => {
  const groups = [groupOf([appliedOf(IRON)], ["Front"]), groupOf([appliedOf(IRON), appliedOf(FEED)], ["Back"])];
  expect(aftercareAsDone(groups, WORK, CHICAGO).mindedByCrew).toEqual([{ asks: "Ferrox Foliar", words: ["words on leaf-at-application"] }]);
  expect(plannedAftercare(groups.slice(1), WORK, [], CHICAGO).mindedByCrew).toHaveLength(1);
});
