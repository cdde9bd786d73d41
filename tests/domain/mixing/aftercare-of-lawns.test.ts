import { describe, expect, test } from "vitest";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type AftercareOfLawns, type AftercareSetting, aftercareOfLawns, type LawnToCareFor } from "#domain/mixing/aftercare-of-lawns";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byHouse, daily, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, rowOf, says, START } from "../../support/aftercare-builders";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const SETTING: AftercareSetting = aftercareQuestion([]);

function lawn(name: string, more: Partial<LawnToCareFor> = {}): LawnToCareFor {
  return { name, own: [{ key: "1", products: [appliedOf(IRON)] }], earlier: [], waterings: [], stations: [], seedings: [], ...more };
}

const before = (label: LabelAftercare, endedAt: number, key = "visit 1") => ({ key, label, application: earlierOf(label, endedAt).application });
const groupsOf = (...lawns: readonly LawnToCareFor[]) => valueOf(aftercareOfLawns(lawns, SETTING));
const LONG_DRY = labelOf("Slowdry", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(48)] }));

test("lawns of the same products after the same earlier ones are one group, in their order; a lawn that gets nothing has none", () => {
  const other = { own: [{ key: "2", products: [appliedOf(FEED)] }] };
  const earlier = [before(LONG_DRY, START - 24 * HOUR)];
  const groups = groupsOf(lawn("Front"), lawn("Back", other), lawn("Side", { earlier }), lawn("Strip"), lawn("Yard", { own: [] }), lawn("Far", { earlier }));
  expect(groups.map(({ lawnNames }) => lawnNames)).toEqual([["Front", "Strip"], ["Back"], ["Side", "Far"]]);
});

test("an earlier product keeps the water off until its own end, by its own time", () => {
  const [only] = groupsOf(lawn("Front", { earlier: [before(LONG_DRY, START - 24 * HOUR)] }));
  // Put down on April 30 until 3 pm in Chicago, and dry for 48 hours from then; the iron of the visit asks for less.
  expect(rowOf(only?.timeline.steps ?? [], "watering")).toEqual([["may-not", "2026-04-30T19:00", "2026-05-02T20:00"]]);
});

test("an earlier sign stands until sunset of the day on which people may come back, on that day after they may too", () => {
  const label = labelOf("Weedaway", {
    ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] }),
    ...says("posting-sign", { upBy: "before-application", mayComeDown: { trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: true } }),
  });
  // Done at 10 am on April 29: people may come back at 10 am on May 1, five hours before the visit, and the sun sets at 7:49 pm.
  const [only] = groupsOf(lawn("Front", { earlier: [before(label, START - 53 * HOUR)] }));
  expect(rowOf(only?.timeline.steps ?? [], "sign")).toEqual([["may-not", "2026-04-29T14:00", expect.stringMatching(/^2026-05-02T00:4/u) as string]]);
});

test("what is over before the visit makes no difference", () => {
  const [one, ...others] = groupsOf(lawn("Front"), lawn("Back", { earlier: [before(LONG_DRY, START - 72 * HOUR), before(IRON, END + HOUR)] }));
  expect(one?.lawnNames).toEqual(["Front", "Back"]);
  expect(others).toEqual([]);
});

test("of two lawns that got the same before, the one that was watered in since is another group", () => {
  const earlier = [before(FEED, START - 30 * HOUR)];
  const waterings = [{ wateredAtEpochMilliseconds: START - 20 * HOUR, wateredBy: "sprinklers", depth: "not-stated", toldBy: "crew" }] as const;
  const groups = groupsOf(lawn("Front", { earlier }), lawn("Back", { earlier, waterings }));
  expect(groups.map(({ lawnNames, timeline }) => [lawnNames, timeline.findings.map(({ rule }) => rule)])).toEqual([
    [["Front"], ["crew-while-people-may-stay-off", "watering-in-overdue"]],
    [["Back"], []],
  ]);
});

test("a label that nobody has entered holds as long as what it may ask for can still run, by the product's name and day", () => {
  const unread = labelOf("Harrowgate 32", Object.fromEntries(Object.keys(IRON.facts).map((kind) => [kind, "unknown"])));
  const heldAfter = (days: number) => groupsOf(lawn("Front", { earlier: [before(unread, START - days * 24 * HOUR)] })).flatMap(({ timeline }) => timeline.findings.map(({ level, rule, what }) => `${level} ${rule} ${what}`));
  expect(heldAfter(1)).toEqual([expect.stringMatching(/^hold aftercare-fact-missing For Harrowgate 32 \(put down Thursday, Apr 30, 2026\) it has not been entered from its label when people and pets may come back;/u)]);
  expect(heldAfter(60)).toEqual([]);
});

test("the stations of a group are asked once, and its seedings all", () => {
  const seeding = { date: day("2026-05-20"), method: "unknown", standing: "planned" } as const;
  const noSeed = labelOf("Pre", says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }] }));
  const own = [{ key: "1", products: [appliedOf(FEED), appliedOf(noSeed)] }];
  const [only] = groupsOf(lawn("Front", { own, stations: [FRONT] }), lawn("Back", { own, stations: [FRONT], seedings: [seeding] }));
  expect(only?.timeline.watering).toMatchObject({ stations: [{ stationName: "Front" }] });
  expect(only?.timeline.findings.map(({ rule }) => rule)).toContain("seeding-too-soon-after");
});

test("seed is told once for the lawns that have it alike, by their names where the visit has several lawns", () => {
  const seeding = { date: day("2026-05-20"), method: "slit", standing: "planned" } as const;
  const noSeed = labelOf("Pre", says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }] }));
  const own = [{ key: "1", products: [appliedOf(noSeed)] }];
  const said = (...lawns: readonly LawnToCareFor[]) => groupsOf(...lawns).flatMap(({ timeline }) => timeline.findings.filter(({ rule }) => rule === "seeding-too-soon-after").map(({ what }) => what));
  const seeded = (name: string) => lawn(name, { own, seedings: [seeding] });
  expect(said(seeded("Front"), seeded("Side"), lawn("Back", { own }))).toEqual(["Seeding of Front and Side (slit) is planned for Wednesday, May 20, 2026, too soon after Pre."]);
  expect(said(seeded("Front"), lawn("Back", { own: [{ key: "2", products: [appliedOf(FEED)] }] }))).toEqual(["Seeding of Front (slit) is planned for Wednesday, May 20, 2026, too soon after Pre."]);
  expect(said(seeded("Front"), lawn("Yard", { own: [] }))).toEqual(["Seeding (slit) is planned for Wednesday, May 20, 2026, too soon after Pre."]);
});

describe("one supply and one controller", () => {
  const station = (stationName: string) => ({ ...FRONT, stationName, depthPerHour: of("in", "0.5") });
  const feed = (name: string, inches: string, hours = 24) => [{ key: name, products: [appliedOf(labelOf(name, says("watering-in", { by: hoursAfterEnd(hours), depth: { least: of("in", inches), most: "none" }, rain: "counts" })))] }];
  const findingsOf = (groups: readonly AftercareOfLawns[]) => groups.map(({ timeline }) => timeline.findings.map(({ rule, about }) => [rule, ...about].join(", ")));
  const wateringWords = (groups: readonly AftercareOfLawns[]) => groups.map(({ timeline }) => timeline.steps.flatMap(({ row, kind, words }) => (row === "watering" && kind === "must" ? [words] : [])).join(" "));
  const early = (until: number): AftercareSetting => ({ ...SETTING, hours: { localRules: "none", controller: byHouse(daily(5, until)) } });

  test("two lawns that one station waters are held where one must stay dry longer than the other can wait", () => {
    const groups = groupsOf(lawn("Front", { stations: [station("1 Front")] }), lawn("Strip", { own: feed("Grubclear", "0.5", 4), stations: [station("1 Front")] }));
    expect(findingsOf(groups)).toEqual([["no-common-watering-time, Ferrox Foliar, Grubclear"], []]);
    expect(wateringWords(groups)).toEqual(["", "Water in with ½ in. No time was found that keeps to the labels and what the stations need. 1 Front waters Front as well."]);
  });
  test("lawns whose stations do not fit into the hours together are held, and where they do each is told its turn", () => {
    const lawns = [lawn("Front", { own: feed("Evenfeed", "0.25"), stations: [station("1 Front"), station("2 Side")] }), lawn("Back", { own: feed("Preem", "0.5"), stations: [station("3 Back")] })];
    expect(findingsOf(valueOf(aftercareOfLawns(lawns, early(6))))).toEqual([["watering-hours-leave-no-time, Evenfeed, Preem"], []]);
    expect(wateringWords(valueOf(aftercareOfLawns(lawns, early(7))))).toEqual([
      expect.stringContaining("One station at a time on the whole property, for example 1 Front at 6 am for 30 min; 2 Side at 6:30 am for 30 min."),
      expect.stringContaining("One station at a time on the whole property, for example 3 Back at 5 am for 60 min."),
    ]);
  });
  test("a lawn without a station is named beside the stations of the others", () => {
    const own = feed("Evenfeed", "0.25");
    const [words] = wateringWords(groupsOf(lawn("Front", { own, stations: [station("1 Front")] }), lawn("Back", { own })));
    expect(words).toContain("1 Front: 30 min. Sprinkler or hose on Back: ¼ in. Its rate has not been tested.");
  });
  test("a lawn that gets nothing keeps the station off that it shares", () => {
    const stations = [station("1 Front")];
    const wateredFrom = (shared: readonly ReturnType<typeof station>[]) => {
      const [only, ...others] = groupsOf(lawn("Front", { own: feed("Evenfeed", "0.25"), stations }), lawn("Yard", { own: [], earlier: [before(LONG_DRY, START - 40 * HOUR)], stations: shared }));
      expect(others).toEqual([]);
      return only?.timeline.watering;
    };
    expect(wateredFrom(stations)).toMatchObject({ windows: [{ fromEpochMilliseconds: START + 8 * HOUR }] });
    expect(wateredFrom([station("2 Side")])).toMatchObject({ windows: [{ fromEpochMilliseconds: END }] });
  });
  test("what is found of several lawns in the same words is said once", () => {
    const earlier = [before(FEED, START - 30 * HOUR)];
    const groups = groupsOf(lawn("Front", { earlier }), lawn("Back", { earlier, own: feed("Evenfeed", "0.25") }));
    expect(findingsOf(groups).flat().filter((found) => found.startsWith("watering-in-overdue"))).toHaveLength(1);
  });
});

test("the first refusal is handed on", () => {
  expect(refusalOf(aftercareOfLawns([lawn("Front")], { ...SETTING, timeZone: "Mars/Olympus" })).sentence).toContain("Mars/Olympus");
});
