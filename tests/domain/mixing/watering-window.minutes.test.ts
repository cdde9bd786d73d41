// When a visit is watered in, against a walk that asks each minute whether every label and every hour lets water run.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { judgeWatering, type JudgedWatering, type WateringWindow } from "#domain/mixing/watering-window";
import { type Measure } from "#domain/quantities/exact-quantity";
import { type DrawnVisit, questionOf, visitsAfterSpoilable, visitsDrawn, visitsInParts } from "../../support/aftercare-arbitraries";
import { valueOf } from "../../support/domain-answers";
import { letGo } from "../../support/let-go-by-the-minute";
import { statedBy, waterWanted } from "../../support/label-by-the-minute";
import { MINUTE } from "../../support/wall-clock";
import { allDownAt, haveCommonMinute, type Minutes, walk, type Walked, waterPutDown } from "../../support/watering-by-the-minute";

type Places = Extract<Walked, { readonly kind: "walked" }>;

const lengthOf = ({ from, until }: Minutes) => (until - from) / MINUTE;
const rulesOf = ({ findings }: JudgedWatering) => findings.filter(({ level }) => level === "hold").map(({ rule }) => rule);
const caresOf = ({ findings }: JudgedWatering) => findings.filter(({ level, rule }) => level === "take-care" && rule !== "watering-in-overdue").map(({ rule }) => rule);

/** A product of this visit that wants water and gets no time for it, without a hold, would lose it silently. */
function expectNothingLostSilently({ ground, products }: DrawnVisit, judged: JudgedWatering): void {
  const own = products.filter((product) => product.appliedIn === "this-visit" && waterWanted(product, ground) !== undefined);
  if (own.length > 0 && judged.answer.kind === "no-window") expect(rulesOf(judged)).toHaveLength(1);
}

/** The hold names two products of which one still wants no water when the other's time is over; or one whose own time is over by then, or before all is down. */
function expectNamesExcludeEachOther({ ground, products, stations }: DrawnVisit, about: readonly string[]): void {
  const named = products.filter(({ label }) => about.includes(label.productName));
  expect(named).toHaveLength(about.length);
  const water = waterPutDown(products, stations, ground);
  const dated = named.filter((product) => waterWanted(product, ground)?.hasDate === true);
  const earliest = Math.min(...named.map(({ application }) => application.startsAtEpochMilliseconds));
  // Of several names one may be at odds with itself only for the water that another wants.
  const byItself = (one: AppliedProduct) => !haveCommonMinute(one, one, waterPutDown([one], stations, ground), ground, earliest);
  const pairs = dated.flatMap((due) => named.filter((dry) => about.length === 1 || dry !== due || !byItself(due)).map((dry) => ({ dry, due })));
  const isAtOdds = pairs.some(({ dry, due }) => !haveCommonMinute(dry, due, water, ground, earliest));
  const isOverBefore = about.length === 1 && dated.some((due) => !haveCommonMinute(due, due, undefined, ground, allDownAt(products, ground)));
  expect(isAtOdds || isOverBefore).toBe(true);
}

/** Of the two that are named one wants more water than the other takes. */
function expectDepthsExcludeEachOther({ products }: DrawnVisit, about: readonly string[]): void {
  const depths = products.flatMap((product) => {
    const depth = about.includes(product.label.productName) ? statedBy(product, "watering-in")?.depth : undefined;
    return depth === undefined || depth === "not-stated" ? [] : [depth];
  });
  const amountOf = (measure: Measure<"length">) => ("amount" in measure ? measure.amount : 0n);
  expect(depths).toHaveLength(2);
  expect(depths.some(({ least }) => depths.some(({ most }) => most !== "none" && amountOf(most) < amountOf(least)))).toBe(true);
}

/** Parts hold each station that was tested once, every minute of it within a stretch of the walk. */
function expectParts({ stretches }: Places, { parts = [] }: WateringWindow, stations: DrawnVisit["stations"]): void {
  for (const { fromEpochMilliseconds, untilEpochMilliseconds, starts } of parts) {
    const stretch = { from: fromEpochMilliseconds, until: untilEpochMilliseconds };
    expect(stretches).toContainEqual(stretch);
    for (const { startsAfterMinutes, runMinutes } of starts) expect(startsAfterMinutes + runMinutes).toBeLessThanOrEqual(lengthOf(stretch));
  }
  const names = parts.flatMap(({ starts }) => [...new Set(starts.map(({ stationName }) => stationName))]);
  expect(names.toSorted()).toEqual(stations.flatMap(({ stationName, depthPerHour }) => (depthPerHour === "not-tested" ? [] : [stationName])));
}

/** What is said of the stretches that the walk found, or did not find long enough. */
function expectPlaces(places: Places, judged: JudgedWatering, stations: DrawnVisit["stations"]): string {
  const { answer } = judged;
  const needed = Math.max(places.knownMinutes, 1);
  const longEnough = places.stretches.filter((stretch) => lengthOf(stretch) >= needed);
  if (longEnough.length > 0) {
    expect(rulesOf(judged)).toEqual([]);
    expect(answer).toMatchObject({ kind: "window", parts: [], elapsedMinutes: places.elapsedMinutes ?? null });
    expect(answer.kind === "window" && answer.windows.map(({ fromEpochMilliseconds: from, untilEpochMilliseconds: until }) => ({ from, until }))).toEqual(longEnough);
    return "one go";
  }
  if (answer.kind === "window") {
    expect([answer.windows, rulesOf(judged)]).toEqual([[], []]);
    expectParts(places, answer, stations);
    return "parts";
  }
  const isTooShort = places.longestWithoutHours < needed;
  expect(rulesOf(judged)).toEqual([isTooShort ? "watering-time-too-short" : "watering-hours-leave-no-time"]);
  // Where each station that was tested has a stretch to itself, the parts must have been found.
  const longest = Math.max(...places.stationMinutes);
  const roomy = places.stretches.filter((stretch) => lengthOf(stretch) >= longest);
  expect(places.stationMinutes.length === 0 || roomy.length < places.stationMinutes.length).toBe(true);
  return isTooShort ? "too short" : "no hours";
}

const RULE_OF = { "no-common-depth": "no-common-watering-depth", "minutes-miss-depth": "station-minutes-miss-depth", "no-common-time": "no-common-watering-time" } as const;

/** Holds what is judged of a visit against the walk, and says how it came out. */
function compare(drawn: DrawnVisit): string {
  const judged = valueOf(judgeWatering(questionOf(drawn)));
  const { visit, rules } = letGo(drawn);
  expect(caresOf(judged)).toEqual(rules);
  expectNothingLostSilently(drawn, judged);
  const came = compareWithoutLetGo(visit, judged, rules.length > 0);
  return rules.length > 0 ? "let go" : came;
}

function compareWithoutLetGo(visit: DrawnVisit, judged: JudgedWatering, isLetGo: boolean): string {
  const walked = walk(visit.products, visit.stations, visit.ground);
  switch (walked.kind) {
    case "walked":
      return expectPlaces(walked, judged, visit.stations);
    case "undecided":
    case "none-needed":
      expect(judged.answer).toEqual({ kind: isLetGo ? "no-window" : walked.kind });
      return walked.kind;
    case "no-common-depth":
    case "minutes-miss-depth":
    case "no-common-time": {
      expect(judged.answer).toEqual({ kind: "no-window" });
      const wanted = RULE_OF[walked.kind];
      expect(rulesOf(judged)).toEqual([wanted]);
      const about = judged.findings.find(({ level, rule }) => level === "hold" && rule === wanted)?.about ?? [];
      if (walked.kind === "no-common-time") expectNamesExcludeEachOther(visit, about);
      if (walked.kind === "no-common-depth") expectDepthsExcludeEachOther(visit, about);
      return walked.kind;
    }
  }
}

test("water runs in just those stretches that the walk finds long enough, and where it finds none a hold says why and names who excludes whom", () => {
  const seen: string[] = [];
  fc.assert(fc.property(visitsDrawn, (visit) => void seen.push(compare(visit))), { numRuns: 150 });
  expect(seen).toEqual(expect.arrayContaining(["let go", "no-common-time", "none-needed", "one go"]));
});

test("what other work put down and the water of this visit spoils holds it, and the thirstiest of other work is let go first", () => {
  const seen: string[] = [];
  fc.assert(fc.property(visitsAfterSpoilable, (visit) => void seen.push(compare(visit))), { numRuns: 100 });
  expect(seen).toEqual(expect.arrayContaining(["let go", "no-common-time", "one go"]));
});

test("where no stretch is long enough for all stations, whole ones run on several days", () => {
  const seen: string[] = [];
  fc.assert(fc.property(visitsInParts, (visit) => void seen.push(compare(visit))), { numRuns: 200 });
  expect(seen).toEqual(expect.arrayContaining(["no hours", "parts"]));
});
