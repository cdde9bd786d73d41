import { describe, expect, test } from "vitest";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { judgeWatering } from "#domain/mixing/watering-window";
import { of } from "#domain/quantities/quantity";
import { refusalOf, valueOf } from "../../support/domain-answers";
import {
  aftercareQuestion, appliedOf, at, byHouse, byLaw, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, says, START, untilState,
} from "../../support/aftercare-builders";

const judge = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) => valueOf(judgeWatering(aftercareQuestion(products, change)));
const windowsOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) => {
  const { answer } = judge(products, change);
  return answer.kind === "window" ? answer.windows.map((one) => [one.fromEpochMilliseconds, one.untilEpochMilliseconds]) : answer.kind;
};
const rulesOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) =>
  judge(products, change).findings.map((finding) => `${finding.level} ${finding.rule}`);
const morning = (from: string, until: string) => [at(`2026-05-02T${from}-05:00`), at(`2026-05-02T${until}-05:00`)];
const both = [appliedOf(IRON), appliedOf(FEED)];

describe("iron overnight and feed the next morning", () => {
  test("meet between the end of the dry time and the feed's date", () => expect(windowsOf(both)).toEqual([[END + 12 * HOUR, END + 24 * HOUR]]));
  test("within permitted hours and the controller's", () => {
    const hours = { localRules: byLaw([...daily(5, 9), ...daily(19, 22)]), controller: byHouse(daily(0, 8)) };
    expect(windowsOf(both, { hours })).toEqual([morning("05:00", "08:00")]);
  });
  test("a stretch too short for the stations one after another is none", () => {
    const hours = { localRules: byLaw([...daily(5, 6), ...daily(10, 14)]), controller: "none" } as const;
    const stations = [FRONT, { ...FRONT, stationName: "Back", depthPerHour: of("in", "0.3") }];
    expect(windowsOf(both, { hours, stations })).toEqual([morning("10:00", "14:00")]);
    expect(judge(both, { hours, stations }).answer).toMatchObject({ elapsedMinutes: 70, depthWords: "¼ in", rain: "counts" });
  });
});

describe("no window", () => {
  test("the labels leave no time", () => {
    const quick = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(12), depth: "not-stated", rain: "counts" }));
    expect(windowsOf([appliedOf(IRON), appliedOf(quick)])).toBe("no-window");
    expect(rulesOf([appliedOf(IRON), appliedOf(quick)])).toEqual(["hold no-common-watering-time"]);
  });
  test.each([
    ["evenings only", { localRules: byLaw(daily(19, 22)), controller: "none" }],
    ["the controller waters on Tuesdays", { localRules: "none", controller: byHouse(daily(0, 24, [2])) }],
    ["too short for 20 min", { localRules: byLaw([{ weekday: 6, fromMinuteOfDay: 300, untilMinuteOfDay: 319 }]), controller: "none" }],
  ] as const)("the hours leave no time: %s", (_name, hours) => {
    expect(windowsOf(both, { hours })).toBe("no-window");
    expect(rulesOf(both, { hours })).toEqual(["hold watering-hours-leave-no-time"]);
  });
  test("the labels leave less than the stations need", () => {
    const stations = [{ ...FRONT, depthPerHour: of("in", "0.02") }];
    expect(rulesOf(both, { stations })).toEqual(["hold watering-time-too-short"]);
  });
  test("the visit is longer than a product can wait", () => {
    const application = { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: START + HOUR / 4, postedAtEpochMilliseconds: "not-posted" } as const;
    const quick = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(0), depth: "not-stated", rain: "counts" }));
    const { findings } = judge([appliedOf(quick, { application }), appliedOf(labelOf("Alpha"))]);
    expect(findings).toMatchObject([{ rule: "no-common-watering-time", about: ["Grubclear"], toDo: "Put it down last, or split the visit." }]);
  });
  test("depths that do not meet", () => {
    const cap = labelOf("Grubclear", says("watering-in", { by: "not-stated", depth: { least: of("in", "0.05"), most: of("in", "0.1") }, rain: "counts" }));
    expect(rulesOf([appliedOf(FEED), appliedOf(cap)])).toEqual(["hold no-common-watering-depth"]);
  });
});

describe("undecided", () => {
  test.each([
    ["unread: dry time", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "watering-not-before": "unknown" }))], {}, []],
    ["unread: watering in", [appliedOf(FEED), appliedOf(labelOf("Alpha", { "watering-in": "unknown" }))], {}, []],
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
  test("hours that nobody knows do not matter where nothing is watered in", () => {
    expect(windowsOf([appliedOf(IRON)], { hours: { localRules: "unknown", controller: "unknown" } })).toBe("none-needed");
  });
});

describe("the zone's history", () => {
  test("an earlier iron that still runs moves the window", () => {
    expect(windowsOf([earlierOf(IRON, START - HOUR), appliedOf(FEED)])).toEqual([[START + 11 * HOUR, END + 24 * HOUR]]);
  });
  test("an earlier feed that still waits for water brings its own date", () => {
    expect(windowsOf([earlierOf(FEED, START - 6 * HOUR), appliedOf(IRON)])).toEqual([[END + 12 * HOUR, START + 18 * HOUR]]);
    expect(rulesOf([earlierOf(FEED, START - 12 * HOUR), appliedOf(IRON)])).toEqual(["hold no-common-watering-time"]);
  });
  test("one that is overdue is said, and watered as soon as may be", () => {
    expect(rulesOf([earlierOf(FEED, START - 48 * HOUR), appliedOf(IRON)])).toEqual(["take-care watering-in-overdue"]);
    expect(windowsOf([earlierOf(FEED, START - 48 * HOUR), appliedOf(IRON)])).toEqual([[END + 12 * HOUR, at("2026-05-16T00:00-05:00")]]);
  });
  test("what was watered in asks for nothing", () => {
    expect(windowsOf([earlierOf(FEED, START - 6 * HOUR, { wateredInAtEpochMilliseconds: START - HOUR })])).toBe("none-needed");
  });
});

describe("what is said of the window", () => {
  const stating = (rain: "counts" | "does-not-count" | "not-stated") =>
    appliedOf(labelOf(`R ${rain}`, says("watering-in", { by: "not-stated", depth: "not-stated", rain })));
  test.each([
    ["counts for all", [stating("counts")], "counts"],
    ["one says no", [stating("counts"), stating("does-not-count"), stating("not-stated")], "does-not-count"],
    ["one says nothing", [stating("counts"), stating("not-stated")], "not-stated"],
  ])("rain: %s", (_name, products, rain) => expect(judge(products).answer).toMatchObject({ rain, depthWords: null, stations: [], elapsedMinutes: null }));
  test("a start that waits for a lawn to dry is an estimate", () => {
    const drying = appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [untilState("dry")] })));
    expect(judge([drying, appliedOf(FEED)]).answer).toMatchObject({ isEstimate: true });
    expect(judge(both).answer).toMatchObject({ isEstimate: false });
  });
  test("one station without a test gives no total, and its depth only", () => {
    const { answer } = judge(both, { stations: [FRONT, { stationName: "Back", depthPerHour: "not-tested", cycle: "none" }] });
    expect(answer).toMatchObject({ elapsedMinutes: null, stations: [{ kind: "run", totalMinutes: 20 }, { kind: "test-first", stationName: "Back" }] });
  });
  test("no stations at all: any sprinkler, tested first", () => {
    expect(judge(both, { stations: [] }).answer).toMatchObject({ stations: [{ kind: "test-first", stationName: "Sprinkler or hose" }] });
  });
  test("an impossible station is refused", () => {
    const stations = [{ ...FRONT, depthPerHour: of("in", "0") }];
    expect(refusalOf(judgeWatering(aftercareQuestion(both, { stations }))).field).toBe("Front depthPerHour");
  });
});
