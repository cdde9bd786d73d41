import { expect, test } from "vitest";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { aftercareQuestion, appliedOf, earlierOf, FEED, HOUR, hoursAfterEnd, IRON, labelOf, onLabel, says, START, untilState } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

const WEEDAWAY = labelOf("Weedaway", says("people-and-pets", { untilLaterOf: [hoursAfterEnd(24)], labelWords: "Keep people and pets off for 24 hours." }));
const found = (...products: readonly AppliedProduct[]) =>
  valueOf(aftercareTimeline(aftercareQuestion([appliedOf(IRON), ...products]))).findings.filter(({ rule }) => rule.startsWith("crew-while"));

test("a known end after the crew comes holds, says when to come, and by whose words", () => {
  expect(found(earlierOf(WEEDAWAY, START - 23 * HOUR))).toEqual([
    {
      level: "hold",
      answerableBy: "office",
      rule: "crew-while-people-stay-off",
      source: "label",
      what: "Weedaway (put down Thursday, Apr 30, 2026) still keeps people off the lawn as the crew comes.",
      figure: `"Keep people and pets off for 24 hours." Until Friday, May 1, 2026, 4 pm.`,
      toDo: "Come after Friday, May 1, 2026, 4 pm.",
      citation: onLabel.source,
      about: ["Weedaway"],
    },
  ]);
});

test("an end at the minute of the visit's start is over, a minute later it is not", () => {
  expect(found(earlierOf(WEEDAWAY, START - 24 * HOUR))).toEqual([]);
  expect(found(earlierOf(WEEDAWAY, START - 24 * HOUR + 60_000))).toHaveLength(1);
});

test("an estimate wants the crew to look, and is over when it is", () => {
  expect(found(earlierOf(IRON, START - HOUR))).toMatchObject([
    { level: "take-care", rule: "crew-while-people-may-stay-off", what: "Ferrox Foliar (put down Friday, May 1, 2026) may still keep people off the lawn as the crew comes.", figure: `"Keep off until dry." Until about Friday, May 1, 2026, 4 pm, an estimate.`, toDo: "Look before anybody walks on it; where it is not so, come another time." },
  ]);
  expect(found(earlierOf(IRON, START - 2 * HOUR))).toEqual([]);
});

test("what still waits for water that nobody told of wants the crew to look; told of and dry, nothing is said", () => {
  const yesterday = START - 20 * HOUR;
  expect(found(earlierOf(FEED, yesterday))).toMatchObject([{ level: "take-care", about: ["Evenfeed 18"] }]);
  expect(found(earlierOf(FEED, yesterday, { wateredInAtEpochMilliseconds: START - 10 * HOUR }))).toEqual([]);
});

test("an end that nobody can give says what it waits for", () => {
  const question = aftercareQuestion([appliedOf(IRON), earlierOf(FEED, START - 20 * HOUR, { wateredInAtEpochMilliseconds: "unknown" })]);
  const { findings } = valueOf(aftercareTimeline(question));
  expect(findings.filter(({ rule }) => rule.startsWith("crew-while"))).toMatchObject([{ level: "take-care", figure: `"words on people-and-pets" Waits for: watered in and dry; no time can be given.` }]);
});

test("a stated time holds beside a state of the lawn, as long as it runs", () => {
  const both = labelOf("Weedaway", says("people-and-pets", { untilLaterOf: [hoursAfterEnd(1), untilState("dry")], labelWords: "Keep off for 1 hour and until dry." }));
  expect(found(earlierOf(both, START - HOUR + 60_000))).toMatchObject([{ level: "hold", toDo: "Come after Friday, May 1, 2026, 3:01 pm." }]);
  expect(found(earlierOf(both, START - HOUR))).toMatchObject([{ level: "take-care" }]);
});

test("what goes down by other work while the crew is there keeps it off as well, and is not said to have been there before", () => {
  const crossing = { application: { startsAtEpochMilliseconds: START + 1, endsAtEpochMilliseconds: START + HOUR, postedAtEpochMilliseconds: "not-posted" } } as const;
  expect(found(earlierOf(WEEDAWAY, START, crossing))).toMatchObject([
    { level: "hold", what: "Weedaway (put down Friday, May 1, 2026) keeps people off the lawn, and goes down while the crew is there.", toDo: "Come after Saturday, May 2, 2026, 4 pm." },
  ]);
  expect(found(earlierOf(IRON, START, crossing))).toMatchObject([{ level: "take-care", what: "Ferrox Foliar (put down Friday, May 1, 2026) may keep people off the lawn, and goes down while the crew is there." }]);
});

test("what the visit itself puts down keeps nobody of its own crew off", () => expect(found(appliedOf(WEEDAWAY))).toEqual([]));
