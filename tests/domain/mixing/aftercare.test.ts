import { describe, expect, test } from "vitest";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { of } from "#domain/quantities/quantity";
import { refusalOf, valueOf } from "../../support/domain-answers";
import {
  aftercareQuestion, appliedOf, at, byHouse, byLaw, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, rowOf, says, START,
} from "../../support/aftercare-builders";

const timelineOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) =>
  valueOf(aftercareTimeline(aftercareQuestion(products, change)));
const rulesOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) =>
  timelineOf(products, change).findings.map((finding) => `${finding.level} ${finding.rule}`);
const sign = says("posting-sign", { upBy: "immediately-following", mayComeDown: { trigger: "day-following", daysFollowing: 1, orReentryIfLater: false } });
const signedIron = labelOf("Ferrox Foliar", { ...IRON.facts, ...sign });

describe("foliar iron overnight, a granular feed to be watered in the next morning", () => {
  const hours = { localRules: byLaw(daily(5, 9)), controller: byHouse(daily(4, 8, [6])) };
  const visit = timelineOf([appliedOf(FEED), appliedOf(signedIron)], {
    hours,
    mowing: { weekday: 6, lastMowedAtEpochMilliseconds: "unknown" },
    stations: [FRONT, { stationName: "Back", depthPerHour: of("in", "0.5"), cycle: { longestRunMinutes: 10, soakMinutes: 30 } }],
    secondLook: { daysAfter: 10, programName: "the spring program" },
  });

  test("people and pets: until it has been watered in and is dry, an estimate", () => {
    expect(rowOf(visit.steps, "people-and-pets")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-02T15:00"]]);
    const people = visit.steps.find(({ row }) => row === "people-and-pets");
    expect(people).toMatchObject({
      isEstimate: true,
      words: "Keep people and pets off the lawn until watered in and dry.",
      startsAtWords: "Friday, May 1, 2026, 3 pm",
      endsAtWords: "about Saturday, May 2, 2026, 10 am, an estimate",
    });
    expect(people?.reasons.map(({ productName }) => productName)).toEqual(["Evenfeed 18", "Ferrox Foliar"]);
  });
  test("watering: dry until 4 am, then within the hours that both allow", () => {
    expect(rowOf(visit.steps, "watering")).toEqual([
      ["may-not", "2026-05-01T20:00", "2026-05-02T09:00"],
      ["must", "2026-05-02T10:00", "2026-05-02T13:00"],
    ]);
    expect(visit.steps.find(({ row, kind }) => row === "watering" && kind === "must")).toMatchObject({
      words: "Water in with ¼ in. Front: 20 min. Back: 10, then 10, then 10 min, with 30 min of rest between. One at a time, begun at 5 am: Back at 5 am, 5:40 am and 6:20 am for 10 min each; Front at 5:10 am for 20 min. ¼ in of rain from Saturday, May 2, 2026, 4 am until Saturday, May 2, 2026, 4 pm does it too.",
      startsAtWords: "Saturday, May 2, 2026, 5 am",
      endsAtWords: "Saturday, May 2, 2026, 8 am",
    });
  });
  test("mowing: not on the mowing day before it has been watered in", () => {
    expect(rowOf(visit.steps, "mowing")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-02T13:00"]]);
    expect(visit.findings).toMatchObject([{ level: "take-care", rule: "mowing-day-in-the-way", about: ["Evenfeed 18"] }]);
  });
  test("the sign: up after the work, down from the day following", () => {
    expect(rowOf(visit.steps, "sign")).toEqual([
      ["must", "2026-05-01T20:00", "2026-05-01T21:00"],
      ["may-not", "2026-05-01T21:00", "2026-05-02T05:00"],
    ]);
  });
  test("leaf, rain, second look and the version of the zone data are kept", () => {
    expect(visit.lawnAtApplication).toMatchObject([{ productName: "Ferrox Foliar", part: "leaf", state: "dry" }]);
    expect(visit.spoilingRain).toMatchObject([{ endsAtEpochMilliseconds: END + 12 * HOUR, from: "any" }]);
    expect(visit.secondLook).toEqual({ date: "2026-05-11", words: "Second look on Monday, May 11, 2026, 10 days after, by the spring program." });
    expect([visit.zoneDataVersion, visit.timeZone, visit.visitEndsAtEpochMilliseconds]).toEqual(["2026a", "America/Chicago", END]);
  });
  test("stored as JSON and read back it is the same", () => expect(JSON.parse(JSON.stringify(visit))).toStrictEqual(visit));
});

describe("the nights in which clocks change", () => {
  const night = (ended: string) => {
    const end = at(ended);
    const application = { startsAtEpochMilliseconds: end - HOUR, endsAtEpochMilliseconds: end, postedAtEpochMilliseconds: "not-posted" } as const;
    const products = [appliedOf(IRON, { application }), appliedOf(FEED, { application })];
    const visit = { fromEpochMilliseconds: end - HOUR, untilEpochMilliseconds: end };
    const must = timelineOf(products, { visit, hours: { localRules: byLaw(daily(0, 12)), controller: "none" } }).steps.find(({ kind }) => kind === "must");
    return [must?.startsAtWords, must?.endsAtWords];
  };
  test("March: 12 h after 6 pm is 7 am", () => {
    expect(night("2026-03-07T18:00-06:00")).toEqual(["Sunday, Mar 8, 2026, 7 am", "Sunday, Mar 8, 2026, 12 pm"]);
  });
  test("November: 12 h after 6 pm is 5 am", () => {
    expect(night("2026-10-31T18:00-05:00")).toEqual(["Sunday, Nov 1, 2026, 5 am", "Sunday, Nov 1, 2026, 12 pm"]);
  });
  test("November: an end in the hour that comes twice says which", () => {
    expect(night("2026-10-31T14:30-05:00")[0]).toBe("Sunday, Nov 1, 2026, 1:30 am (after clocks go back)");
  });
});

describe("a product that any rain would spoil", () => {
  const spoiled = labelOf("Ferrox Foliar", says("rain-that-spoils", { within: hoursAfterEnd(12), from: "any" }));
  test("keeps sprinklers off as long, and the water of another waits for it; rain then does it too", () => {
    const visit = timelineOf([appliedOf(spoiled), appliedOf(FEED)]);
    expect(rowOf(visit.steps, "watering")).toEqual([
      ["may-not", "2026-05-01T20:00", "2026-05-02T09:00"],
      ["must", "2026-05-02T09:00", "2026-05-02T21:00"],
    ]);
    expect(visit.steps.find(({ row, kind }) => row === "watering" && kind === "may-not")).toMatchObject({ words: "Do not water.", reasons: [{ productName: "Ferrox Foliar", kind: "rain-that-spoils" }] });
    expect(visit.steps.find(({ row, kind }) => row === "watering" && kind === "must")?.words).toContain("¼ in of rain in that time does it too.");
    expect(visit.spoilingRain).toMatchObject([{ words: "Any rain before Saturday, May 2, 2026, 4 am spoils Ferrox Foliar." }]);
  });
  test("keeps them off where nothing is watered in too", () => {
    expect(rowOf(timelineOf([appliedOf(spoiled)]).steps, "watering")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-02T09:00"]]);
  });
});

describe("holds", () => {
  test("no common time: the two are named, the dry row stays, and water is told without hours", () => {
    const quick = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(1), depth: "not-stated", rain: "counts" }));
    const visit = timelineOf([appliedOf(IRON), appliedOf(quick)]);
    expect(visit.findings).toMatchObject([{ level: "hold", answerableBy: "nobody", about: ["Ferrox Foliar", "Grubclear"] }]);
    expect(rowOf(visit.steps, "watering")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-02T09:00"], ["must", "2026-05-02T09:00", null]]);
    expect(visit.watering).toEqual({ kind: "no-window" });
  });
  test("an unread label says what is missing and keeps each of its rows closed; water is told without hours", () => {
    const facts = labelOf("Alpha").facts;
    const unread = labelOf("Alpha", Object.fromEntries(Object.keys(facts).map((kind) => [kind, "unknown"])));
    const visit = timelineOf([appliedOf(unread), appliedOf(FEED)]);
    expect(visit.watering).toEqual({ kind: "undecided" });
    expect(visit.findings[0]).toMatchObject({ level: "hold", answerableBy: "nobody", rule: "aftercare-fact-missing", about: ["Alpha"] });
    expect(visit.findings[0]?.what).toContain("how long it must not be watered; whether and when it must be watered in");
    for (const row of ["people-and-pets", "watering", "mowing", "seeding", "sign"] as const) {
      const told = row === "watering" ? [["must", "2026-05-01T21:00", null]] : [];
      expect(rowOf(visit.steps, row), row).toEqual([["may-not", "2026-05-01T20:00", null], ...told]);
    }
  });
  test("of an earlier visit what only mattered then is no longer asked", () => {
    const unread = labelOf("Alpha", { "leaf-at-application": "unknown", "mowing-before": "unknown", "watering-in": "unknown" });
    expect(rulesOf([earlierOf(unread, START - HOUR, { wateredInAtEpochMilliseconds: START - HOUR })])).toEqual([]);
    expect(rulesOf([earlierOf(unread, START - HOUR)])).toEqual(["hold aftercare-fact-missing"]);
    expect(rulesOf([appliedOf(unread)])).toEqual(["hold aftercare-fact-missing"]);
  });
  test("the gravest first", () => {
    const rules = rulesOf([earlierOf(FEED, START - 48 * HOUR), appliedOf(labelOf("Alpha", { "seeding-after": "unknown" }))]);
    expect(rules).toEqual(["hold aftercare-fact-missing", "take-care crew-while-people-may-stay-off", "take-care watering-in-overdue"]);
  });
  test("seed of the plan, a mowing before and opposite leaves are held too", () => {
    const days = { anchor: "calendar-day", days: 60 } as const;
    const strict = labelOf("Strict", {
      ...says("seeding-after", { intervals: [{ method: "any", until: days }] }),
      ...says("mowing-before", { within: { anchor: "application-start", durationMinutes: 1440 } }),
      ...says("leaf-at-application", { state: "moist" }),
    });
    const seedings = [{ date: "2026-06-01" as never, method: "broadcast", standing: "planned" } as const];
    const mowing = { weekday: "none", lastMowedAtEpochMilliseconds: START - HOUR } as const;
    expect(rulesOf([appliedOf(strict), appliedOf(IRON)], { seedings, mowing })).toEqual([
      "hold opposite-leaf-at-application",
      "hold mowed-too-shortly-before",
      "hold seeding-too-soon-after",
    ]);
  });
});

const atOnce = { anchor: "at-once" } as const;

describe("water at once", () => {
  const grub = labelOf("Grubclear", says("watering-in", { by: atOnce, depth: { least: of("in", "0.5"), most: of("in", "1") }, rain: "not-stated" }));

  test("is due within the hour after the work", () => {
    expect(rowOf(timelineOf([appliedOf(grub)]).steps, "watering")).toEqual([["must", "2026-05-01T21:00", "2026-05-01T22:00"]]);
  });
  test("is at odds with what must stay dry, with hours that come later, and with work that goes on for long", () => {
    expect(rulesOf([appliedOf(grub), appliedOf(IRON)])).toEqual(["hold no-common-watering-time"]);
    expect(rulesOf([appliedOf(grub)], { hours: { localRules: byLaw(daily(4, 9)), controller: "none" } })).toEqual(["hold watering-hours-leave-no-time"]);
    const visit = { fromEpochMilliseconds: START, untilEpochMilliseconds: END + HOUR };
    expect(timelineOf([appliedOf(grub)], { visit }).findings).toMatchObject([
      { rule: "no-common-watering-time", what: "Grubclear can't be watered in: its time is over before the work ends.", toDo: "Put it down last, or split the visit." },
    ]);
  });
  test("of an earlier visit is overdue", () => expect(rulesOf([earlierOf(grub, START - 2 * HOUR)])).toEqual(["take-care watering-in-overdue"]));
});

describe("the zone's history", () => {
  test("what an earlier visit still forbids stands from its own start, named with its day", () => {
    const visit = timelineOf([earlierOf(IRON, START - HOUR), appliedOf(FEED)]);
    expect(rowOf(visit.steps, "watering")[0]).toEqual(["may-not", "2026-05-01T18:00", "2026-05-02T07:00"]);
    expect(visit.steps.find(({ row }) => row === "watering")?.reasons[0]?.productName).toBe("Ferrox Foliar (put down Friday, May 1, 2026)");
  });
  test("what can't be watered in by its date any more keeps people off until it has been, at no time that could be given", () => {
    const weedoff = labelOf("Weedoff 3", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(30)] }));
    const before = START - 20 * HOUR;
    const visit = timelineOf([appliedOf(labelOf("Plain")), earlierOf(weedoff, before), earlierOf(FEED, before)]);
    expect(visit.findings.filter(({ level }) => level === "hold")).toEqual([]);
    expect(rowOf(visit.steps, "people-and-pets")).toEqual([["may-not", "2026-04-30T23:00", null]]);
    expect(visit.steps.find(({ row, kind }) => row === "watering" && kind === "must")?.startsAtWords).toBe("Saturday, May 2, 2026, 1 am");
  });
  test("what is over is left out", () => {
    expect(timelineOf([earlierOf(IRON, START - 13 * HOUR)])).toMatchObject({ steps: [], spoilingRain: [], findings: [], watering: { kind: "none-needed" } });
  });
});

test("nothing asked for is an empty list without a second look", () => {
  expect(timelineOf([appliedOf(labelOf("Alpha"))])).toMatchObject({ steps: [], secondLook: null, findings: [] });
});

test("a depth that no label states is not made up", () => {
  const thorough = labelOf("Thorough", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "not-stated" }));
  expect(timelineOf([appliedOf(thorough)]).steps).toMatchObject([{ words: "Water in as the label says; it states no depth." }]);
});

test("rain that does not replace watering is said", () => {
  const depth = { least: of("in", "0.5"), most: "none" } as const;
  const noRain = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(24), depth, rain: "does-not-count" }));
  expect(timelineOf([appliedOf(noRain)]).steps[0]?.words).toBe("Water in with ½ in. Front: 40 min. Rain does not replace it.");
});

test("an impossible question and an impossible station are refused", () => {
  expect(refusalOf(aftercareTimeline(aftercareQuestion([], { timeZone: "Central" }))).field).toBe("timeZone");
  const stations = [{ ...FRONT, depthPerHour: of("in", "0") }];
  expect(refusalOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED)], { stations }))).field).toBe("Front depthPerHour");
});
