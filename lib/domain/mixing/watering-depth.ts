import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { compareExact } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { type AppliedConstraint, appliedName, isOfOtherWork, weakestAuthority } from "#domain/mixing/applied-product";
import { depthWords } from "#domain/mixing/irrigation-run";
import { waterInFirst } from "#domain/mixing/watering-pair";

/** The water that serves all products at once, if their labels state any and allow one. */
export type CommonDepth =
  | { readonly kind: "depth"; readonly depth: WateringDepth }
  | { readonly kind: "not-stated" }
  | { readonly kind: "no-common-depth"; readonly finding: Finding; readonly thirstiest: Need };

type Need = AppliedConstraint<"watering-in">;

function depthOf({ constraint }: Need): WateringDepth | undefined {
  return constraint.depth === "not-stated" ? undefined : constraint.depth;
}

/**
 * The largest of the least depths, capped by the smallest of the most. Where one product's least is above another's
 * most there is none, and the hold names both; where neither is of this visit nothing can be left out any more, and what
 * is to be done now wants care.
 */
export function commonDepth(
  needs: readonly Need[],
  words: { readonly timeZone: string; readonly unitSystem: UnitSystem },
): CommonDepth {
  const withDepth = needs.flatMap((need) => {
    const depth = depthOf(need);
    return depth === undefined ? [] : [{ need, least: depth.least, most: depth.most }];
  });
  const thirstiest = withDepth.reduce<(typeof withDepth)[number] | undefined>(
    (found, one) => (found === undefined || compareExact(one.least, found.least) > 0 ? one : found),
    undefined,
  );
  if (thirstiest === undefined) return { kind: "not-stated" };
  const capped = withDepth.flatMap(({ need, most }) => (most === "none" ? [] : [{ need, most }]));
  const tightest = capped.reduce<(typeof capped)[number] | undefined>(
    (found, one) => (found === undefined || compareExact(one.most, found.most) < 0 ? one : found),
    undefined,
  );
  if (tightest === undefined) return { kind: "depth", depth: { least: thirstiest.least, most: "none" } };
  if (compareExact(thirstiest.least, tightest.most) <= 0) {
    return { kind: "depth", depth: { least: thirstiest.least, most: tightest.most } };
  }
  const { source, answerableBy, citation } = weakestAuthority([thirstiest.need.constraint, tightest.need.constraint]);
  const thirsty = appliedName(thirstiest.need.applied, words.timeZone);
  const capping = appliedName(tightest.need.applied, words.timeZone);
  const atMost = depthWords(tightest.most, words.unitSystem);
  const said = {
    rule: "no-common-watering-depth",
    source,
    what: `${thirsty} wants more water than ${capping} allows.`,
    figure: `${thirsty}: at least ${depthWords(thirstiest.least, words.unitSystem)}; ${capping}: at most ${atMost}.`,
    citation,
    about: [...new Set([thirstiest.need.applied.label.productName, tightest.need.applied.label.productName])],
  } as const;
  const both = [thirstiest.need.applied, tightest.need.applied];
  const finding = both.every(isOfOtherWork)
    ? takeCare({ ...said, toDo: `Have the lawn watered with at most ${atMost} first and write it down in a look at the lawn. Then have ${thirsty} watered in.` })
    : hold(answerableBy, { ...said, toDo: waterInFirst(both, [], words.timeZone) ?? "Split the visit: put them down on different days." });
  return { kind: "no-common-depth", finding, thirstiest: thirstiest.need };
}
