import { describe, expect, test } from "vitest";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { judgeWatering } from "#domain/mixing/watering-window";
import { of } from "#domain/quantities/quantity";
import { refusalOf } from "../../support/domain-answers";
import {
  aftercareQuestion, appliedOf, at, byHouse, byLaw, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, says, START, untilState,
} from "../../support/aftercare-builders";
import { IRON_AND_FEED, judge, morning, rulesOf, windowsOf } from "../../support/judged-watering";

describe("iron overnight and feed the next morning", () => {
  test("meet between the end of the dry time and the feed's date", () => expect(windowsOf(IRON_AND_FEED)).toEqual([[END + 12 * HOUR, END + 24 * HOUR]]));
  test("within permitted hours and the controller's", () => {
    const hours = { localRules: byLaw([...daily(5, 9), ...daily(19, 22)]), controller: byHouse(daily(0, 8)) };
    expect(windowsOf(IRON_AND_FEED, { hours })).toEqual([morning("05:00", "08:00")]);
  });
  test("a stretch too short for the stations one after another is none", () => {
    const hours = { localRules: byLaw([...daily(5, 6), ...daily(10, 14)]), controller: "none" } as const;
    const stations = [FRONT, { ...FRONT, stationName: "Back", depthPerHour: of("in", "0.3") }];
    expect(windowsOf(IRON_AND_FEED, { hours, stations })).toEqual([morning("10:00", "14:00")]);
    expect(judge(IRON_AND_FEED, { hours, stations }).answer).toMatchObject({ elapsedMinutes: 70, depthWords: "¼ in", rain: "counts" });
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
    expect(windowsOf(IRON_AND_FEED, { hours })).toBe("no-window");
    expect(rulesOf(IRON_AND_FEED, { hours })).toEqual(["hold watering-hours-leave-no-time"]);
  });
  test("the labels leave less than the stations need", () => {
    const stations = [{ ...FRONT, depthPerHour: of("in", "0.02") }];
    expect(rulesOf(IRON_AND_FEED, { stations })).toEqual(["hold watering-time-too-short"]);
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

describe("to the very minute", () => {
  const afterEnd = (durationMinutes: number) => ({ anchor: "application-end", durationMinutes }) as const;
  const within = (minutes: number) => appliedOf(labelOf("Quick", says("watering-in", { by: afterEnd(minutes), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" })));
  const law = (...hours: readonly (readonly [number, number])[]) => ({ periods: hours.map(([fromMinuteOfDay, untilMinuteOfDay]) => ({ weekday: 6, fromMinuteOfDay, untilMinuteOfDay })), basis: "law", source: "town watering rule" }) as const;
  test("hours of just the run's length are enough", () => {
    expect(windowsOf(IRON_AND_FEED, { hours: { localRules: law([300, 320]), controller: "none" } })).toEqual([morning("05:00", "05:20")]);
  });
  test("a due time just after the run is kept, and one a minute sooner is too short", () => {
    expect(windowsOf([within(20)])).toEqual([[END, END + HOUR / 3]]);
    expect(rulesOf([within(19)])).toEqual(["hold watering-time-too-short"]);
  });
  test("a due time as the visit ends leaves no time, and a minute later some", () => {
    expect(rulesOf([within(0)])).toEqual(["hold no-common-watering-time"]);
    expect(rulesOf([within(1)])).toEqual(["hold watering-time-too-short"]);
  });
  test("a dry time that ends just so long before the due time leaves the run its time", () => {
    const dry = (minutes: number) => appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [afterEnd(minutes)] })));
    expect(windowsOf([dry(40), within(60)])).toEqual([[END + (2 * HOUR) / 3, END + HOUR]]);
    expect(rulesOf([dry(41), within(60)])).toEqual(["hold watering-time-too-short"]);
    expect(judge([dry(60), within(60)]).findings).toMatchObject([{ rule: "no-common-watering-time", about: ["Alpha", "Quick"] }]);
  });
  test("hours that touch are one stretch, and over midnight too", () => {
    const stations = [{ ...FRONT, depthPerHour: of("in", "0.25") }];
    expect(windowsOf(IRON_AND_FEED, { stations, hours: { localRules: law([300, 330], [330, 360]), controller: "none" } })).toEqual([morning("05:00", "06:00")]);
    const night = byLaw([...daily(23.5, 24), ...daily(0, 0.5)]);
    expect(windowsOf([within(600)], { stations, hours: { localRules: night, controller: "none" } })).toEqual([[at("2026-05-01T23:30-05:00"), at("2026-05-02T00:30-05:00")]]);
  });
  test("hours of the town and of the controller that only touch leave none", () => {
    expect(rulesOf(IRON_AND_FEED, { hours: { localRules: law([300, 420]), controller: law([420, 540]) } })).toEqual(["hold watering-hours-leave-no-time"]);
  });
});

describe("where hours leave no time, those answer for it that leave none by themselves", () => {
  const [evening, morningHours] = [daily(20, 22), daily(5, 9)];
  const inDaylight = [appliedOf(IRON), appliedOf(FEED)];
  test.each([
    ["the rule alone, though a controller is on file", byLaw(evening), byHouse(morningHours), "law license-holder Local rules: every day 8 pm to 10 pm."],
    ["the rule, where neither leaves any", byLaw(evening), byHouse(evening), "law license-holder Local rules: every day 8 pm to 10 pm."],
    ["the controller alone, which may be set anew", byLaw(morningHours), byHouse(evening), "house office The controller: every day 8 pm to 10 pm."],
    ["both together", byLaw(daily(5, 7)), byHouse(daily(7, 9)), "house office Local rules: every day 5 am to 7 am. The controller: every day 7 am to 9 am."],
  ] as const)("%s", (_name, localRules, controller, expected) => {
    const [only] = judge(inDaylight, { stations: [], hours: { localRules, controller } }).findings;
    expect(only?.rule).toBe("watering-hours-leave-no-time");
    expect(`${String(only?.source)} ${only?.level === "hold" ? only.answerableBy : ""} ${String(only?.figure).replace(/^.*due\. |^.*pm\. /u, "")}`).toBe(expected);
  });
  test("and days of the rule that are too short for the stations even one by one", () => {
    const stations = [{ ...FRONT, depthPerHour: of("in", "0.1") }];
    const [only] = judge(inDaylight, { stations, hours: { localRules: byLaw(daily(5, 6)), controller: byHouse(daily(4, 12)) } }).findings;
    expect(only).toMatchObject({ source: "law", answerableBy: "license-holder", toDo: "Put the product down on a day before a watering day, or split the visit." });
  });
});

describe("a product that rain would spoil", () => {
  const spoiled = (from: "any" | ReturnType<typeof of<"in">>, hours = 12) => appliedOf(labelOf("Ferrox Foliar", says("rain-that-spoils", { within: hoursAfterEnd(hours), from })));
  const feed = appliedOf(FEED);
  test("by any rain: water waits as long, and the reason is told", () => {
    const { answer, dry } = judge([spoiled("any"), feed]);
    expect(answer).toMatchObject({ windows: [{ fromEpochMilliseconds: END + 12 * HOUR, untilEpochMilliseconds: END + 24 * HOUR }], rain: "counts", reasons: [{ kind: "watering-in" }, { kind: "rain-that-spoils" }] });
    expect(dry).toHaveLength(1);
  });
  test("as long as the feed can wait: a hold that names both", () => {
    expect(judge([spoiled("any", 24), feed])).toMatchObject({ answer: { kind: "no-window" }, findings: [{ level: "hold", rule: "no-common-watering-time", about: ["Ferrox Foliar", "Evenfeed 18"] }] });
  });
  test("by as much rain as the water puts down: the same", () => {
    expect(windowsOf([spoiled(of("in", "0.25")), feed])).toEqual([[END + 12 * HOUR, END + 24 * HOUR]]);
  });
  test("by what a station puts down in its whole minutes, which is a little more than the label's least", () => {
    const stations = [FRONT, { ...FRONT, stationName: "Back", depthPerHour: of("in", "0.7") }];
    expect(windowsOf([spoiled(of("in", "0.256")), feed], { stations })).toEqual([[END + 12 * HOUR, END + 24 * HOUR]]);
    expect(windowsOf([spoiled(of("in", "0.257")), feed], { stations })).toEqual([[END, END + 24 * HOUR]]);
  });
  test("only by more: water need not wait, and nobody is told to wait for rain while it may spoil", () => {
    expect(judge([spoiled(of("in", "0.5")), feed])).toMatchObject({ answer: { windows: [{ fromEpochMilliseconds: END }], rain: "may-spoil", stayUnder: [] }, dry: [] });
    expect(judge([spoiled(of("in", "0.5")), appliedOf(IRON), feed]).answer).toMatchObject({ rain: "counts" });
  });
  test("by an amount, where no label says how much is put down: what to stay under is said", () => {
    const deep = appliedOf(labelOf("Thorough", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "not-stated" })));
    expect(judge([spoiled(of("in", "0.5")), deep]).answer).toMatchObject({ windows: [{ fromEpochMilliseconds: END }], stayUnder: ["Rain of ½ in or more before Saturday, May 2, 2026, 4 am spoils Ferrox Foliar."] });
    expect(windowsOf([spoiled("any"), deep])).toMatchObject([[END + 12 * HOUR, expect.any(Number)]]);
  });
  test("of an earlier visit counts as long as it runs", () => {
    const earlier = earlierOf(labelOf("Ferrox Foliar", says("rain-that-spoils", { within: hoursAfterEnd(12), from: "any" })), START - HOUR);
    expect(windowsOf([earlier, feed])).toEqual([[START + 11 * HOUR, END + 24 * HOUR]]);
  });
});

describe("stations", () => {
  const cycled = (stationName: string) => ({ stationName, depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 6, soakMinutes: 30 } });
  const hourLong = ["A", "B", "C", "D", "E", "F"].map((stationName) => ({ ...FRONT, stationName, depthPerHour: of("in", "0.25") }));
  const within = (hours: number) => appliedOf(labelOf("Evenfeed 18", says("watering-in", { by: hoursAfterEnd(hours), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" })));
  const early = (from: number, until: number) => ({ localRules: byLaw(daily(from, until)), controller: "none" }) as const;
  test("two of 30 min with rests in the hours from 5 to 9", () => {
    const { answer } = judge(IRON_AND_FEED, { hours: early(5, 9), stations: [cycled("A"), cycled("B")] });
    expect(answer).toMatchObject({ kind: "window", windows: [{ fromEpochMilliseconds: at("2026-05-02T05:00-05:00") }], elapsedMinutes: 156, parts: [] });
    expect(answer.kind === "window" && answer.starts?.length).toBe(10);
  });
  test("six of an hour on two of three mornings", () => {
    const { answer, findings } = judge([within(72)], { hours: early(4, 9), stations: hourLong });
    expect(findings).toEqual([]);
    expect(answer).toMatchObject({ kind: "window", windows: [], starts: [], elapsedMinutes: 360 });
    const parts = answer.kind === "window" ? (answer.parts ?? []) : [];
    expect(parts.map((part) => [part.fromEpochMilliseconds, part.starts.map(({ stationName }) => stationName).join("")])).toEqual([
      [at("2026-05-02T04:00-05:00"), "ABCDE"],
      [at("2026-05-03T04:00-05:00"), "F"],
    ]);
  });
  test("the same due the next day: a hold with the hours and the minutes", () => {
    const { answer, findings } = judge([within(24)], { hours: early(4, 9), stations: hourLong });
    expect(answer).toEqual({ kind: "no-window" });
    expect(findings).toMatchObject([{ rule: "watering-hours-leave-no-time", figure: expect.stringContaining("Local rules: every day 4 am to 9 am. The stations need 360 min one at a time.") as string }]);
  });
  test("one whose minutes miss the depth is a hold", () => {
    const capped = appliedOf(labelOf("Thirstless", says("watering-in", { by: "not-stated", depth: { least: of("in", "0.25"), most: of("in", "0.3") }, rain: "counts" })));
    const stations = [FRONT, { ...FRONT, stationName: "Fast", depthPerHour: of("in", "40") }];
    expect(judge([capped], { stations })).toMatchObject({ answer: { kind: "no-window" }, findings: [{ rule: "station-minutes-miss-depth", figure: expect.stringContaining("Fast: 1 min put down 0.667 in") as string }] });
  });
});

describe("dates", () => {
  const quarter = { least: of("in", "0.25"), most: "none" } as const;
  const due = (by: ReturnType<typeof hoursAfterEnd> | { readonly anchor: "calendar-day"; readonly days: number } | "not-stated") => appliedOf(labelOf("Slow", says("watering-in", { by, depth: quarter, rain: "counts" })));
  test("no label sets one: none is told", () => expect(judge([due("not-stated")]).answer).toMatchObject({ dueAtEpochMilliseconds: null, isOverdue: false, hasHours: false }));
  test("one that has passed is none", () => expect(judge([earlierOf(FEED, START - 48 * HOUR)]).answer).toMatchObject({ dueAtEpochMilliseconds: null, isOverdue: true }));
  test("one that is later than the days that are looked at without a date is kept", () => {
    const late = { anchor: "calendar-day", days: 45 } as const;
    expect(judge([due(late)]).answer).toMatchObject({
      dueAtEpochMilliseconds: at("2026-06-16T00:00-05:00"),
      windows: [{ fromEpochMilliseconds: END, untilEpochMilliseconds: at("2026-06-16T00:00-05:00") }],
    });
  });
  test("without one, four weeks of hours stand after a long dry time too", () => {
    const long = appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [{ anchor: "calendar-day", days: 40 }] })));
    const hours = { localRules: byLaw(daily(5, 9, [1])), controller: byHouse([{ datesOfMonth: "even", fromMinuteOfDay: 0, untilMinuteOfDay: 1440 }]) } as const;
    expect(windowsOf([long, due("not-stated")], { hours })).toEqual([
      [at("2026-06-22T05:00-05:00"), at("2026-06-22T09:00-05:00")],
      [at("2026-07-06T05:00-05:00"), at("2026-07-06T09:00-05:00")],
    ]);
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
    expect(windowsOf([earlierOf(FEED, START - 48 * HOUR), appliedOf(IRON)])).toEqual([[END + 12 * HOUR, at("2026-05-30T00:00-05:00")]]);
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
    expect(judge(IRON_AND_FEED).answer).toMatchObject({ isEstimate: false });
  });
  test("one that waits for a stated time or for the hours beyond that is none", () => {
    const drying = appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [untilState("dry")] })));
    const stays = (hours: number) => appliedOf(labelOf("Stays", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(hours)] })));
    const feed = appliedOf(FEED);
    expect([1, 2, 3].map((hours) => judge([drying, stays(hours), feed]).answer)).toMatchObject([{ isEstimate: true }, { isEstimate: false }, { isEstimate: false }]);
    const from = (hour: number) => judge([drying, feed], { hours: { localRules: byLaw(daily(hour, 24)), controller: "none" } }).answer;
    expect([17, 18, 19].map(from)).toMatchObject([{ isEstimate: true }, { isEstimate: true }, { isEstimate: false }]);
  });
  test("rain that counts does so from the work on, or from when it spoils none any more", () => {
    const from = (products: readonly AppliedProduct[]) => judge(products).answer;
    expect(from([appliedOf(FEED)])).toMatchObject({ rainFrom: { epochMilliseconds: END, isEndOfWork: true } });
    expect(from(IRON_AND_FEED)).toMatchObject({ rainFrom: { epochMilliseconds: END + 12 * HOUR, isEndOfWork: false } });
    expect(from([stating("not-stated")])).not.toHaveProperty("rainFrom");
  });
  test("one station without a test gives no total, and its depth only", () => {
    const { answer } = judge(IRON_AND_FEED, { stations: [FRONT, { stationName: "Back", depthPerHour: "not-tested", cycle: "none" }] });
    expect(answer).toMatchObject({ elapsedMinutes: null, stations: [{ kind: "run", totalMinutes: 20 }, { kind: "test-first", stationName: "Back" }] });
  });
  const untested = { stationName: "4 New", depthPerHour: "not-tested", cycle: "none" } as const;
  const three = ["1", "2", "3"].map((stationName) => ({ ...FRONT, stationName, depthPerHour: of("in", "0.25") }));
  test("one station without a test leaves the others what they need: too little is a hold", () => {
    const hours = { localRules: "none", controller: byHouse(daily(5, 6)) } as const;
    const { answer, findings } = judge([appliedOf(FEED)], { hours, stations: [...three, untested] });
    expect(answer).toEqual({ kind: "no-window" });
    expect(findings).toMatchObject([{ rule: "watering-hours-leave-no-time", figure: expect.stringContaining("The stations need 180 min one at a time. The time for 4 New is not known and comes on top.") as string }]);
  });
  test("and where they take several days it does not make them one", () => {
    const hours = { localRules: "none", controller: byHouse(daily(5, 7)) } as const;
    const within = appliedOf(labelOf("Evenfeed 18", says("watering-in", { by: hoursAfterEnd(48), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" })));
    const { answer } = judge([within], { hours, stations: [...three, untested] });
    expect(answer).toMatchObject({ windows: [], elapsedMinutes: null, parts: [{ starts: [{ stationName: "1" }, { stationName: "2" }] }, { starts: [{ stationName: "3" }] }] });
  });
  test("stations without a test alone need no time that is known", () => {
    const hours = { localRules: byLaw([{ weekday: 6, fromMinuteOfDay: 300, untilMinuteOfDay: 301 }]), controller: "none" } as const;
    expect(windowsOf(IRON_AND_FEED, { hours, stations: [untested] })).toEqual([morning("05:00", "05:01")]);
  });
  test("no stations at all: any sprinkler, tested first", () => {
    expect(judge(IRON_AND_FEED, { stations: [] }).answer).toMatchObject({ stations: [{ kind: "test-first", stationName: "Sprinkler or hose" }] });
  });
  test("an impossible station is refused", () => {
    const stations = [{ ...FRONT, depthPerHour: of("in", "0") }];
    expect(refusalOf(judgeWatering(aftercareQuestion(IRON_AND_FEED, { stations }))).field).toBe("Front depthPerHour");
  });
});
