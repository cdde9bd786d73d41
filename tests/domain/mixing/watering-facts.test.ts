import { describe, expect, test } from "vitest";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { judgeWatering } from "#domain/mixing/watering-window";
import { valueOf } from "../../support/domain-answers";
import { aftercareQuestion, appliedOf, earlierOf, FEED, HOUR, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";

const judge = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) => valueOf(judgeWatering(aftercareQuestion(products, change)));
const windowsOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) => {
  const { answer } = judge(products, change);
  return answer.kind === "window" ? answer.windows.map((one) => [one.fromEpochMilliseconds, one.untilEpochMilliseconds]) : answer.kind;
};
const rulesOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) =>
  judge(products, change).findings.map((finding) => `${finding.level} ${finding.rule}`);
const both = [appliedOf(IRON), appliedOf(FEED)];

describe("undecided", () => {
  test.each([
    ["unread: dry time", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "watering-not-before": "unknown" }))], {}, []],
    ["unread: watering in", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "watering-in": "unknown" }))], {}, []],
    ["unread: rain that spoils, where anything wants water", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "rain-that-spoils": "unknown" }))], {}, []],
    ["hours", both, { hours: { localRules: "unknown", controller: "none" } }, ["hold watering-hours-missing"]],
    ["whether an earlier feed was watered in", [earlierOf(FEED, START - HOUR, { wateredInAtEpochMilliseconds: "unknown" })], {}, ["hold watered-in-not-known"]],
    [
      "when it is dry",
      [appliedOf(FEED), appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [untilState("dry")] })))],
      { estimates: { untilDry: "unknown", untilDustSettled: "unknown", untilDryAfterWatering: "unknown" } },
      ["hold drying-estimate-missing"],
    ],
  ] as const)("%s", (_name, products, change, rules) => {
    expect(windowsOf(products, change)).toBe("undecided");
    expect(rulesOf(products, change)).toEqual(rules);
  });
  test("rain that nobody has read up on does not matter where nothing is watered in", () => {
    expect(windowsOf([appliedOf(labelOf("Alpha", { "rain-that-spoils": "unknown" }))])).toBe("none-needed");
  });
  test("hours that nobody knows do not matter where nothing is watered in", () => {
    expect(windowsOf([appliedOf(IRON)], { hours: { localRules: "unknown", controller: "unknown" } })).toBe("none-needed");
  });
});
