import { type Finding, hold } from "#domain/foundation/finding";
import { compareExact } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { type AppliedConstraint, appliedName, weakestAuthority } from "#domain/mixing/applied-product";
import { depthWords } from "#domain/mixing/irrigation-run";

/** The water that serves all products at once, if their labels state any and allow one. */
export type CommonDepth =
  | { readonly kind: "depth"; readonly depth: WateringDepth }
  | { readonly kind: "not-stated" }
  | { readonly kind: "no-common-depth"; readonly finding: Finding };

type Need = AppliedConstraint<"watering-in">;

function depthOf({ constraint }: Need): WateringDepth | undefined {
  return constraint.depth === "not-stated" ? undefined : constraint.depth;
}

/**
 * The largest of the least depths, capped by the smallest of the most. Where one product's least is above another's
 * most there is none, and the hold names both.
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
  const finding = hold(answerableBy, {
    rule: "no-common-watering-depth",
    source,
    what: `${thirsty} wants more water than ${capping} allows.`,
    figure: `${thirsty}: at least ${depthWords(thirstiest.least, words.unitSystem)}; ${capping}: at most ${depthWords(tightest.most, words.unitSystem)}.`,
    toDo: "Split the visit: put them down on different days.",
    citation,
    about: [...new Set([thirstiest.need.applied.label.productName, tightest.need.applied.label.productName])],
  });
  return { kind: "no-common-depth", finding };
}
