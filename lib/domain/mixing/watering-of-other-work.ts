import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AppliedProduct, isOfOtherWork } from "#domain/mixing/applied-product";
import { type WateringNeed } from "#domain/mixing/watering-bounds";

/** That there is no place for some products' water, and what is let go where they are down already: a date, or water. */
export interface Unplaced {
  readonly kind: "none";
  readonly finding: Finding;
  /** Whose date is the first that can't be kept. */
  readonly dateOf?: AppliedProduct;
  /** Whose water can't be given together with that of the others. */
  readonly waters: readonly AppliedProduct[];
}

/** A product of other work that can't be watered in by its own date any more, or not with the water of the others. */
export interface LostWater {
  readonly applied: AppliedProduct;
  readonly of: "date" | "water";
}

/** What of the needs still binds this visit, and what is said of the rest. */
export interface SettledNeeds {
  readonly needs: readonly WateringNeed[];
  readonly findings: readonly Finding[];
  readonly lost: readonly LostWater[];
}

/**
 * Lets go what other work has put down at odds already, before this visit's own products are looked at: nothing that this
 * visit leaves out could mend it. As long as those products alone have no place for their water, the first date that
 * can't be kept is let go, and the product waits as what is late does; where it is no date, the water itself. Each is
 * said once. What remains can be kept, so that only a product of this visit can still be in its way.
 * @param place where those products' water can run, or why there is none; the first refusal is handed on
 */
export function settleOtherWork(
  wanted: readonly WateringNeed[],
  place: (needs: readonly WateringNeed[]) => Outcome<{ readonly kind: "found" } | Unplaced>,
): Outcome<SettledNeeds> {
  const findings: Finding[] = [];
  const lost: LostWater[] = [];
  let others = wanted.filter(({ applied }) => isOfOtherWork(applied));
  while (others.length > 0) {
    const placed = place(others);
    if (!placed.ok) return placed;
    if (placed.value.kind === "found") break;
    const { finding, dateOf, waters } = placed.value;
    findings.push(finding);
    lost.push(...waters.map((applied) => ({ applied, of: "water" }) as const), ...(dateOf === undefined ? [] : [{ applied: dateOf, of: "date" } as const]));
    others = others
      .filter(({ applied }) => !waters.includes(applied))
      .map((need) => (need.applied === dateOf ? { ...need, dueAtEpochMilliseconds: null, isOverdue: true } : need));
  }
  const needs = wanted.flatMap((need) => (isOfOtherWork(need.applied) ? others.filter(({ applied }) => applied === need.applied) : [need]));
  return accept({ needs, findings, lost });
}
