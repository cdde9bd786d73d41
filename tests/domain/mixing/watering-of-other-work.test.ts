import { expect, test } from "vitest";
import { takeCare } from "#domain/foundation/finding";
import { accept, missingFact } from "#domain/foundation/outcome";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { settleOtherWork, type Unplaced } from "#domain/mixing/watering-of-other-work";
import { type WateringNeed, wateringNeeds } from "#domain/mixing/watering-bounds";
import { appliedOf, CHICAGO, earlierOf, END, FEED, HOUR, labelOf, START } from "../../support/aftercare-builders";
import { refusalOf, valueOf } from "../../support/domain-answers";

const named = (productName: string) => labelOf(productName, FEED.facts);
const own = appliedOf(named("Own"));
const one = earlierOf(named("One"), START - HOUR);
const two = earlierOf(named("Two"), START - 2 * HOUR);
const needsOf = (...products: readonly AppliedProduct[]) => wateringNeeds(products, { fromEpochMilliseconds: START, untilEpochMilliseconds: END }, CHICAGO);
const finding = (rule: string) => takeCare({ rule, source: "label", what: "", about: [] });
const none = (rule: string, more: Partial<Unplaced>): Unplaced => ({ kind: "none", finding: finding(rule), waters: [], ...more });
const said = (needs: readonly WateringNeed[]) => needs.map(({ applied, dueAtEpochMilliseconds, isOverdue }) => [applied.label.productName, dueAtEpochMilliseconds === null, isOverdue]);

test("what can be kept is left as it is, and only other work is asked", () => {
  const asked: unknown[] = [];
  const { needs, findings, lost } = valueOf(
    settleOtherWork(needsOf(own, one), (some) => {
      asked.push(said(some));
      return accept({ kind: "found" });
    }),
  );
  expect(asked).toEqual([[["One", false, false]]]);
  expect([needs, findings, lost]).toEqual([needsOf(own, one), [], []]);
});

test("where nothing was put down by other work nobody is asked", () => {
  expect(valueOf(settleOtherWork(needsOf(own), () => missingFact("x", "y", "z"))).needs).toEqual(needsOf(own));
});

test("a date is let go and said once, then the rest is tried again, until it has a place or no water is left", () => {
  const answers = [none("first", { dateOf: two }), none("second", { waters: [one] })];
  const tries: unknown[] = [];
  const { needs, findings, lost } = valueOf(
    settleOtherWork(needsOf(own, one, two), (some) => {
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
  expect(valueOf(settleOtherWork(needsOf(one), () => accept(none("none", { waters: [one] })))).needs).toEqual([]);
});

test("a refusal is handed on", () => expect(refusalOf(settleOtherWork(needsOf(one), () => missingFact("x", "y", "z"))).sentence).toBe("z"));
