import { describe, expect, test } from "vitest";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { aftercareOfLawns, type LawnToCareFor } from "#domain/mixing/aftercare-of-lawns";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { wateringWithoutTime } from "#domain/mixing/watering-without-time";
import { judgeWatering } from "#domain/mixing/watering-window";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byHouse, byLaw, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

function told(products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) {
  const question = aftercareQuestion(products, change);
  return wateringWithoutTime(question, valueOf(judgeWatering(question)));
}
const onThursdays = { localRules: byLaw(daily(0, 10, [4])), controller: "none" } as const;
const wants = (name: string, facts: Parameters<typeof labelOf>[1]) => appliedOf(labelOf(name, facts));
const depth = (least: string, most?: string) => ({ least: of("in", least), most: most === undefined ? ("none" as const) : of("in", most) });

test("hours that come after the label's date: the water is told without hours, with the date", () => {
  expect(told([appliedOf(FEED)], { hours: onThursdays })).toEqual([
    {
      row: "watering",
      kind: "must",
      startsAtEpochMilliseconds: END,
      endsAtEpochMilliseconds: null,
      isEstimate: false,
      words: "Water in with ¼ in. No time was found that keeps to the labels, the watering hours and what the stations need.",
      startsAtWords: "Friday, May 1, 2026, 4 pm",
      endsAtWords: "as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 4 pm",
      reasons: [{ productName: "Evenfeed 18", kind: "watering-in", labelWords: "words on watering-in", basis: "label", source: "label, directions for use" }],
    },
  ]);
});

test("none where a time was found, where nothing wants water, and of lawns that others alone keep from deciding", () => {
  expect(told([appliedOf(FEED)])).toEqual([]);
  expect(told([appliedOf(IRON)])).toEqual([]);
  expect(wateringWithoutTime(aftercareQuestion([appliedOf(IRON)]), { answer: { kind: "undecided" }, dry: [], lostToOthers: [] })).toEqual([]);
});

test("it begins after what must stay dry, whose words are told beside", () => {
  const quick = wants("Quick", says("watering-in", { by: hoursAfterEnd(4), depth: depth("0.25"), rain: "counts" }));
  const [step, ...others] = told([appliedOf(IRON), quick]);
  expect(others).toEqual([]);
  expect(step).toMatchObject({ startsAtEpochMilliseconds: END + 12 * HOUR, startsAtWords: "Saturday, May 2, 2026, 4 am", endsAtWords: "as soon as it may be; the label wants it by Friday, May 1, 2026, 8 pm" });
  expect(step?.words).toBe("Water in with ¼ in. No time was found that keeps to the labels and what the stations need.");
  expect(step?.reasons.map(({ productName, kind }) => `${productName} ${kind}`)).toEqual(["Ferrox Foliar rain-that-spoils", "Ferrox Foliar watering-not-before", "Quick watering-in"]);
  const drying = wants("Alpha", says("watering-not-before", { untilLaterOf: [untilState("dry")] }));
  expect(told([drying, appliedOf(FEED)], { hours: onThursdays })).toMatchObject([{ isEstimate: true, startsAtWords: "about Friday, May 1, 2026, 6 pm, an estimate" }]);
});

test("dates of several labels give the first, one that has passed says so, and none is not made up", () => {
  const soon = wants("Soon", says("watering-in", { by: hoursAfterEnd(12), depth: depth("0.5"), rain: "counts" }));
  expect(told([appliedOf(FEED), soon], { hours: onThursdays })).toMatchObject([{ words: expect.stringContaining("Water in with ½ in.") as string, endsAtWords: "as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 4 am" }]);
  const never = { localRules: byLaw([]), controller: "none" } as const;
  const undated = wants("Slow", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "counts" }));
  expect(told([undated], { hours: never })).toMatchObject([{ words: expect.stringContaining("Water in as the label says; it states no depth.") as string, endsAtWords: "as soon as the watering hours allow; no date on the label" }]);
  expect(told([earlierOf(FEED, START - 48 * HOUR)], { hours: never })).toMatchObject([{ endsAtWords: "as soon as the watering hours allow; the date on the label has passed" }]);
});

test("depths that do not agree are not given", () => {
  const much = wants("Much", says("watering-in", { by: hoursAfterEnd(24), depth: depth("0.5"), rain: "counts" }));
  const little = wants("Little", says("watering-in", { by: hoursAfterEnd(24), depth: depth("0.1", "0.25"), rain: "counts" }));
  expect(told([much, little])[0]?.words).toContain("Water in; the labels do not agree on how much.");
});

describe("of what is not on file it says one thing: no water before the company's word", () => {
  const NO_WATER = "Do not water until the company says so: not all that it hangs on is on file.";
  const open = { startsAtWords: "when the company says so", startsAtEpochMilliseconds: END, isEstimate: true };
  test("where nobody has read whether water is wanted", () => {
    expect(told([wants("Unread", { "watering-in": "unknown" })])).toMatchObject([
      { ...open, words: `${NO_WATER} Whether Unread must be watered in has not been entered from the label.`, endsAtWords: "once the label has been read", reasons: [{ productName: "Unread", kind: "watering-in", labelWords: "" }] },
    ]);
  });
  test.each(["watering-not-before", "rain-that-spoils", "watering-in"] as const)("where nobody has read %s of a product beside, with what is wanted and by when", (kind) => {
    const [step, ...others] = told([appliedOf(FEED), wants("Unread", { [kind]: "unknown" })]);
    expect(others).toEqual([]);
    expect(step).toMatchObject({ ...open, endsAtWords: "as soon as it may be; the label wants it by Saturday, May 2, 2026, 4 pm" });
    expect(step?.words.startsWith(`${NO_WATER} Then water in with ¼ in.`)).toBe(true);
  });
  test("which is not before what is known to be too soon", () => {
    expect(told([appliedOf(IRON), wants("Unread", { "watering-in": "unknown" })])).toMatchObject([{ ...open, startsAtEpochMilliseconds: END + 12 * HOUR, reasons: [{ productName: "Unread" }] }]);
  });
  test("where nobody has said whether it was watered in", () => {
    const unsaid = earlierOf(FEED, START - HOUR, { wateredInAtEpochMilliseconds: "unknown" });
    expect(told([unsaid])).toMatchObject([
      { ...open, words: `${NO_WATER} It is not on file whether Evenfeed 18 (put down Friday, May 1, 2026) has been watered in; if it has not, it still wants water.`, endsAtWords: "as soon as it may be; the label wants it by Saturday, May 2, 2026, 2 pm" },
    ]);
    expect(told([earlierOf(labelOf("Unread", { "watering-in": "unknown" }), START - HOUR, { wateredInAtEpochMilliseconds: START - HOUR }), wants("Dry", { "watering-not-before": "unknown" })])).toEqual([]);
  });
});

test("what other work wants that can't be given in the time of the rest is a step of its own", () => {
  const thirsty = earlierOf(labelOf("Thirsty", says("watering-in", { by: hoursAfterEnd(48), depth: depth("2"), rain: "counts" })), START - 24 * HOUR);
  const lost = {
    hasNoHours: true,
    startsAtEpochMilliseconds: END,
    endsAtEpochMilliseconds: null,
    words: "Thirsty (put down Thursday, Apr 30, 2026) still wants 2 in of water, for which no time was found with the other water. Ask the company how to give it.",
    endsAtWords: "as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 3 pm",
    reasons: [{ productName: "Thirsty (put down Thursday, Apr 30, 2026)", kind: "watering-in" }],
  };
  const change = { hours: { localRules: byLaw(daily(5, 6)), controller: "none" } } as const;
  expect(told([appliedOf(FEED), thirsty], change)).toMatchObject([lost]);
  const [only, ...others] = valueOf(aftercareOfLawns([{ name: "Lawn", own: [{ key: "1", products: [appliedOf(FEED)] }], earlier: [{ key: "2", label: thirsty.label, application: thirsty.application }], waterings: [], stations: [FRONT], seedings: [] }], aftercareQuestion([], change)));
  expect(others).toEqual([]);
  expect(only?.timeline.steps.filter(({ row }) => row === "watering")).toMatchObject([lost, { words: expect.stringContaining("Water in with ¼ in.") as string, endsAtEpochMilliseconds: END + 14 * HOUR }]);
  expect(only?.timeline.findings.map(({ rule }) => rule)).toEqual(["watering-hours-leave-no-time"]);
});

test("who waits for that water is given no time, nor are mowers", () => {
  const inHalfAnHour = { localRules: byLaw(daily(5, 6)), controller: "none" } as const;
  const slow = { ...FRONT, depthPerHour: of("in", "0.125") };
  const { steps, watering } = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED)], { hours: inHalfAnHour, stations: [slow] })));
  expect(watering).toEqual({ kind: "no-window" });
  expect(steps.map(({ row, endsAtEpochMilliseconds, endsAtWords }) => [row, endsAtEpochMilliseconds, endsAtWords])).toEqual([
    ["people-and-pets", null, "watered in and dry; no time can be given"],
    ["mowing", null, "watered in; no time can be given"],
    ["watering", null, "as soon as the watering hours allow; the label wants it by Saturday, May 2, 2026, 4 pm"],
  ]);
  expect(valueOf(aftercareTimeline(aftercareQuestion([appliedOf(FEED)], { hours: inHalfAnHour }))).steps[0]?.endsAtWords).toBe("about Saturday, May 2, 2026, 8 am, an estimate");
});

describe("a lawn that shares a station", () => {
  const grub = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(4), depth: depth("0.5"), rain: "counts" }));
  const lawn = (name: string, labels: readonly LabelAftercare[], more: Partial<LawnToCareFor> = {}): LawnToCareFor => ({ name, own: labels.map((label) => ({ key: label.productName, products: [appliedOf(label)] })), earlier: [], waterings: [], stations: [FRONT], seedings: [], ...more });
  const watered = (...lawns: readonly LawnToCareFor[]) =>
    valueOf(aftercareOfLawns(lawns, aftercareQuestion([]))).map(({ timeline }) => timeline.steps.filter(({ row, kind }) => row === "watering" && kind === "must").map(({ startsAtWords, words, reasons }) => [startsAtWords, words, reasons.map(({ productName }) => productName)]));

  test("waits until the other one may be wet, and says which station wets it", () => {
    const words = "Water in with ½ in. No time was found that keeps to the labels and what the stations need. Front waters Lawn as well.";
    expect(watered(lawn("Lawn", [IRON]), lawn("Strip", [grub]))).toEqual([[], [["Saturday, May 2, 2026, 4 am", words, ["Ferrox Foliar", "Ferrox Foliar", "Grubclear"]]]]);
  });
  test("waits for what was put down before on a lawn that gets nothing now", () => {
    const earlier = [{ key: "visit 1", label: IRON, application: earlierOf(IRON, START - 2 * HOUR).application }];
    expect(watered(lawn("Strip", [grub]), lawn("Lawn", [], { earlier }))).toMatchObject([[["Saturday, May 2, 2026, 1 am", expect.stringContaining("Front waters Lawn as well.") as string, expect.any(Array) as string[]]]]);
  });
  test("takes the water that both want, and it is run once", () => {
    const both = watered(lawn("Lawn", [FEED, IRON]), lawn("Strip", [grub]));
    expect(both).toMatchObject([[[expect.any(String) as string, expect.stringMatching(/^Water in with ½ in\..* Front waters Strip as well; run it once for both\.$/u) as string, expect.any(Array) as string[]]], [[expect.any(String) as string, expect.stringMatching(/^Water in with ½ in\..* Front waters Lawn as well; run it once for both\.$/u) as string, expect.any(Array) as string[]]]]);
  });
});

test("where only the controller is in the way it is done by hand, from the end of the work until the label's date, with each lawn's own stations", () => {
  const hours = { localRules: "none", controller: byHouse(daily(4, 9, [4])) } as const;
  const side = { ...FRONT, stationName: "Side" };
  const lawn = (name: string, stations: LawnToCareFor["stations"]): LawnToCareFor => ({ name, own: [{ key: name, products: [appliedOf(FEED)] }], earlier: [], waterings: [], stations, seedings: [] });
  const groups = valueOf(aftercareOfLawns([lawn("Lawn", [FRONT]), lawn("Strip", [FRONT, side])], aftercareQuestion([], { hours })));
  const steps = groups.map(({ timeline }) => timeline.steps.filter(({ row, kind }) => row === "watering" && kind === "must").map(({ startsAtWords, endsAtWords, words }) => [startsAtWords, endsAtWords, words]));
  const times = ["Friday, May 1, 2026, 4 pm", "Saturday, May 2, 2026, 4 pm"];
  expect(steps).toEqual([
    [[...times, "Water in with ¼ in. Front: 20 min. Front waters Strip as well; run it once for both. Start it by hand where the controller does not run then."]],
    [[...times, "Water in with ¼ in. Front: 20 min. Side: 20 min. Front waters Lawn as well; run it once for both. Start it by hand where the controller does not run then."]],
  ]);
});
