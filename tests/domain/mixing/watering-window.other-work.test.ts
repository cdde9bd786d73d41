import { describe, expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import {
  appliedOf, byHouse, byLaw, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, says, START,
} from "../../support/aftercare-builders";
import { judge, morning, rulesOf, windowsOf } from "../../support/judged-watering";

describe("what other work has at odds by itself", () => {
  const plain = appliedOf(labelOf("Plain"));
  const weedoff = earlierOf(labelOf("Weedoff 3", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(30)] })), START - 20 * HOUR);
  const feed = earlierOf(FEED, START - 20 * HOUR);
  const dryUntil = START + 10 * HOUR;
  test("holds up nothing of a visit that has no part in it: what is late waits for the first water that may run", () => {
    const { answer, findings, lostToOthers } = judge([plain, weedoff, feed]);
    expect(findings.map(({ level, rule }) => `${level} ${rule}`)).toEqual(["take-care no-common-watering-time"]);
    expect(answer).toMatchObject({ kind: "window", isOverdue: true, dueAtEpochMilliseconds: null, windows: [{ fromEpochMilliseconds: dryUntil }] });
    expect(lostToOthers).toEqual([{ applied: feed, of: "date" }]);
  });
  test("leaves this visit's own date as it is", () => {
    expect(windowsOf([appliedOf(FEED), weedoff, feed])).toEqual([[dryUntil, END + 24 * HOUR]]);
    const quick = appliedOf(labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(2), depth: "not-stated", rain: "counts" })));
    expect(rulesOf([quick, weedoff, feed])).toEqual(["take-care no-common-watering-time", "hold no-common-watering-time"]);
    expect(judge([quick, weedoff, feed]).findings.at(-1)).toMatchObject({ about: ["Weedoff 3", "Grubclear"] });
  });
  test("hours that leave it no time", () => {
    const hours = { localRules: "none", controller: byHouse(daily(5, 8)) } as const;
    expect(rulesOf([plain, feed], { hours })).toEqual(["take-care watering-hours-leave-no-time"]);
    expect(windowsOf([plain, feed], { hours })).toHaveLength(28);
    expect(rulesOf([appliedOf(IRON), feed], { hours })).toEqual(["take-care watering-hours-leave-no-time"]);
    // In hours in which it could still have been watered in, it is this visit's product that is in the way.
    expect(rulesOf([appliedOf(IRON), feed], { hours: { localRules: "none", controller: byHouse(daily(17, 19)) } })).toEqual(["hold no-common-watering-time"]);
  });
  test("hours that never do: no water is planned for it, and this visit's is not held up", () => {
    const hours = { localRules: byLaw(daily(5, 6)), controller: "none" } as const;
    const stations = [{ ...FRONT, depthPerHour: of("in", "0.1") }];
    const { answer, lostToOthers, findings } = judge([plain, feed], { hours, stations });
    expect(answer).toEqual({ kind: "no-window" });
    expect(findings.map(({ level, rule }) => `${level} ${rule}`)).toEqual(["take-care watering-hours-leave-no-time"]);
    expect(lostToOthers.map(({ of: what }) => what)).toEqual(["water"]);
    const undepth = appliedOf(labelOf("Light", says("watering-in", { by: hoursAfterEnd(24), depth: "not-stated", rain: "counts" })));
    expect(windowsOf([undepth, feed], { hours, stations })).toEqual([morning("05:00", "06:00")]);
  });
  test("depths that do not meet: the thirstier waits, and this visit's goes with the other", () => {
    const capped = earlierOf(labelOf("Capped", says("watering-in", { by: hoursAfterEnd(48), depth: { least: of("in", "0.05"), most: of("in", "0.1") }, rain: "counts" })), START - HOUR);
    expect(rulesOf([plain, capped, feed])).toEqual(["take-care no-common-watering-depth"]);
    expect(judge([plain, capped, feed]).answer).toMatchObject({ kind: "window", depthWords: "0.05 in" });
    expect(rulesOf([appliedOf(FEED), capped])).toEqual(["hold no-common-watering-depth"]);
  });
  test("water that only a product of this visit wants in such an amount that it spoils what is down holds, and nothing is lost silently", () => {
    const grub = appliedOf(labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(24), depth: { least: of("in", "0.5"), most: "none" }, rain: "counts" })));
    const light = says("watering-in", { by: hoursAfterEnd(24), depth: { least: of("in", "0.1"), most: "none" }, rain: "counts" });
    const down = earlierOf(labelOf("Weedoff", { ...light, ...says("rain-that-spoils", { within: hoursAfterEnd(24), from: of("in", "0.2") }) }), END - 3 * HOUR);
    expect(windowsOf([plain, down])).toEqual([[END, END + 21 * HOUR]]);
    expect(judge([grub, down]).findings).toMatchObject([{ level: "hold", rule: "no-common-watering-time", answerableBy: "nobody", about: ["Grubclear", "Weedoff"], toDo: expect.stringContaining("Have Weedoff (put down Friday, May 1, 2026) watered in before this visit") as string }]);
    expect(judge([plain, { ...grub, appliedIn: "earlier-visit" }, down])).toMatchObject({
      answer: { kind: "window", depthWords: "0.1 in" },
      findings: [{ level: "take-care", rule: "no-common-watering-time", about: ["Grubclear"] }],
      lostToOthers: [{ applied: { label: { productName: "Grubclear" } }, of: "water" }],
    });
  });
  test("hours too short for the thirstiest alone: that is let go, and the other gets its own water in time", () => {
    const preem = earlierOf(labelOf("Preem", says("watering-in", { by: hoursAfterEnd(336), depth: { least: of("in", "0.5"), most: "none" }, rain: "counts" })), START - 24 * HOUR);
    const fed = earlierOf(FEED, END - 2 * HOUR);
    const change = { hours: { localRules: byLaw(daily(5, 6)), controller: "none" }, stations: [{ ...FRONT, depthPerHour: of("in", "0.4") }] } as const;
    const { answer, findings, lostToOthers } = judge([plain, preem, fed], change);
    expect(answer).toMatchObject({ kind: "window", depthWords: "¼ in", elapsedMinutes: 38, isOverdue: false, dueAtEpochMilliseconds: END + 22 * HOUR });
    expect(lostToOthers).toEqual([{ applied: preem, of: "water" }]);
    expect(findings).toMatchObject([{ level: "take-care", rule: "watering-hours-leave-no-time", about: ["Preem"], what: expect.stringContaining("Enough water for Preem") as string, figure: expect.stringContaining("75 min") as string }]);
  });
  test("nothing is watered in before work that crosses the visit is over", () => {
    const crossing = earlierOf(labelOf("Cross"), END + HOUR / 2, { application: { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END + HOUR / 2, postedAtEpochMilliseconds: "not-posted" } });
    expect(windowsOf([appliedOf(FEED), crossing])).toEqual([[END + HOUR / 2, END + 24 * HOUR]]);
  });
});
