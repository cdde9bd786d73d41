import { describe, expect, test } from "vitest";
import { takeCare } from "#domain/foundation/finding";
import { accept, missingFact } from "#domain/foundation/outcome";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { settleOtherWork, type Unplaced } from "#domain/mixing/watering-of-other-work";
import { type WateringNeed, wateringNeeds } from "#domain/mixing/watering-bounds";
import { of } from "#domain/quantities/quantity";
import { appliedOf, CHICAGO, earlierOf, END, FEED, HOUR, hoursAfterEnd, labelOf, says, START } from "../../support/aftercare-builders";
import { refusalOf, valueOf } from "../../support/domain-answers";

const named = (productName: string) => labelOf(productName, FEED.facts);
const own = appliedOf(named("Own"));
const one = earlierOf(named("One"), START - HOUR);
const two = earlierOf(named("Two"), START - 2 * HOUR);
const needsOf = (...products: readonly AppliedProduct[]) => wateringNeeds(products, { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
const finding = (rule: string) => takeCare({ rule, source: "label", what: "", about: [] });
const none = (rule: string, more: Partial<Unplaced>): Unplaced => ({ kind: "none", of: "time", finding: finding(rule), waters: [], ...more });
const settled = (wanted: readonly WateringNeed[], place: Parameters<typeof settleOtherWork>[1]) => settleOtherWork(wanted, place, CHICAGO);
const said = (needs: readonly WateringNeed[]) => needs.map(({ applied, dueAtEpochMilliseconds, isOverdue }) => [applied.label.productName, dueAtEpochMilliseconds === null, isOverdue]);

test("what can be kept is left as it is, and only other work is asked", () => {
  const asked: unknown[] = [];
  const { needs, findings, lost } = valueOf(
    settled(needsOf(own, one), (some) => {
      asked.push(said(some));
      return accept({ kind: "found" });
    }),
  );
  expect(asked).toEqual([[["One", false, false]]]);
  expect([needs, findings, lost]).toEqual([needsOf(own, one), [], []]);
});

test("where nothing was put down by other work nobody is asked", () => {
  expect(valueOf(settled(needsOf(own), () => missingFact("x", "y", "z"))).needs).toEqual(needsOf(own));
});

test("a date is let go and said once, then the rest is tried again, until it has a place or no water is left", () => {
  const answers = [none("first", { dateOf: two }), none("second", { waters: [one] })];
  const tries: unknown[] = [];
  const { needs, findings, lost } = valueOf(
    settled(needsOf(own, one, two), (some) => {
      tries.push(said(some));
      return accept(answers.shift() ?? { kind: "found" as const });
    }),
  );
  expect(tries).toEqual([
    [["One", false, false], ["Two", false, false]],
    [["One", false, false], ["Two", true, true]],
    [["Two", true, true]],
  ]);
  expect(said(needs)).toEqual([["Own", false, false], ["Two", true, true]]);
  expect(findings.map(({ rule }) => rule)).toEqual(["first", "second"]);
  expect(lost.map(({ applied, of }) => [applied.label.productName, of])).toEqual([["Two", "date"], ["One", "water"]]);
  expect(valueOf(settled(needsOf(one), () => accept(none("none", { waters: [one] })))).needs).toEqual([]);
});

test("water whose date was let go before is said once, with what was in the way of the date", () => {
  const letGo = (...figures: readonly [string, string]) => {
    const answers = [none("date", { dateOf: two, finding: { ...finding("date"), figure: figures[0] } }), none("water", { waters: [two], finding: { ...finding("water"), figure: figures[1] } })];
    return valueOf(settled(needsOf(two), () => accept(answers.shift() ?? { kind: "found" as const })));
  };
  expect(letGo("By noon. 60 min.", "60 min.")).toMatchObject({ needs: [], findings: [{ rule: "water", figure: "By noon. 60 min." }], lost: [{ applied: two, of: "water" }] });
  expect(letGo("By noon.", "60 min.").findings.map(({ figure }) => figure)).toEqual(["By noon. 60 min."]);
});

test("a refusal is handed on", () => expect(refusalOf(settled(needsOf(one), () => missingFact("x", "y", "z"))).sentence).toBe("z"));

describe("where less water would have a place", () => {
  const deep = (productName: string, least: string, before: number) => earlierOf(labelOf(productName, says("watering-in", { by: hoursAfterEnd(48), depth: { least: of("in", least), most: "none" }, rain: "counts" })), START - before * HOUR);
  const [half, inch, alsoInch] = [deep("Half", "0.5", 1), deep("Inch", "1", 1), deep("Also", "1", 1)];
  /** Finds a place where nothing that wants more than these is watered in with it. */
  const roomFor = (enough: readonly AppliedProduct[], unplaced: Unplaced) => (needs: readonly WateringNeed[]) =>
    accept(needs.every(({ applied }) => enough.includes(applied)) ? { kind: "found" as const } : unplaced);
  const outcome = (products: readonly AppliedProduct[], enough: readonly AppliedProduct[], unplaced: Partial<Unplaced>) => {
    const { needs, findings, lost } = valueOf(settled(needsOf(...products), roomFor(enough, none("all", unplaced))));
    return [needs.map(({ applied }) => applied), findings.map(({ what }) => what.replaceAll(/ \(.*?\)/gu, "")), lost];
  };
  const water = (...products: readonly AppliedProduct[]) => products.map((applied) => ({ applied, of: "water" }));
  test("the water of the thirstiest is let go before any date, and the next after it", () => {
    expect(outcome([one, inch], [one], { dateOf: one })).toEqual([[one], ["Enough water for Inch leaves no time to water in One."], water(inch)]);
    expect(outcome([one, half, inch], [one], { dateOf: one })).toEqual([
      [one],
      ["Enough water for Inch leaves no time to water in Half and One.", "Enough water for Half leaves no time to water in One."],
      water(inch, half),
    ]);
    expect(outcome([one, inch, alsoInch], [one], { dateOf: one })).toEqual([[one], ["Enough water for Also and Inch leaves no time to water in One."], water(alsoInch, inch)]);
  });
  test("where none has a date, what the least thirsty wants is less", () => {
    expect(outcome([one, half], [one], { waters: [one, half] })).toEqual([[one], ["Enough water for Half leaves no time to water in One."], water(half)]);
    expect(outcome([one, half], [], { waters: [one, half] })).toEqual([[], [""], water(one, half)]);
  });
  test("minutes that miss the depth keep their own words; depths that exclude each other name whose water goes", () => {
    expect(outcome([one, half], [one], { of: "minutes", waters: [one, half] })).toEqual([[one], [""], water(half)]);
    expect(outcome([one, half], [half], { of: "depth", waters: [one] })).toEqual([[half], [""], water(one)]);
  });
  test("where it is the first date's own water that is too much the date is let go", () => {
    expect(valueOf(settled(needsOf(half, one), (needs) => accept(needs.some(({ isOverdue }) => isOverdue) ? { kind: "found" } : none("date", { dateOf: half })))).lost).toEqual([{ applied: half, of: "date" }]);
  });
  test("a refusal of less is handed on", () => {
    expect(refusalOf(settled(needsOf(one, half), (needs) => (needs.length === 1 ? missingFact("x", "y", "less") : accept(none("all", { dateOf: one }))))).sentence).toBe("less");
  });
});
