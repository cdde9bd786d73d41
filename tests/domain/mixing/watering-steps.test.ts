import { describe, expect, test } from "vitest";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { wateringSteps, withinHoursWords } from "#domain/mixing/watering-steps";
import { judgeWatering } from "#domain/mixing/watering-window";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/domain-answers";
import { aftercareQuestion, appliedOf, at, byLaw, CHICAGO, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";

const stepsOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) =>
  wateringSteps(valueOf(judgeWatering(aftercareQuestion(products, change))).answer, CHICAGO);
const quarter = { least: of("in", "0.25"), most: "none" } as const;
const undated = appliedOf(labelOf("Slow", says("watering-in", { by: "not-stated", depth: quarter, rain: "counts" })));
const within = (hours: number) => appliedOf(labelOf("Slow", says("watering-in", { by: hoursAfterEnd(hours), depth: quarter, rain: "counts" })));
const mornings = (from: number, until: number) => ({ localRules: byLaw(daily(from, until)), controller: "none" }) as const;
const hourLong = (...names: readonly string[]) => names.map((stationName) => ({ ...FRONT, stationName, depthPerHour: of("in", "0.25") }));

describe("where no label sets a date", () => {
  test("there is no end, and the words say so", () => {
    expect(stepsOf([undated])).toMatchObject([
      { row: "watering", kind: "must", startsAtEpochMilliseconds: END, endsAtEpochMilliseconds: null, startsAtWords: "Friday, May 1, 2026, 4 pm", endsAtWords: "when it suits; no date on the label" },
    ]);
  });
  test("within the hours that are on file", () => {
    expect(stepsOf([undated], { hours: mornings(5, 9) })).toMatchObject([
      { startsAtWords: "Saturday, May 2, 2026, 5 am", endsAtEpochMilliseconds: null, endsAtWords: "when it suits, within the watering hours (every day 5 am to 9 am); no date on the label", words: "Water in with ¼ in. Front: 20 min. ¼ in of rain from the work on does it too." },
    ]);
  });
  test("one that has passed is not denied", () => {
    expect(stepsOf([earlierOf(FEED, START - 48 * HOUR)])).toMatchObject([{ endsAtEpochMilliseconds: null, endsAtWords: "as soon as it can be; the date on the label has passed" }]);
  });
  test("several parts are one step, with days on which they may run", () => {
    expect(stepsOf([undated], { hours: mornings(4, 6), stations: hourLong("A", "B", "C") })).toMatchObject([
      {
        startsAtEpochMilliseconds: at("2026-05-02T04:00-05:00"),
        endsAtEpochMilliseconds: null,
        words:
          "Water in with ¼ in, each station once, in 2 parts. They may run so: Saturday, May 2, 2026: A at 4 am for 60 min; B at 5 am for 60 min. " +
          "Sunday, May 3, 2026: C at 4 am for 60 min. ¼ in of rain from the work on does it too.",
      },
    ]);
  });
});

describe("where a label sets one", () => {
  test("it is the end, however late", () => {
    expect(stepsOf([within(24 * 20)])).toMatchObject([{ endsAtEpochMilliseconds: END + 480 * HOUR, endsAtWords: "Thursday, May 21, 2026, 4 pm" }]);
  });
  test("the first hours end the step, and later ones are told", () => {
    expect(stepsOf([within(72)], { hours: mornings(5, 9) })).toMatchObject([
      { endsAtWords: "Saturday, May 2, 2026, 9 am", words: "Water in with ¼ in. Front: 20 min. ¼ in of rain from the work until Monday, May 4, 2026, 4 pm does it too. Later watering hours do as well, until Monday, May 4, 2026, 9 am." },
    ]);
  });
  test("several parts are a step each, with the station and its time", () => {
    const steps = stepsOf([within(72)], { hours: mornings(4, 9), stations: hourLong("A", "B", "C", "D", "E", "F") });
    expect(steps.map(({ startsAtWords, endsAtWords }) => [startsAtWords, endsAtWords])).toEqual([
      ["Saturday, May 2, 2026, 4 am", "Saturday, May 2, 2026, 9 am"],
      ["Sunday, May 3, 2026, 4 am", "Sunday, May 3, 2026, 9 am"],
    ]);
    expect(steps[1]?.words).toBe("Water in with ¼ in, each station once, in 2 parts. Part 2: F at 4 am for 60 min. ¼ in of rain from the work until Monday, May 4, 2026, 4 pm does it too.");
  });
});

test("a start that is an estimate is said as one", () => {
  const drying = appliedOf(labelOf("Alpha", says("watering-not-before", { untilLaterOf: [untilState("dry")] })));
  expect(stepsOf([drying, within(24)])[0]?.startsAtWords).toBe("about Friday, May 1, 2026, 6 pm, an estimate");
});

test("runs in each other's rests are told by the clock, from the first whole minute", () => {
  const cycled = (stationName: string) => ({ stationName, depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 15, soakMinutes: 20 } });
  const visit = { fromEpochMilliseconds: START, untilEpochMilliseconds: END + 1 };
  expect(stepsOf([within(24)], { visit, stations: [cycled("A"), cycled("B")] })[0]?.words).toContain(
    " One at a time, begun at 4:01 pm: A at 4:01 pm and 4:36 pm for 15 min each; B at 4:16 pm and 4:51 pm for 15 min each.",
  );
});

test("runs of two lengths and runs of the next day are told apart", () => {
  const late = { localRules: byLaw([...daily(23, 24), ...daily(0, 4)]), controller: "none" } as const;
  const stations = [{ stationName: "A", depthPerHour: of("in", "0.6"), cycle: { longestRunMinutes: 12, soakMinutes: 45 } }, FRONT];
  expect(stepsOf([within(24)], { hours: late, stations })[0]?.words).toContain(
    "begun at 11 pm: A at 11 pm for 9 min, at 11:54 pm and Saturday 12:47 am for 8 min each; Front at 11:09 pm for 20 min.",
  );
});

test("in the night in which clocks go back, times that come twice say which of the two they are", () => {
  const end = at("2026-10-31T18:00-05:00");
  const application = { startsAtEpochMilliseconds: end - HOUR, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: "not-posted" } as const;
  const hours = { localRules: byLaw(daily(1, 4)), controller: "none" } as const;
  const stations = [FRONT, { stationName: "Back", depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 10, soakMinutes: 30 } }];
  const [step] = stepsOf([appliedOf(FEED, { application })], { visit: { fromEpochMilliseconds: end - HOUR, untilEpochMilliseconds: end }, hours, stations });
  expect(step?.words).toContain("Back at 1 am (before clocks go back), 1:40 am (before clocks go back) and 1:20 am (after clocks go back) for 10 min each");
});

describe("beside other lawns", () => {
  const window = () => {
    const { answer } = valueOf(judgeWatering(aftercareQuestion([within(24)], { stations: hourLong("A", "B") })));
    if (answer.kind !== "window") throw new Error("No window");
    return answer;
  };
  test("times leave room for their stations", () => {
    const starts = [{ stationName: "A", startsAfterMinutes: 60, runMinutes: 60 }, { stationName: "B", startsAfterMinutes: 120, runMinutes: 60 }];
    expect(wateringSteps({ ...window(), isWithOthers: true, starts }, CHICAGO)[0]?.words).toContain(
      "A: 60 min. B: 60 min. One station at a time on the whole property, for example A at 5 pm for 60 min; B at 6 pm for 60 min.",
    );
  });
  test("a station that waters them too is said to run once", () => {
    const words = (lawnNames: readonly string[]) => wateringSteps({ ...window(), alsoWaters: [{ stationName: "B", lawnNames }] }, CHICAGO)[0]?.words;
    expect(words(["Strip"])).toContain("B: 60 min. B waters Strip as well; run it once for both. ¼ in");
    expect(words(["Strip", "Side"])).toContain("B waters Strip and Side as well; run it once for all.");
  });
  test("so it is in the part in which it runs, and a station without a test stands with the last part", () => {
    const untested = { stationName: "New", depthPerHour: "not-tested", cycle: "none" } as const;
    const { answer } = valueOf(judgeWatering(aftercareQuestion([within(72)], { hours: mornings(4, 6), stations: [...hourLong("A", "B", "C"), untested] })));
    if (answer.kind !== "window") throw new Error("No window");
    const [first, last] = wateringSteps({ ...answer, isWithOthers: true, alsoWaters: [{ stationName: "A", lawnNames: ["Strip"] }, { stationName: "New", lawnNames: ["Side"] }] }, CHICAGO).map(({ words }) => words);
    expect(first).toContain("Part 1: A at 4 am for 60 min; B at 5 am for 60 min. One station at a time on the whole property. A waters Strip as well; run it once for both. ¼ in of rain");
    expect(last).toMatch(/Part 2: C at 4 am for 60 min\. One station at a time on the whole property\. New: ¼ in\. Its rate has not been tested\..* New waters Side as well; run it once for both\. ¼ in of rain/u);
  });
});

describe("rain", () => {
  test("counts from the work until the label's date where hours are shorter, and only while it spoils none", () => {
    const words = (products: readonly AppliedProduct[]) => stepsOf(products, { hours: mornings(5, 8) })[0]?.words;
    expect(words([within(24)])).toContain("¼ in of rain from the work until Saturday, May 2, 2026, 4 pm does it too.");
    expect(words([within(24), appliedOf(IRON)])).toContain("¼ in of rain from Saturday, May 2, 2026, 4 am until Saturday, May 2, 2026, 4 pm does it too.");
    expect(words([undated, appliedOf(IRON)])).toContain("¼ in of rain from Saturday, May 2, 2026, 4 am on does it too.");
  });
  const spoiled = (from: string) => appliedOf(labelOf("Ferrox", says("rain-that-spoils", { within: hoursAfterEnd(12), from: of("in", from) })));
  test("that may spoil another product is not to be waited for", () => {
    expect(stepsOf([spoiled("0.5"), within(24)])[0]?.words).toBe("Water in with ¼ in. Front: 20 min. Do not wait for rain instead.");
  });
  test("says what water must stay under where no label states a depth", () => {
    const deep = appliedOf(labelOf("Thorough", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "counts" })));
    expect(stepsOf([spoiled("0.5"), deep])[0]?.words).toBe(
      "Water in as the label says; it states no depth. Rain of ½ in or more before Saturday, May 2, 2026, 4 am spoils Ferrox. As much water does too.",
    );
  });
});

test("hours are named where they are on file, and not where an earlier ticket kept only that there are some", () => {
  expect(withinHoursWords({ hasHours: true, hoursInWords: "every day 4 am to 10 am" })).toBe(", within the watering hours (every day 4 am to 10 am)");
  expect(withinHoursWords({ hasHours: true })).toBe(", within the watering hours");
  expect(withinHoursWords({ hasHours: false, hoursInWords: "" })).toBe("");
  expect(withinHoursWords({})).toBe("");
});

describe("before the work is done", () => {
  const rests = (stationName: string) => ({ stationName, depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 15, soakMinutes: 20 } });
  const told = (products: readonly AppliedProduct[], isMoving: boolean, change: Partial<AftercareQuestion> = {}) =>
    wateringSteps(valueOf(judgeWatering(aftercareQuestion(products, change))).answer, CHICAGO, { mayMove: () => isMoving, laterUntil: () => "its end", dueWords: () => "its time" }).map(({ words }) => words);
  test("stations that may have to begin another time are told in minutes from the beginning", () => {
    const change = { stations: [rests("A"), rests("B")] };
    expect(told([within(24)], true, change)[0]).toContain(" One at a time, in minutes from the beginning: A at 0 and 35 min for 15 min each; B at 15 and 50 min for 15 min each.");
    expect(told([within(24)], false, change)[0]).toContain(" One at a time, begun at 4 pm: A at 4 pm and 4:35 pm for 15 min each;");
  });
  test("so they are beside other lawns, in each of several parts, and where no label sets a date", () => {
    const { answer } = valueOf(judgeWatering(aftercareQuestion([within(24)], { stations: hourLong("A", "B") })));
    const beside = answer.kind === "window" ? { ...answer, isWithOthers: true } : answer;
    const moving = { mayMove: () => true, laterUntil: () => "", dueWords: () => "" };
    expect(wateringSteps(beside, CHICAGO, moving)[0]?.words).toContain("One station at a time on the whole property, for example, in minutes from the beginning: A at 0 min for 60 min; B at 60 min for 60 min.");
    const change = { hours: mornings(4, 6), stations: hourLong("A", "B", "C") };
    expect(told([within(72)], true, change)[0]).toContain("in 2 parts. Part 1, in minutes from the beginning: A at 0 min for 60 min; B at 60 min for 60 min.");
    expect(told([undated], true, change)[0]).toContain("Sunday, May 3, 2026, in minutes from the beginning: C at 0 min for 60 min.");
  });
  test("rain from the work on counts until the label's time, and rain that spoils at first in the time for water only", () => {
    expect(told([within(24)], false, { hours: mornings(5, 8) })[0]).toContain("¼ in of rain from the work until its time does it too.");
    expect(told([within(24), appliedOf(IRON)], false, { hours: mornings(5, 8) })[0]).toContain("¼ in of rain in that time does it too.");
    expect(told([undated], false, { hours: mornings(5, 8) })[0]).toContain("¼ in of rain from the work on does it too.");
    expect(told([undated, appliedOf(IRON)], false, { hours: mornings(5, 8) })[0]).toContain("¼ in of rain in that time does it too.");
  });
  test("later hours end when it is told beforehand", () => {
    expect(told([within(72)], false, { hours: mornings(5, 9) })[0]).toContain(" Later watering hours do as well, until its end.");
  });
});

test("a part in which only a station without minutes runs is told of that one alone", () => {
  const untested = { stationName: "New", depthPerHour: "not-tested", cycle: "none" } as const;
  const { answer } = valueOf(judgeWatering(aftercareQuestion([within(72)], { hours: mornings(4, 6), stations: [...hourLong("A", "B", "C"), untested] })));
  if (answer.kind !== "window") throw new Error("No window");
  const parts = (answer.parts ?? []).map((part, index) => (index === 0 ? part : { ...part, starts: [] }));
  expect(wateringSteps({ ...answer, parts }, CHICAGO)[1]?.words).toMatch(/in 2 parts\. Part 2: New: ¼ in\. Its rate has not been tested\./u);
  expect(wateringSteps({ ...answer, parts, dueAtEpochMilliseconds: null }, CHICAGO)[0]?.words).toMatch(/Sunday, May 3, 2026: New: ¼ in\. Its rate/u);
});

test.each([
  ["none needed", [appliedOf(IRON)]],
  ["no time", [appliedOf(IRON), within(2)]],
])("%s: no step", (_name, products) => expect(stepsOf(products)).toEqual([]));
