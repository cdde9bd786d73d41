import { expect, test } from "vitest";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type AftercareSetting, aftercareOfLawns, type LawnToCareFor } from "#domain/mixing/aftercare-of-lawns";
import { aftercareQuestion, appliedOf, earlierOf, END, FEED, FRONT, HOUR, hoursAfterEnd, IRON, labelOf, rowOf, says, START } from "../../support/aftercare-builders";
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

test("the first refusal is handed on", () => {
  expect(refusalOf(aftercareOfLawns([lawn("Front")], { ...SETTING, timeZone: "Mars/Olympus" })).sentence).toContain("Mars/Olympus");
});
