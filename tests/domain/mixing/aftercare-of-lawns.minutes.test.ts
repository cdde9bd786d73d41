// How all lawns of a property are watered, minute by minute: one supply runs one station, and none waters a lawn at a
// minute at which something on that lawn keeps water off, that the hours forbid or that comes too late for it.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type AftercareOfLawns, aftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type WateringWindow } from "#domain/mixing/watering-window";
import { type Measure } from "#domain/quantities/exact-quantity";
import { type DrawnLawn, type DrawnProperty, propertiesDrawn, questionOf } from "../../support/aftercare-arbitraries";
import { valueOf } from "../../support/domain-answers";
import { hoursPermit, waterWanted } from "../../support/label-by-the-minute";
import { MINUTE } from "../../support/wall-clock";
import { type Minutes, walk, waterKeptOff } from "../../support/watering-by-the-minute";

interface Running extends Minutes {
  readonly stationName: string;
}

const hundredths = (depth: Measure<"length">) => Number("amount" in depth ? depth.amount : 0n) / 2032;
const startOf = ({ fromEpochMilliseconds }: { readonly fromEpochMilliseconds: number }) => Math.ceil(fromEpochMilliseconds / MINUTE) * MINUTE;

function groupsOf({ ground, lawns }: DrawnProperty): readonly AftercareOfLawns[] {
  const all = [...new Set(lawns.flatMap(({ products }) => products))];
  const cared = lawns.map(({ name, products, stations }) => ({ name, stations, earlier: [], waterings: [], seedings: [], own: products.map((product) => ({ key: String(all.indexOf(product)), products: [product] })) }));
  return valueOf(aftercareOfLawns(cared, questionOf({ ground, products: all, stations: [] })));
}

/** The runs as they are told: those of a window from its first minute on, those of each part within it. */
function runsOf({ windows, parts = [], starts = [] }: WateringWindow): readonly Running[] {
  const [first] = windows;
  const told = first === undefined ? parts : [{ ...first, starts }];
  return told.flatMap((part) =>
    part.starts.map(({ stationName, startsAfterMinutes, runMinutes }) => {
      const from = startOf(part) + startsAfterMinutes * MINUTE;
      return { stationName, from, until: from + runMinutes * MINUTE };
    }),
  );
}

/** What binds the water of a lawn: not the date or the water of other work that was let go, which is said. */
function binding({ products }: DrawnLawn, cared: ReadonlySet<string>): readonly AppliedProduct[] {
  return products.filter(({ appliedIn, label }) => appliedIn === "this-visit" || !cared.has(label.productName));
}

function expectLawnKept({ ground }: DrawnProperty, lawn: DrawnLawn, runs: readonly Running[], { water, cared }: { readonly water: number; readonly cared: ReadonlySet<string> }): void {
  const { products } = lawn;
  const off = products.map((product) => waterKeptOff(product, water, ground));
  for (const { from, until } of runs) {
    for (let minute = from; minute < until; minute += MINUTE) {
      expect([off.some((holds) => holds(minute)), hoursPermit(ground, minute)]).toEqual([false, true]);
    }
    expect(binding(lawn, cared).some((product) => waterWanted(product, ground)?.late(until) === true)).toBe(false);
  }
}

function expectDepth({ ground }: DrawnProperty, products: readonly AppliedProduct[], water: number): void {
  for (const { label, ...product } of products) {
    const wants = label.facts["watering-in"];
    if (wants === "none" || wants === "unknown" || wants.depth === "not-stated" || waterWanted({ label, ...product }, ground) === undefined) continue;
    expect(water).toBeGreaterThanOrEqual(hundredths(wants.depth.least) * 60);
  }
}

/** Each station in the minutes that it is told, once however many lawns it reaches. */
function expectOneAtATime(all: readonly Running[]): readonly Running[] {
  const runs = [...new Map(all.map((run) => [JSON.stringify(run), run])).values()].toSorted((one, other) => one.from - other.from);
  runs.slice(1).forEach((run, index) => expect(run.from).toBeGreaterThanOrEqual(runs[index]?.until ?? 0));
  return runs;
}

function check(property: DrawnProperty): string {
  const groups = groupsOf(property);
  const windows = groups.flatMap(({ timeline: { watering } }) => (watering.kind === "window" ? [watering] : []));
  const runs = expectOneAtATime(windows.flatMap(runsOf));
  for (const { lawnNames, timeline: { watering } } of groups) {
    if (watering.kind !== "window" || watering.leastDepth === null) continue;
    const told = watering.stations.map(({ stationName }) => stationName).join("; ");
    for (const lawn of property.lawns.filter(({ name }) => lawnNames.includes(name))) {
      if (lawn.stations.length === 0) expect(told).toContain("Sprinkler or hose");
      for (const { stationName } of lawn.stations) expect(told).toContain(stationName);
    }
  }
  const findings = groups.flatMap(({ timeline }) => timeline.findings);
  const cared = new Set(findings.flatMap(({ level, about }) => (level === "take-care" ? about : [])));
  for (const lawn of property.lawns) {
    for (const { stationName, depthPerHour } of lawn.stations) {
      const own = runs.filter((run) => run.stationName === stationName);
      if (own.length === 0 || depthPerHour === "not-tested") continue;
      const water = own.reduce((sum, { from, until }) => sum + (until - from) / MINUTE, 0) * hundredths(depthPerHour);
      expectLawnKept(property, lawn, own, { water, cared });
      expectDepth(property, binding(lawn, cared), water);
    }
  }
  expect(new Set(findings.map((finding) => JSON.stringify(finding))).size).toBe(findings.length);
  const isHeld = findings.some(({ level, rule }) => level === "hold" && (rule.startsWith("watering") || rule.startsWith("no-common")));
  if (isHeld) expectHeldForCause(property);
  else if (findings.every(({ rule }) => rule !== "station-minutes-miss-depth")) expectNothingLostSilently(property, groups);
  return isHeld ? "held" : windows.some(({ isWithOthers }) => isWithOthers === true) ? "beside others" : windows.some(({ alsoWaters = [] }) => alsoWaters.length > 0) ? "shared" : "alone";
}

/** Where nothing is held, each lawn whose own product wants water has a time for it, if a missing fact does not leave that open. */
function expectNothingLostSilently({ ground, lawns }: DrawnProperty, groups: readonly AftercareOfLawns[]): void {
  for (const { lawnNames, timeline: { watering } } of groups) {
    const own = lawns.filter(({ name }) => lawnNames.includes(name)).flatMap(({ products }) => products.filter(({ appliedIn }) => appliedIn === "this-visit"));
    if (own.some((product) => waterWanted(product, ground) !== undefined)) expect(["window", "undecided"]).toContain(watering.kind);
  }
}

/** Where some stretch would do for everything that was put down and for all stations one after another, nothing is held. */
function expectHeldForCause({ ground, lawns }: DrawnProperty): void {
  const products = [...new Set(lawns.flatMap((lawn) => lawn.products))];
  const stations = [...new Map(lawns.flatMap((lawn) => lawn.stations).map((station) => [station.stationName, station])).values()];
  const walked = walk(products, stations, ground);
  if (walked.kind !== "walked") return;
  const longest = Math.max(0, ...walked.stretches.map(({ from, until }) => (until - from) / MINUTE));
  expect(longest).toBeLessThan(Math.max(1, walked.stationMinutes.reduce((sum, minutes) => sum + minutes, 0)));
}

test("no two stations of a property run at one minute, and none waters a lawn against what lies on it", () => {
  const seen: string[] = [];
  fc.assert(fc.property(propertiesDrawn, (property) => void seen.push(check(property))), { numRuns: 200 });
  expect(seen).toEqual(expect.arrayContaining(["held", "beside others"]));
});
