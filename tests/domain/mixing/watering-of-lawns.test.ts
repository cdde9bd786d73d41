import { describe, expect, test } from "vitest";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { type WateredGroup, wateringOfLawns, type WateringSetting } from "#domain/mixing/watering-of-lawns";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byHouse, daily, earlierOf, END, FEED, HOUR, hoursAfterEnd, IRON, labelOf, says, START } from "../../support/aftercare-builders";
import { refusalOf, valueOf } from "../../support/domain-answers";

const SETTING: WateringSetting = aftercareQuestion([]);
const station = (stationName: string, perHour = "0.5"): IrrigationStation => ({ stationName, depthPerHour: of("in", perHour), cycle: "none" });
const FRONT = station("1 Front");
const SIDE = station("2 Side");
const group = (name: string, labels: readonly LabelAftercare[], ...stations: readonly IrrigationStation[]): WateredGroup => ({ lawns: [{ name, stations }], products: labels.map((label) => appliedOf(label)) });
const wants = (name: string, hours: number, inches: string, most?: string) =>
  labelOf(name, says("watering-in", { by: hoursAfterEnd(hours), depth: { least: of("in", inches), most: most === undefined ? "none" : of("in", most) }, rain: "counts" }));
const stays = (name: string, hours: number) => labelOf(name, says("watering-not-before", { untilLaterOf: [hoursAfterEnd(hours)] }));
const judged = (groups: readonly WateredGroup[], besides: readonly WateredGroup[] = [], setting: Partial<WateringSetting> = {}) => valueOf(wateringOfLawns(groups, besides, { ...SETTING, ...setting }));
const mornings = (from: number, until: number) => ({ hours: { localRules: "none", controller: byHouse(daily(from, until)) } }) as const;

describe("lawns that share a station", () => {
  const quick = wants("Grubclear", 4, "0.5");
  test("of which one must stay dry longer than the other can wait: a hold that names products, station and lawns", () => {
    const [front, strip] = judged([group("Front", [IRON], FRONT), group("Strip", [quick], FRONT)]);
    expect(strip).toMatchObject({ answer: { kind: "no-window" }, findings: [] });
    expect(front).toMatchObject({ answer: { kind: "none-needed" }, findings: [{ level: "hold", rule: "no-common-watering-time", about: ["Ferrox Foliar", "Grubclear"] }] });
    expect(front?.findings[0]?.figure).toContain("Station 1 Front waters Front (Ferrox Foliar) and Strip (Grubclear).");
  });
  test("with a station each, there is nothing to hold", () => {
    expect(judged([group("Front", [IRON], FRONT), group("Strip", [quick], SIDE)])).toMatchObject([{ answer: { kind: "none-needed" }, findings: [] }, { answer: { kind: "window", windows: [{ fromEpochMilliseconds: END }] }, findings: [] }]);
  });
  test("wait for what must stay dry on any of them, but only the one that wants it is told to water", () => {
    const [front, strip] = judged([group("Front", [IRON], FRONT, station("3 Far")), group("Strip", [FEED], FRONT, SIDE)]);
    expect(front?.answer).toEqual({ kind: "none-needed" });
    expect(strip?.answer).toMatchObject({ windows: [{ fromEpochMilliseconds: END + 12 * HOUR, untilEpochMilliseconds: END + 24 * HOUR }], stations: [{ stationName: "1 Front" }, { stationName: "2 Side" }], alsoWaters: [] });
  });
  test("that both want water are told of the shared station, its most water, and that it runs once", () => {
    const [front, strip] = judged([group("Front", [wants("Preem", 24, "0.5")], FRONT), group("Strip", [wants("Evenfeed", 24, "0.25")], FRONT, SIDE)], [], mornings(5, 8));
    expect(front?.answer).toMatchObject({ depthWords: "½ in", stations: [{ stationName: "1 Front", totalMinutes: 60 }], starts: [{ stationName: "1 Front" }], isWithOthers: true, elapsedMinutes: null, alsoWaters: [{ stationName: "1 Front", lawnNames: ["Strip"] }] });
    expect(strip?.answer).toMatchObject({ stations: [{ stationName: "1 Front", totalMinutes: 60 }, { stationName: "2 Side" }], isWithOthers: false, elapsedMinutes: 120, alsoWaters: [{ stationName: "1 Front", lawnNames: ["Front"] }] });
  });
  test("whose depths do not meet", () => {
    const [front] = judged([group("Front", [wants("Preem", 24, "0.5")], FRONT), group("Strip", [wants("Light", 24, "0.1", "0.25")], FRONT)]);
    expect(front?.findings).toMatchObject([{ rule: "no-common-watering-depth", figure: expect.stringContaining("Station 1 Front waters Front (Preem) and Strip (Light).") as string }]);
  });
  test("through a third lawn are bound together, but not where that one minds no water", () => {
    const chain = (middle: LabelAftercare) => judged([group("Front", [stays("Stays", 12)], FRONT), group("Strip", [quick], SIDE), group("Yard", [middle], FRONT, SIDE)]).map(({ answer }) => answer.kind);
    expect(chain(labelOf("Harmless"))).toEqual(["none-needed", "window", "none-needed"]);
    expect(chain(FEED)).toEqual(["none-needed", "no-window", "no-window"]);
  });
  test("and are on one product for a conflict of its own: no lawn is named that adds nothing", () => {
    const both = labelOf("Both", { ...says("watering-not-before", { untilLaterOf: [hoursAfterEnd(6)] }), ...says("watering-in", { by: hoursAfterEnd(4), depth: "not-stated", rain: "counts" }) });
    const [front] = judged([group("Front", [both], FRONT), group("Strip", [FEED, both], FRONT)]);
    expect(front?.findings).toHaveLength(1);
    expect(front?.findings[0]?.figure).not.toContain("Station");
  });
  test("keep what each must stay dry for to itself, for as much water as the station puts down", () => {
    const spoiled = labelOf("Spoiled", says("rain-that-spoils", { within: hoursAfterEnd(6), from: of("in", "0.4") }));
    const dryOf = (inches: string) => judged([group("Front", [spoiled], FRONT), group("Strip", [wants("Feed", 24, inches)], FRONT)]).map(({ dry }) => dry.map(({ applied }) => applied.label.productName));
    expect(dryOf("0.5")).toEqual([["Spoiled"], []]);
    expect(dryOf("0.25")).toEqual([[], []]);
  });
  test("in several parts: each lawn is told of the parts in which its own stations run", () => {
    const slow = (name: string) => station(name, "0.25");
    const within = wants("Evenfeed", 72, "0.25");
    const [front, strip, lone] = judged(
      [group("Front", [within], slow("A"), slow("B"), slow("C")), group("Strip", [within, stays("Stays", 1)], slow("A")), group("Yard", [within, stays("Also", 1)], slow("A"), { ...station("D"), depthPerHour: "not-tested" })],
      [],
      mornings(4, 6),
    );
    expect(front?.answer).toMatchObject({ windows: [], parts: [{ starts: [{ stationName: "A" }, { stationName: "B" }] }, { starts: [{ stationName: "C" }] }] });
    expect(strip?.answer).toMatchObject({ parts: [], windows: [{}], starts: [{ stationName: "A" }], isWithOthers: true });
    expect(lone?.answer).toMatchObject({ stations: [{ stationName: "A" }, { stationName: "D", kind: "test-first" }], windows: [], parts: [{ starts: [{ stationName: "A" }] }, { starts: [] }] });
  });
  test("in several parts: a station without minutes that waters two lawns has one day on both, that of the last part", () => {
    const untested = { ...station("U"), depthPerHour: "not-tested" } as const;
    const [within, other] = [wants("Evenfeed", 96, "0.25"), wants("Preem", 96, "0.25")];
    const [strip, front] = judged([group("Strip", [within], untested), group("Front", [other], station("A", "0.25"), untested, station("B", "0.25"))], [], mornings(5, 6));
    if (strip?.answer.kind !== "window" || front?.answer.kind !== "window") throw new Error("Both lawns have a time.");
    const last = front.answer.parts?.at(-1);
    expect(front.answer.parts).toHaveLength(2);
    expect(strip.answer).toMatchObject({ parts: [], starts: [] });
    expect(strip.answer.windows).toEqual([{ fromEpochMilliseconds: last?.fromEpochMilliseconds, untilEpochMilliseconds: last?.untilEpochMilliseconds }]);
  });
  test("that nobody has read for water leaves all of them undecided", () => {
    expect(judged([group("Front", [labelOf("Unread", { "watering-not-before": "unknown" })], FRONT), group("Strip", [FEED], FRONT)]).map(({ answer }) => answer.kind)).toEqual(["undecided", "undecided"]);
  });
});

describe("a lawn beside them that gets nothing", () => {
  const beside = (label: LabelAftercare, ...stations: readonly IrrigationStation[]): WateredGroup => ({ lawns: [{ name: "Side", stations }], products: [earlierOf(label, START - HOUR)] });
  test("keeps off the station that it shares for what it got before, and no other", () => {
    const fromOf = (one: IrrigationStation) => judged([group("Front", [FEED], FRONT)], [beside(stays("Slowdry", 12), one)]).map(({ answer }) => answer);
    expect(fromOf(FRONT)).toMatchObject([{ windows: [{ fromEpochMilliseconds: START + 11 * HOUR }] }]);
    expect(fromOf(SIDE)).toMatchObject([{ windows: [{ fromEpochMilliseconds: END }] }]);
  });
  test("is named with its product where that leaves no time", () => {
    const [front] = judged([group("Front", [FEED], FRONT)], [beside(stays("Slowdry", 48), FRONT)]);
    expect(front?.findings[0]?.figure).toContain("Station 1 Front waters Front (Evenfeed 18) and Side (Slowdry).");
  });
  test("of whose product nobody has read it is a hold that says so", () => {
    const [front] = judged([group("Front", [FEED], FRONT)], [beside(labelOf("Unread", { "watering-not-before": "unknown" }), FRONT)]);
    expect(front).toMatchObject({ answer: { kind: "undecided" }, findings: [{ rule: "aftercare-fact-missing", about: ["Unread"] }] });
  });
});

describe("lawns without a station", () => {
  test("are watered by hand beside one that has some, by their names", () => {
    const lawns = [{ name: "Front", stations: [FRONT] }, { name: "Back", stations: [] }, { name: "Strip", stations: [] }];
    expect(judged([{ lawns, products: [appliedOf(FEED)] }])).toMatchObject([{ answer: { stations: [{ stationName: "1 Front", totalMinutes: 30 }, { kind: "test-first", stationName: "Sprinkler or hose on Back and Strip" }] } }]);
  });
  test("alone need no name", () => expect(judged([group("Back", [FEED])])).toMatchObject([{ answer: { stations: [{ stationName: "Sprinkler or hose" }] } }]));
});

test("an impossible station is refused", () => {
  expect(refusalOf(wateringOfLawns([group("Front", [FEED], station("1 Front", "0")), group("Strip", [IRON], SIDE)], [], SETTING)).field).toBe("1 Front depthPerHour");
});
